import type { Language } from "../../record/index.ts";
import type { StashItem } from "../../supply/index.ts";
import { caps } from "../table.ts";
import { headOf, type OwnColumn, ownColumns } from "./columns.ts";
import type { WrittenCell } from "./written.ts";

/** A list to be written: its heads, and a row for each thing. */
export type OwnList = Readonly<{ heads: readonly string[]; rows: readonly (readonly WrittenCell[])[] }>;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;

const valueAt = (item: StashItem, path: readonly string[]): unknown =>
  path.reduce<unknown>(
    (within, field) => (isRecord(within) && Object.hasOwn(within, field) ? within[field] : undefined),
    item,
  );

const isUnsaid = (value: unknown): boolean =>
  value === undefined || value === null || value === "" || (Array.isArray(value) && value.length === 0);

/** More than a spreadsheet's cell takes is not written: half of a text would come back as a whole one. */
const fitting = (cell: WrittenCell): WrittenCell =>
  typeof cell === "string" && cell.length > caps.letters ? null : cell;

/** What an item has in a column; null where it has nothing there. */
export function cellOf(item: StashItem, { path, codec, unsaid }: OwnColumn, language: Language): WrittenCell {
  const found = valueAt(item, path);
  const value = isUnsaid(found) ? unsaid : found;
  return isUnsaid(value) ? null : fitting(codec.write(value, { family: item.supply.family, language }));
}

/**
 * Things as a list of ours, which comes back in as it went out (`ownRows`). Columns that nothing has are left out.
 * @param language of the heads and of words in cells
 */
export function ownList(items: readonly StashItem[], language: Language): OwnList {
  const all = items.map((item) => ownColumns.map((column) => cellOf(item, column, language)));
  const used = ownColumns.map(({ always }, at) => always === true || all.some((row) => row[at] !== null));
  return {
    heads: ownColumns.filter((_, at) => used[at]).map((column) => headOf(column, language)),
    rows: all.map((row) => row.filter((_, at) => used[at])),
  };
}
