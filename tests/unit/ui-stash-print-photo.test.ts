import { describe, expect, it } from "vitest";
import {
  deltaE2000,
  hexFromLab,
  labFromHex,
  type Picture,
  readChart,
} from "../../src/engine/colour/index.ts";
import { cellAt, columnCounts, cornersOf, gridOf, sheet } from "../../src/ui/stash/print/view/layout.ts";

const pxPerMm = 6;
const paper = "#f0f0ee";

const bytesOf = (hex: string): readonly number[] =>
  [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));

/** A sheet as a scanner sees it once it is coloured in: cells in their outlines, and words below as short dark strokes. */
function scanned(columns: (typeof columnCounts)[number], colours: readonly string[]): Picture {
  const grid = gridOf(columns);
  const [width, height] = [sheet.width * pxPerMm, sheet.height * pxPerMm];
  const data = new Uint8ClampedArray(width * height * 4);
  const fill = (x: number, y: number, wide: number, high: number, hex: string) => {
    const [red = 0, green = 0, blue = 0] = bytesOf(hex);
    for (let row = Math.round(y * pxPerMm); row < Math.round((y + high) * pxPerMm); row += 1)
      for (let column = Math.round(x * pxPerMm); column < Math.round((x + wide) * pxPerMm); column += 1)
        data.set([red, green, blue, 255], (row * width + column) * 4);
  };
  fill(0, 0, sheet.width, sheet.height, paper);
  colours.forEach((colour, at) => {
    const { x, y } = cellAt(grid, Math.floor(at / columns), at % columns);
    fill(x - 0.1, y - 0.1, grid.cell.width + 0.2, grid.cell.height + 0.2, "#111111");
    fill(x + 0.1, y + 0.1, grid.cell.width - 0.2, grid.cell.height - 0.2, colour);
    for (let line = 0; line < 3; line += 1)
      for (let letter = 0; letter < 20; letter += 1)
        fill(x + letter * 1.2, y + grid.cell.height + 1.2 + line * 2.76, 0.5, 1.5, "#111111");
  });
  return { width, height, data };
}

describe("a printed chart that is coloured in", () => {
  it.each(columnCounts)(
    "of %i columns is read from a picture of it by its rows, columns and corners",
    (columns) => {
      const grid = gridOf(columns);
      // No channel at its end: what lies beyond a picture's colours is marked, and is another test's.
      const colours = Array.from({ length: grid.rows * columns }, (_, at) =>
        hexFromLab({
          white: "D65",
          l: 40 + ((at * 37) % 40),
          a: ((at * 53) % 30) - 15,
          b: ((at * 71) % 36) - 18,
        }),
      );
      const [a, b, c, d] = cornersOf(grid).map(([x, y]) => ({ x: x * pxPerMm, y: y * pxPerMm }));
      if (!a || !b || !c || !d) throw new Error("a grid has four corners");
      const read = readChart({
        picture: scanned(columns, colours),
        corners: [a, b, c, d],
        rows: grid.rows,
        columns,
        gap: 0.4, // "much", as the sheet says
        white: labFromHex(paper),
      });
      if (!read.ok) throw new Error(read.fault.problem);
      const misses = read.value.cells.map(({ seen }, at) =>
        seen ? deltaE2000(seen, labFromHex(colours[at] ?? "")) : 99,
      );
      // Source: the limits that are asked of a photo of a chart, median ΔE00 under 2 and 95 in 100 under 5.
      expect(misses.toSorted((x, y) => x - y)[Math.floor(misses.length / 2)]).toBeLessThan(2);
      expect(Math.max(...misses)).toBeLessThan(5);
      expect(read.value.cells.filter(({ lab }) => lab === null)).toEqual([]);
    },
  );
});
