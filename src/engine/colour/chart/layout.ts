/** A box of the chart in its own measure, 0 to 1 along rows (u) and down columns (v); a little outside too. */
export type Box = Readonly<{ u0: number; u1: number; v0: number; v1: number }>;

/** How the swatches stand: that many rows and columns, and the bare share of the way from one to the next. */
export type Grid = Readonly<{ rows: number; columns: number; gap: number }>;

/** What is left out at each edge of a swatch: an unsteady brush, and corners marked a little off. */
const cellMargin = 0.18;
/** What is left out at each edge of a bare strip, across and along. */
const stripMargin = 0.2;
/** Around the chart the strips are at least this wide, in steps of the grid: there need be no gap to see paper. */
const narrowestRim = 0.15;

/** The way from one swatch's start to the next one's; the corners mark the outer swatches' outer edges. */
export const stepOf = (count: number, gap: number): number => 1 / (count - gap);

export const middleOf = ({ u0, u1, v0, v1 }: Box): readonly [number, number] => [
  (u0 + u1) / 2,
  (v0 + v1) / 2,
];

type Reach = readonly [number, number];

const within = ([from, to]: Reach, margin: number): Reach => [
  from + margin * (to - from),
  to - margin * (to - from),
];

const boxOf = (along: Reach, down: Reach): Box => ({ u0: along[0], u1: along[1], v0: down[0], v1: down[1] });

const swatchReach = (at: number, count: number, gap: number): Reach => {
  const step = stepOf(count, gap);
  return within([at * step, (at + 1 - gap) * step], cellMargin);
};

/** The bare reach before swatch `at` of a row or column, from 0 to `count`: the first and last lie outside. */
function bareReach(at: number, count: number, gap: number): Reach {
  const step = stepOf(count, gap);
  const rim = Math.max(gap, narrowestRim) * step;
  if (at === 0) return within([-rim, 0], stripMargin);
  if (at === count) return within([1, 1 + rim], stripMargin);
  return within([(at - gap) * step, at * step], stripMargin);
}

/** The part of a swatch that is read. */
export const cellBox = ({ rows, columns, gap }: Grid, row: number, column: number): Box =>
  boxOf(swatchReach(column, columns, gap), swatchReach(row, rows, gap));

/** The bare strip to the left of a swatch; column = columns is the one at the right end. */
export const uprightStrip = ({ rows, columns, gap }: Grid, row: number, column: number): Box =>
  boxOf(bareReach(column, columns, gap), swatchReach(row, rows, gap));

/** The bare strip above a swatch; row = rows is the one at the foot. */
export const levelStrip = ({ rows, columns, gap }: Grid, row: number, column: number): Box =>
  boxOf(swatchReach(column, columns, gap), bareReach(row, rows, gap));
