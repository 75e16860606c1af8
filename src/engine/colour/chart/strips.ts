import { type Box, type Grid, levelStrip, middleOf, stepOf, uprightStrip } from "./layout.ts";
import { highestByte, linearOf, placeSites, type Raster, rasterOf, type Scene } from "./sites.ts";

/** What one bare place shows: where it is, and the brightest common tone there as the log of linear light. */
export type Strip = Readonly<{
  u: number;
  v: number;
  /** Natural logs of linear red, green and blue. */
  log: readonly [number, number, number];
  /** The share of the place's pixels that have this tone, 0 to 1. */
  share: number;
  /** Whether the camera cut it off, so that the light is not known. */
  clipped: boolean;
}>;

/** Enough for a steady mean, few enough to cost nothing. */
const most: Raster = { across: 20, down: 20 };
const fewestPixels = 12;
/** Bytes of luma that still count as the same tone: a textured paper under camera noise. */
const reach = 14;

/** Luma with weights near those of Rec. 709, in whole sixteenths. */
const lumaOf = (data: Uint8ClampedArray, at: number): number =>
  (3 * (data[at] ?? 0) + 12 * (data[at + 1] ?? 0) + (data[at + 2] ?? 0)) >> 4;

/** The luma below which a share of the pixels lie. */
function quantile(counts: Uint32Array, total: number, share: number): number {
  let seen = 0;
  for (let luma = 0; luma < 256; luma++) {
    seen += counts[luma] ?? 0;
    if (seen >= share * total) return luma;
  }
  return 255;
}

/** The mean luma of the pixels near a tone; drawn to where they lie densest when repeated (mean shift). */
function shifted(counts: Uint32Array, tone: number): number {
  let [sum, weight] = [0, 0];
  for (let luma = Math.max(0, Math.ceil(tone - reach)); luma <= Math.min(255, tone + reach); luma++) {
    sum += luma * (counts[luma] ?? 0);
    weight += counts[luma] ?? 0;
  }
  return weight === 0 ? tone : sum / weight;
}

/**
 * The brightest tone that many of the pixels share: paper, beside a ruled line or paint that ran over.
 * @see Fukunaga & Hostetler (1975), IEEE Transactions on Information Theory 21(1), 32–40 (mean shift)
 */
function brightTone(counts: Uint32Array, total: number): number {
  let tone = quantile(counts, total, 0.8);
  for (let turn = 0; turn < 5; turn++) tone = shifted(counts, tone);
  return tone;
}

/** Counts the lumas of the sites inside the picture; how many there are. */
function countLumas(data: Uint8ClampedArray, sites: Int32Array, counts: Uint32Array): number {
  counts.fill(0);
  let inside = 0;
  for (const at of sites) {
    if (at < 0) continue;
    const luma = lumaOf(data, at);
    counts[luma] = (counts[luma] ?? 0) + 1;
    inside++;
  }
  return inside;
}

/** The mean of the pixels of one tone, in linear light; how many there are, and how many are cut off. */
function meanOfTone(data: Uint8ClampedArray, sites: Int32Array, tone: number) {
  let [red, green, blue, kept, cut] = [0, 0, 0, 0, 0];
  for (const at of sites) {
    if (at < 0 || Math.abs(lumaOf(data, at) - tone) > reach) continue;
    const r = data[at] ?? 0;
    const g = data[at + 1] ?? 0;
    const b = data[at + 2] ?? 0;
    red += linearOf(r);
    green += linearOf(g);
    blue += linearOf(b);
    kept++;
    if (Math.max(r, g, b) >= highestByte) cut++;
  }
  return { mean: [red / kept, green / kept, blue / kept] as const, kept, cut };
}

/** No less light than this, so that it has a log. */
const leastLight = 1e-4;
const logOf = (light: number): number => Math.log(Math.max(light, leastLight));

/** Reads places of one picture, one after the other; null where too little of one is in the picture. */
export function stripReader(scene: Scene): (box: Box) => Strip | null {
  const room = new Int32Array(most.across * most.down);
  const counts = new Uint32Array(256);
  const { data } = scene.picture;
  return (box) => {
    const raster = rasterOf(scene, box, most);
    const sites = room.subarray(0, raster.across * raster.down);
    if (sites.length < fewestPixels) return null;
    placeSites(scene, box, raster, sites);
    const inside = countLumas(data, sites, counts);
    if (inside < fewestPixels) return null;
    const { mean, kept, cut } = meanOfTone(data, sites, brightTone(counts, inside));
    const [u, v] = middleOf(box);
    const log = [logOf(mean[0]), logOf(mean[1]), logOf(mean[2])] as const;
    return { u, v, log, share: kept / inside, clipped: cut > 0.1 * kept };
  };
}

/** The bare strips of a chart. Each list is row by row; null where too little of one is in the picture. */
export type Strips = Readonly<{
  /** Left of each swatch, and right of the last: columns + 1 a row. */
  upright: readonly (Strip | null)[];
  /** Above each swatch, and below the last row: rows + 1 rows. */
  level: readonly (Strip | null)[];
}>;

const cells = <T>(rows: number, columns: number, at: (row: number, column: number) => T): readonly T[] =>
  Array.from({ length: rows * columns }, (_, cell) => at(Math.floor(cell / columns), cell % columns));

/** Reads the strips around every swatch; without a gap only those around the chart. */
export function readStrips(grid: Grid, read: (box: Box) => Strip | null): Strips {
  const { rows, columns, gap } = grid;
  const isBare = (at: number, count: number) => gap > 0 || at === 0 || at === count;
  return {
    upright: cells(rows, columns + 1, (row, column) =>
      isBare(column, columns) ? read(uprightStrip(grid, row, column)) : null,
    ),
    level: cells(rows + 1, columns, (row, column) =>
      isBare(row, rows) ? read(levelStrip(grid, row, column)) : null,
    ),
  };
}

/** The box around a spot that the person pointed at, a sixth of a step wide. */
export function spotBox({ rows, columns, gap }: Grid, u: number, v: number): Box {
  const [halfU, halfV] = [stepOf(columns, gap) / 12, stepOf(rows, gap) / 12];
  return { u0: u - halfU, u1: u + halfU, v0: v - halfV, v1: v + halfV };
}
