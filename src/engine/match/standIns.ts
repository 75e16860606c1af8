import { type Assignment, assign, changeOf, type Option } from "./assign.ts";

/** Something that may play a line's part: which item, how like in whole units above 0, and its place under ties. */
export type Choice = Readonly<{ column: number; units: number; rank: number }>;

/** What a line gets (null: a gap), and what its next best would be and cost in all (null: there is none). */
export type StandIn = Readonly<{
  column: number | null;
  second: Readonly<{ column: number; costUnits: number }> | null;
}>;

/** Options in the order a line prefers them under ties; `cost` is scaled so that a place in it can be added. */
type Row = readonly Option[];

/**
 * The n + 1 best choices of each of n rows: n are enough for the optimum (if a row used a worse one, one of
 * its n better ones would have room, since the other rows fill at most n − 1), one more for the second choice.
 * They come back in the row's order of preference, which also settles what is best of equals.
 */
function prune(choices: readonly Choice[], count: number): readonly Choice[] {
  const best = choices.toSorted((a, b) => b.units - a.units || a.rank - b.rank).slice(0, count);
  return best.toSorted((a, b) => a.rank - b.rank);
}

/** Numbers the columns in use from 0, so that the solver holds sixty times sixty and not sixty times all. */
function renumber(rows: readonly (readonly Choice[])[]): readonly number[] {
  return [...new Set(rows.flatMap((row) => row.map(({ column }) => column)))];
}

/** Costs with room below them for a row's own order of preference. */
const withRank = (options: Row): Row =>
  options.map(({ column, cost }, rank) => ({ column, cost: cost + rank }));

/** Line by line, moves to what the line prefers among all assignments that are as good. */
function settleTies(at: Assignment): void {
  for (const [row, options] of at.rows.entries()) {
    const now = options.findIndex(({ column }) => column === at.columnOf[row]);
    const preferred = withRank(options).slice(0, now);
    const change = changeOf(at, row, preferred, row);
    if (change && change.cost < options.length) change.make();
  }
}

function secondOf(at: Assignment, row: number, gap: number, scale: number) {
  const others = withRank(at.rows[row] ?? []).filter(
    ({ column }) => column !== at.columnOf[row] && column !== gap,
  );
  const change = changeOf(at, row, others, 0);
  return change && { column: change.column, cost: Math.floor(change.cost / scale) };
}

/**
 * The stand-ins with the greatest total likeness, a gap counting 0; of several such, the one that gives the
 * first line what it prefers, then the second, and so on.
 * @param rows what may play each line's part; under ties a line prefers the lower `rank`, and a gap last
 * @param capacity how many lines each column may serve, at least 1
 */
export function bestStandIns(
  rows: readonly (readonly Choice[])[],
  capacity: ReadonlyMap<number, number>,
): readonly StandIn[] {
  const pruned = rows.map((row) => prune(row, rows.length + 1));
  const columns = renumber(pruned);
  const place = new Map(columns.map((column, index) => [column, index]));
  const scale = rows.length + 3; // more than any row has options
  const options = pruned.map(
    (row, index): Row => [
      ...row.map(({ column, units }) => ({ column: place.get(column) ?? -1, cost: -units * scale })),
      { column: columns.length + index, cost: 0 }, // to go without
    ],
  );
  const capacities = [...columns.map((column) => capacity.get(column) ?? 1), ...rows.map(() => 1)];
  const at = assign(options, capacities);
  if (!at) return []; // cannot be: every row may go without
  settleTies(at);
  return rows.map((_, row) => {
    const second = secondOf(at, row, columns.length + row, scale);
    return {
      column: columns[at.columnOf[row] ?? -1] ?? null,
      second: second && { column: columns[second.column] ?? -1, costUnits: second.cost },
    };
  });
}
