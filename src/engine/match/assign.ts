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

/** Where every column with room leads to; a unit set free in one column may be filled in another through it. */
const pool = -1;

/** A search from `row` over some of its options to `goal`: the pool, or the column that the row gives up. */
type Search = Readonly<{ row: number; options: readonly Option[]; goal: number; frozenBelow: number }>;

/** A row's new column. */
type Step = Readonly<{ row: number; column: number }>;

/** The cheapest way to the goal: its length, the steps back from the goal, and how far each place passed was. */
type Way = Readonly<{ length: number; steps: readonly Step[]; passed: ReadonlyMap<number, number> }>;

/** What a search knows: how far the places still open are, those done with, and from where each was reached. */
type Reach = Readonly<{
  open: Map<number, number>;
  done: Map<number, number>;
  /** A column from a row, or from the pool; the pool from a column. */
  from: Map<number, number>;
}>;

const hasRoom = ({ rowsOf, capacity }: Assignment, column: number): boolean =>
  (rowsOf[column]?.length ?? 0) < (capacity[column] ?? 0);

function reach({ open, done, from }: Reach, place: number, distance: number, origin: number): void {
  if (done.has(place) || distance >= (open.get(place) ?? Number.POSITIVE_INFINITY)) return;
  open.set(place, distance);
  from.set(place, origin);
}

/**
 * Takes up the options of a row. A column with room leads on to the pool at no cost; of those that nobody
 * holds yet only the nearest matters, so a thousand spare items do not make the search longer.
 */
function relax(at: Assignment, known: Reach, row: number, options: readonly Option[], soFar: number): void {
  const price = at.rowPrice[row] ?? 0;
  let [spare, nearest] = [-1, Number.POSITIVE_INFINITY];
  for (const { column, cost } of options) {
    const distance = soFar + cost - price - (at.columnPrice[column] ?? 0);
    if (at.rowsOf[column]?.length) reach(known, column, distance, row);
    if (distance < nearest && hasRoom(at, column)) [spare, nearest] = [column, distance];
  }
  if (spare < 0 || known.done.has(pool) || nearest >= (known.open.get(pool) ?? Number.POSITIVE_INFINITY))
    return;
  reach(known, pool, nearest, spare);
  if (!at.rowsOf[spare]?.length) known.from.set(spare, row);
}

/** From the pool into every column in use: its unit goes free, at the price it had. */
function refill(at: Assignment, known: Reach, soFar: number): void {
  for (const column of new Set(at.columnOf)) {
    if (column >= 0) reach(known, column, soFar - (at.columnPrice[column] ?? 0), pool);
  }
}

function nearest(open: ReadonlyMap<number, number>): readonly [number, number] | null {
  let found: readonly [number, number] | null = null;
  for (const entry of open) if (!found || entry[1] < found[1]) found = entry;
  return found;
}

/** The rows that move, from the goal back to the row where the search began. */
function stepsBack(at: Assignment, { from }: Reach, { row, goal }: Search): readonly Step[] {
  const steps: Step[] = [];
  for (let place = goal; ; ) {
    const origin = from.get(place) ?? pool;
    if (place === pool || origin === pool) {
      place = origin;
      continue;
    }
    steps.push({ row: origin, column: place });
    if (origin === row) return steps;
    place = at.columnOf[origin] ?? pool;
  }
}

/** Dijkstra. Only the first step may cost less than 0, and it is common to all ways. Null: no way there. */
function findWay(at: Assignment, search: Search): Way | null {
  const known: Reach = { open: new Map(), done: new Map(), from: new Map() };
  relax(at, known, search.row, search.options, 0);
  for (let here = nearest(known.open); here; here = nearest(known.open)) {
    const [place, distance] = here;
    if (place === search.goal) {
      return { length: distance, steps: stepsBack(at, known, search), passed: known.done };
    }
    known.open.delete(place);
    known.done.set(place, distance);
    if (place === pool) refill(at, known, distance);
    for (const holder of at.rowsOf[place] ?? []) {
      if (holder >= search.frozenBelow) relax(at, known, holder, at.rows[holder] ?? [], distance);
    }
  }
  return null;
}

/** Keeps every reduced cost at or above 0 and those in use at 0, so that the next search may use Dijkstra. */
function reprice(at: Assignment, row: number, { length, passed }: Way): void {
  at.rowPrice[row] = (at.rowPrice[row] ?? 0) + length;
  for (const [column, distance] of passed) {
    at.columnPrice[column] = (at.columnPrice[column] ?? 0) + distance - length;
    for (const holder of at.rowsOf[column] ?? []) {
      at.rowPrice[holder] = (at.rowPrice[holder] ?? 0) + length - distance;
    }
  }
}

function move(at: Assignment, steps: readonly Step[]): void {
  for (const { row, column } of steps) {
    const before = at.rowsOf[at.columnOf[row] ?? pool];
    before?.splice(before.indexOf(row), 1);
    at.rowsOf[column]?.push(row);
    at.columnOf[row] = column;
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
    const way = findWay(at, { row, options, goal: pool, frozenBelow: 0 });
    if (!way) return null;
    reprice(at, row, way);
    move(at, way.steps);
  }
  return at;
}

/** What it costs in all when one row gets something else, and the others move as suits best. */
type Change = Readonly<{ column: number; cost: number; make: () => void }>;

/**
 * The cheapest change that gives `row` one of `options` instead of what it has. One search suffices: a cheapest
 * assignment and the changed one differ in one cycle through the row, since any other cycle would cost nothing
 * or more.
 * @param frozenBelow rows before this one keep what they have
 * @returns null when there is no such change. `make` carries it out; the prices stay valid when it cost nothing
 */
export function changeOf(
  at: Assignment,
  row: number,
  options: readonly Option[],
  frozenBelow: number,
): Change | null {
  const goal = at.columnOf[row] ?? pool;
  const way = findWay(at, { row, options, goal, frozenBelow });
  const first = way?.steps.at(-1);
  return way && first ? { column: first.column, cost: way.length, make: () => move(at, way.steps) } : null;
}
