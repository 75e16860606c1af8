import type { Columns } from "./columns.ts";
import type { Field } from "./fields.ts";
import type { Said } from "./read/said.ts";
import { type Cell, cellText } from "./table.ts";

/** A cell that somebody should look at, and why. */
export type CellDoubt = Readonly<{ column: number; reason: string }>;

/** One row while it is being read: its cells by field, what is doubtful in it, and what goes to the note unread. */
export function rowOf(row: readonly Cell[], { at, head }: Columns) {
  const doubts: CellDoubt[] = [];
  const kept: string[] = [];

  const column = (field: Field): number => at.get(field)?.[0] ?? -1;
  const cell = (field: Field): Cell => row[column(field)] ?? null;
  const text = (field: Field): string => cellText(cell(field));
  const all = (field: Field): readonly number[] =>
    (at.get(field) ?? []).filter((one) => cellText(row[one]) !== "");

  function doubt(field: Field, reason: string): void {
    doubts.push({ column: Math.max(0, column(field)), reason }); // what no column holds is asked of the first
  }

  /** Sees to it that a cell nothing was made of is not lost. */
  function keep(one: number): void {
    const title = head(one);
    kept.push(title === "" ? cellText(row[one]) : `${title}: ${cellText(row[one])}`);
  }

  /** What a cell was read as; undefined where it is empty or nothing was made of it. */
  function take<T>(field: Field, read: (cell: Cell) => Said<T>): T | undefined {
    if (text(field) === "") return undefined;
    const said = read(cell(field));
    if (said.doubt !== null) doubt(field, said.doubt);
    if (said.value === null) keep(column(field));
    return said.value ?? undefined;
  }

  return { cells: row, text, cell, all, column, doubt, keep, take, doubts, kept };
}

export type Row = ReturnType<typeof rowOf>;
