/** Something a row may get: a column and what it costs, a whole number of any sign. */
export type Option = Readonly<{ column: number; cost: number }>;

/**
 * An assignment with the prices that prove it cheapest: cost − row price − column price is never below 0,
 * and 0 for what is in use; a column with room has price 0, one without at most 0.
 */
export type Assignment = Readonly<{
  rows: readonly (readonly Option[])[];
  capacity: readonly number[];
  /** The column of each row, -1 while it has none; and the rows each column has. */
  columnOf: number[];
  rowsOf: readonly number[][];
  rowPrice: number[];
  columnPrice: number[];
}>;

/** A way from a row to a column with room: the last column, what it costs, and how each column was reached. */
type Way = Readonly<{ end: number; length: number; from: ReadonlyMap<number, number>; done: Distances }>;
type Distances = ReadonlyMap<number, number>;

/** Where a search starts, where it may end, and which rows may not move. */
type Search = Readonly<{
  row: number;
  options: readonly Option[];
  /** A column that the row gives up: a way may end there, at its price. */
  left: number;
  frozenBelow: number;
}>;

const hasRoom = ({ rowsOf, capacity }: Assignment, column: number): boolean =>
  (rowsOf[column]?.length ?? 0) < (capacity[column] ?? 0);

function nearest(open: Distances): readonly [number, number] {
  let [column, least] = [-1, Number.POSITIVE_INFINITY];
  for (const [candidate, distance] of open) {
    if (distance < least) [column, least] = [candidate, distance];
  }
  return [column, least];
}

/**
 * Dijkstra over the columns that are full, from `row` to the cheapest column where a way may end.
 * Only the first step may cost less than 0, and it is common to all ways.
 */
function findWay(at: Assignment, { row, options, left, frozenBelow }: Search): Way | null {
  const [open, done, from] = [
    new Map<number, number>(),
    new Map<number, number>(),
    new Map<number, number>(),
  ];
  const leftPrice = left < 0 ? 0 : (at.columnPrice[left] ?? 0);
  let [end, length] = [-1, Number.POSITIVE_INFINITY];
  const relax = (fromRow: number, steps: readonly Option[], soFar: number): void => {
    for (const { column, cost } of steps) {
      if (done.has(column)) continue;
      const distance = soFar + cost - (at.rowPrice[fromRow] ?? 0) - (at.columnPrice[column] ?? 0);
      const isEnd = column === left || hasRoom(at, column);
      const whole = distance + (column === left ? leftPrice : 0);
      const best = isEnd ? length : (open.get(column) ?? Number.POSITIVE_INFINITY);
      if (whole >= best) continue;
      from.set(column, fromRow);
      if (isEnd) [end, length] = [column, whole];
      else open.set(column, distance);
    }
  };
  relax(row, options, 0);
  for (
    let [column, distance] = nearest(open);
    distance + leftPrice < length;
    [column, distance] = nearest(open)
  ) {
    open.delete(column);
    done.set(column, distance);
    for (const holder of at.rowsOf[column] ?? []) {
      if (holder >= frozenBelow) relax(holder, at.rows[holder] ?? [], distance);
    }
  }
  return end < 0 ? null : { end, length, from, done };
}

/** Keeps every reduced cost at or above 0 and those in use at 0, so that the next search may use Dijkstra. */
function reprice(at: Assignment, row: number, { length, done }: Way): void {
  at.rowPrice[row] = (at.rowPrice[row] ?? 0) + length;
  for (const [column, distance] of done) {
    at.columnPrice[column] = (at.columnPrice[column] ?? 0) + distance - length;
    for (const holder of at.rowsOf[column] ?? []) {
      at.rowPrice[holder] = (at.rowPrice[holder] ?? 0) + length - distance;
    }
  }
}

/** The first column of a way: what its row would get. */
function firstStep(row: number, { end, from }: Way, at: Assignment): number {
  let column = end;
  for (let holder = from.get(column) ?? row; holder !== row; holder = from.get(column) ?? row) {
    column = at.columnOf[holder] ?? -1;
  }
  return column;
}

/** Walks back from the end, each row on the way moving on to the column it was reached through. */
function moveAlong(at: Assignment, row: number, { end, from }: Way): void {
  for (let column = end, holder = -1; holder !== row; ) {
    holder = from.get(column) ?? row;
    const before = at.columnOf[holder] ?? -1;
    const there = at.rowsOf[before];
    there?.splice(there.indexOf(holder), 1);
    at.rowsOf[column]?.push(holder);
    at.columnOf[holder] = column;
    column = before;
  }
}

/**
 * The cheapest way to give every row one column, no column more rows than its capacity: shortest augmenting
 * paths with prices, row by row. Exact while sums of costs stay safe integers.
 * @param rows what each row may get; a row that may stay without has an option in a column of its own
 * @returns null when some row cannot get any
 * @see R. Jonker and A. Volgenant (1987), Computing 38, 325–340
 */
export function assign(rows: readonly (readonly Option[])[], capacity: readonly number[]): Assignment | null {
  const at: Assignment = {
    rows,
    capacity,
    columnOf: rows.map(() => -1),
    rowsOf: capacity.map(() => []),
    rowPrice: rows.map(() => 0),
    columnPrice: capacity.map(() => 0),
  };
  for (const [row, options] of rows.entries()) {
    const way = findWay(at, { row, options, left: -1, frozenBelow: 0 });
    if (!way) return null;
    reprice(at, row, way);
    moveAlong(at, row, way);
  }
  return at;
}

/** What it costs in all when one row gets something else, and the others move as suits best. */
export type Change = Readonly<{ column: number; cost: number; make: () => void }>;

/**
 * The cheapest change that gives `row` one of `options` instead of what it has. One search suffices: an
 * optimal assignment and the changed one differ by one cycle through the row that costs something.
 * @param frozenBelow rows before this one keep what they have
 * @returns null when there is no such change; `make` carries it out, and keeps the prices valid at cost 0 only
 */
export function changeOf(
  at: Assignment,
  row: number,
  options: readonly Option[],
  frozenBelow: number,
): Change | null {
  const left = at.columnOf[row] ?? -1;
  const way = findWay(at, { row, options, left, frozenBelow });
  if (!way) return null;
  const cost = way.length - (at.columnPrice[left] ?? 0);
  return { column: firstStep(row, way, at), cost, make: () => moveAlong(at, row, way) };
}
