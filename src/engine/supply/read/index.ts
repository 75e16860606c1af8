/**
 * Read: lines as people write them ("2 gouache tubes moss 15 ml") into supplies, and where each part stands.
 *
 * Units    millimetres, grams per square metre, millilitres, whatever the line was written in.
 * Languages  words/ holds what each language writes, says/ what it says back; a line may be in any of them, and words
 *          that clash are taken as the page's own language means them. Another language is a file in each.
 * Sources  ISO 216 and US sheet names, the inch of 25.4 mm, Colour Index names, CSS colour names; trade words
 *          ("cold pressed", "rigger") and the colours of pigment names are common practice, no source.
 * Rule     what is not said is left open, what is not understood is kept in the name and reported. One thing is
 *          guessed, the colour a name brings to mind, and it can be told from a given one (`isGuessedColour`).
 */
export { type ColourPhrase, readColourPhrase } from "./colour-phrase.ts";
export { hexOfWord } from "./colour-words.ts";
export type { KnownNames } from "./draft.ts";
export { guessedHex, guessSpread, isGuessedColour } from "./guessed.ts";
export { type LineReading, readLine } from "./line.ts";
export { readLines } from "./lines.ts";
export type { Piece } from "./piece.ts";
export type { WrittenPrice } from "./price.ts";
