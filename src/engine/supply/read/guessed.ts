import { type Colour, hexFromLab } from "../../colour/index.ts";
import { tonedColour } from "./colour-phrase.ts";
import { hexOfWord } from "./colour-words.ts";

/**
 * The sRGB hex that a colour's name brings to mind: of a known name, or of one with words before it that say how light
 * or strong it is ("deep plum", "pale grey-green").
 * @returns null where any word of the name says nothing of colour: "fog blue" is a name of its own
 */
export function guessedHex(name: string): string | null {
  const known = hexOfWord(name);
  if (known !== null) return known;
  const toned = tonedColour(name);
  return toned && hexFromLab(toned);
}

/**
 * Whether a colour is the one its name brings to mind, and nobody gave it: a guess, to be put right by who has
 * the thing at hand.
 */
export const isGuessedColour = (colour: Colour | null | undefined): boolean =>
  !!colour?.name && !!colour.hex && !colour.from && !colour.lab && guessedHex(colour.name) === colour.hex;

/**
 * How far (ΔE00) the colour of a thing may lie from the one its name brings to mind. Ours, no source: between tables of
 * colour words the same word mostly differs by 5 to 15.
 */
export const guessSpread = 15;
