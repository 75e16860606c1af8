/**
 * Intake: tables of things, as people keep them in spreadsheets, read into drafts for the stash.
 *
 * Steps    guess how the columns are to be read (`guessMapping`), then read row after row (`rowReader`): each comes
 *          out as a thing to add, as one that is here already, or as no thing, with the reason.
 * Rule     what is not said is left open, and what is not understood is kept in the note and marked. A row keeps its
 *          key, so that the same list brought in again adds nothing twice.
 * Sources  ISO 8601 (days), ISO 4217 (currencies), GS1 (check digits), FNV-1a (keys); what columns are headed by is
 *          common practice, no source.
 * Not here Bytes into tables: `src/work`. What a line of text means: `supply/read`.
 */
export { readColourSet, type SetColour } from "./colour-set.ts";
export { type Field, fields, type Mapping, manyTimes } from "./fields.ts";
export { guessMapping } from "./guess.ts";
export { understandItems } from "./items.ts";
export { headPrint } from "./key.ts";
export type { CellDoubt } from "./row.ts";
export { type Cell, caps, cellText, cleanText, type Table, widthOf } from "./table.ts";
export { type Around, type Draft, rowReader, type Understood, understand } from "./understand.ts";
