import { type Lab, labFromLinear } from "../lab.ts";
import type { Triple } from "../matrix.ts";
import type { Box } from "./layout.ts";
import { highestByte, linearOf, placeSites, type Raster, rasterOf, type Scene } from "./sites.ts";

/** A small part of a swatch: the mean of its pixels in linear light, levelled, paper being the stated white. */
export type Part = Readonly<{
  linear: Triple;
  lab: Lab;
  /** Cut off at the bright end, or at the dark end of a channel though another is well lit; else not. */
  clipped: "high" | "low" | null;
}>;

/** A swatch is read at 24 × 24 places or fewer, and told in 6 × 6 parts or fewer. */
const most: Raster = { across: 24, down: 24 };
const mostParts = 6;
/** A part counts as cut off when more than this share of its pixels are; at the dark end noise alone does some. */
const [cutHigh, cutLow] = [0.25, 0.5];
/** A channel at 0 says something only if another one is at least this byte: black may be black. */
const wellLit = 40;

/** The light of paper, linear, at a place of the chart, and what the paper's own colour is. */
export type Level = (u: number, v: number) => Triple;

type Tally = { sum: [number, number, number]; count: number; high: number; low: number };

/** Adds one pixel to a part. */
function count(tally: Tally, data: Uint8ClampedArray, at: number): void {
  const r = data[at] ?? 0;
  const g = data[at + 1] ?? 0;
  const b = data[at + 2] ?? 0;
  tally.sum[0] += linearOf(r);
  tally.sum[1] += linearOf(g);
  tally.sum[2] += linearOf(b);
  tally.count++;
  const brightest = Math.max(r, g, b);
  if (brightest >= highestByte) tally.high++;
  else if (brightest >= wellLit && Math.min(r, g, b) === 0) tally.low++;
}

function partOf(tally: Tally, [r, g, b]: Triple): Part {
  const { sum, count: total, high, low } = tally;
  const linear: Triple = [(sum[0] / total) * r, (sum[1] / total) * g, (sum[2] / total) * b];
  const clipped = high > cutHigh * total ? "high" : low > cutLow * total ? "low" : null;
  return { linear, lab: labFromLinear(linear), clipped };
}

/** The bounds of part `at` of `parts` among `sites`: nearly equal shares, nothing left over. */
const bound = (at: number, parts: number, sites: number): number => Math.round((at * sites) / parts);

/** Reads swatches of one picture, one after the other. `pixels` is how many pixels the parts rest on. */
export function partReader(scene: Scene) {
  const sites = new Int32Array(most.across * most.down);
  const { data } = scene.picture;

  const tallied = (raster: Raster, columns: readonly [number, number], rows: readonly [number, number]) => {
    const tally: Tally = { sum: [0, 0, 0], count: 0, high: 0, low: 0 };
    for (let row = rows[0]; row < rows[1]; row++)
      for (let column = columns[0]; column < columns[1]; column++) {
        const at = sites[row * raster.across + column] ?? -1;
        if (at >= 0) count(tally, data, at);
      }
    return tally;
  };

  return (box: Box, level: Level): Readonly<{ parts: readonly Part[]; pixels: number }> => {
    const raster = rasterOf(scene, box, most);
    placeSites(scene, box, raster, sites);
    const across = Math.min(mostParts, raster.across);
    const down = Math.min(mostParts, raster.down);
    const parts = Array.from({ length: across * down }, (_, part) => {
      const [column, row] = [part % across, Math.floor(part / across)];
      const tally = tallied(
        raster,
        [bound(column, across, raster.across), bound(column + 1, across, raster.across)],
        [bound(row, down, raster.down), bound(row + 1, down, raster.down)],
      );
      const u = box.u0 + ((column + 0.5) / across) * (box.u1 - box.u0);
      const v = box.v0 + ((row + 0.5) / down) * (box.v1 - box.v0);
      return { tally, level: level(u, v) };
    }).filter(({ tally }) => tally.count > 0);
    return {
      parts: parts.map(({ tally, level: by }) => partOf(tally, by)),
      pixels: parts.reduce((sum, { tally }) => sum + tally.count, 0),
    };
  };
}
