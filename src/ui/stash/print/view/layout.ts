/**
 * How a chart lies on its sheet, in millimetres from the upper left corner of what both A4 and Letter can print
 * between the margins of styles/print.css (178 × 248).
 *
 * The bare share of the way from one cell to the next is the same across and down, since that is how a photo of a
 * chart is read (engine/colour, `ChartPhoto.gap`); below each cell it has room for three lines of writing.
 */
export const sheet = { width: 178, height: 240 } as const;

/** Cells of every chart, whatever their width. */
const cellHeight = 15;
const below = 10;

const gap = below / (cellHeight + below);

/** Where the grid's first cell starts: room for the corner marks, and for the title. */
const start = { x: 5, y: 16 } as const;
const foot = 15;

/** The width of a cell by how many stand in a row: whole millimetres, up to the ruler at the right. */
const widths = { 3: 36, 4: 27, 5: 21, 6: 17 } as const;

export type Columns = keyof typeof widths;
export const columnCounts = [3, 4, 5, 6] as const satisfies readonly Columns[];

export type Grid = Readonly<{
  columns: Columns;
  rows: number;
  cell: Readonly<{ width: number; height: number }>;
  /** The way from one cell's start to the next one's. */
  step: Readonly<{ x: number; y: number }>;
}>;

/** The grid of a whole sheet; each sheet of a chart has the same. */
export function gridOf(columns: Columns): Grid {
  const width = widths[columns];
  const step = { x: width / (1 - gap), y: cellHeight + below };
  const rows = Math.floor((sheet.height - start.y - foot - below - cellHeight) / step.y) + 1;
  return { columns, rows, cell: { width, height: cellHeight }, step };
}

/** Where the cell of a row and column starts. */
export const cellAt = ({ step }: Grid, row: number, column: number) => ({
  x: start.x + column * step.x,
  y: start.y + row * step.y,
});

/** The four outer corners of the grid, where a photo of it is marked, in order around it. */
export function cornersOf(grid: Grid): readonly (readonly [x: number, y: number])[] {
  const first = cellAt(grid, 0, 0);
  const last = cellAt(grid, grid.rows - 1, grid.columns - 1);
  const [right, bottom] = [last.x + grid.cell.width, last.y + grid.cell.height];
  return [
    [first.x, first.y],
    [right, first.y],
    [right, bottom],
    [first.x, bottom],
  ];
}
