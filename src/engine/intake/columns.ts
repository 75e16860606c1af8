import { type Field, type Mapping, manyTimes } from "./fields.ts";
import { type DayOrder, dayOrder } from "./read/day.ts";
import { type DecimalSign, decimalSign } from "./read/number.ts";
import { type Cell, cellText, type Table } from "./table.ts";

/** The columns of a table by what they hold, with what only all of a column's cells can tell. */
export type Columns = Readonly<{
  at: ReadonlyMap<Field, readonly number[]>;
  head: (column: number) => string;
  signs: ReadonlyMap<Field, DecimalSign>;
  days: ReadonlyMap<Field, DayOrder>;
}>;

/** Enough cells to tell how a column writes numbers and days. */
const cellsLookedAt = 2_000;

function places({ columns }: Mapping): ReadonlyMap<Field, readonly number[]> {
  const at = new Map<Field, readonly number[]>();
  columns.forEach((field, column) => {
    if (!field) return;
    const before = at.get(field) ?? [];
    if (before.length === 0 || manyTimes.has(field)) at.set(field, [...before, column]);
  });
  return at;
}

export function columnsOf(table: Table, mapping: Mapping): Columns {
  const heads = mapping.head === null ? [] : (table.rows[mapping.head] ?? []);
  const at = places(mapping);
  const first = mapping.head === null ? 0 : mapping.head + 1;
  const below = table.rows.slice(first, first + cellsLookedAt);
  const cells = (field: Field): readonly Cell[] => below.map((row) => row[at.get(field)?.[0] ?? -1] ?? null);
  return {
    at,
    head: (column) => cellText(heads[column]),
    signs: new Map(
      (["paid", "ml", "gsm", "width"] as const).map((field) => [field, decimalSign(cells(field))]),
    ),
    days: new Map((["acquired", "opened"] as const).map((field) => [field, dayOrder(cells(field))])),
  };
}
