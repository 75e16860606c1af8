import type { Family } from "../supply/index.ts";

/** What a column of a list may hold. `text`: the whole thing as people write it, to be read as a line. */
export const fields = [
  "text",
  "name",
  "kind",
  "maker",
  "line",
  "code",
  "gtin",
  "colour",
  "hex",
  "medium",
  "form",
  "grade",
  "size",
  "gsm",
  "ml",
  "width",
  "sheets",
  "owned",
  "sheetsLeft",
  "state",
  "place",
  "paid",
  "currency",
  "acquired",
  "opened",
  "tags",
  "note",
] as const;

export type Field = (typeof fields)[number];

/** These may stand over several columns: what they hold is put together. */
export const manyTimes: ReadonlySet<Field> = new Set(["tags", "note"]);

/**
 * How a table is read. `head`: the row with the heads, counted from 0, or null where there is none; what stands above
 * it is left out. `columns`: what each column holds, null for one that is left out. `currency`: what amounts are in
 * that do not say. `family`: what things are whose rows do not say; null leaves that open.
 */
export type Mapping = Readonly<{
  head: number | null;
  columns: readonly (Field | null)[];
  currency: string;
  family: Family | null;
}>;
