// What some program would drop, turn into something else, or could not write at all.
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const unwritable = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]|\p{Surrogate}/gu;
const escapes = /\\(?=u[0-9a-f]{4})/g;
// Spreadsheets have an escape of their own, `_x0041_` for "A" (ECMA-376 part 1, 22.9.2.19), and some read it anywhere.
const theirs = /_(?=x[0-9a-f]{4}_)/gi;

export const escaped = (letter: string): string => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`;

// Readers of tables take these off at the ends of a cell; plain spaces are told to stay there.
const edges = /^\s+|\s+$/g;
const asEdge = (run: string, at: number): string => run.replace(at === 0 ? /[^ ]/g : /[^ \n]/g, escaped);

/** A text without anything that a cell cannot hold: that is written as JSON writes it, and so is what looks like it. */
export const plainText = (text: string): string =>
  text.replace(escapes, escaped).replace(theirs, escaped).replace(unwritable, escaped).replace(edges, asEdge);

export const unplainText = (text: string): string =>
  text.replace(/\\u([0-9a-f]{4})/g, (_, digits: string) => String.fromCharCode(Number.parseInt(digits, 16)));
