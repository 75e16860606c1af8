/**
 * Intake: tables of things, as people keep them in spreadsheets, read into drafts for the stash.
 *
 * Steps    guess how the columns are to be read (`guessMapping`), then read row after row (`rowReader`): each comes
 *          out as a thing to add, as one that is here already, or as no thing, with the reason.
 * Out      a list of our own is written (`ownList`) by the columns that read it (`ownHeads`, `ownRows`): it comes back
 *          as it went out.
 * Rule     what is not said is left open, and what is not understood is kept in the note and marked. A row keeps its
 *          key, so that the same list brought in again adds nothing twice.
 * Sources  ISO 8601 (days), ISO 4217 (currencies), GS1 (check digits), FNV-1a (keys); what columns are headed by is
 *          common practice, no source.
 * Not here Bytes into tables: `src/workers`. What a line of text means: `supply/read`.
 */
export { readColourSet, type SetColour } from "./colour-set.ts";
export { type Field, fields, type Mapping, manyTimes } from "./fields.ts";
export { guessMapping } from "./guess.ts";
export { understandItems } from "./items.ts";
export { headPrint } from "./key.ts";
export { type NotHeld, notHeld, saidBy } from "./own/not-held.ts";
export { type OwnHeads, ownHeads } from "./own/read.ts";
export { ownRows } from "./own/rows.ts";
export { tied } from "./own/tied.ts";
export { type OwnList, ownList } from "./own/write.ts";
export type { WrittenCell } from "./own/written.ts";
export type { CellDoubt } from "./row.ts";
export { type Cell, caps, cellText, cleanText, exactText, type Table, widthOf } from "./table.ts";
export { type Around, type Draft, rowReader, type Understood, understand } from "./understand.ts";
