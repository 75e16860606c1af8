import type { Grid } from "./layout.ts";
import { isPaper, type Light, unlike } from "./light.ts";
import type { Strip } from "./strips.ts";
import { departure } from "./surface.ts";

type Triple = readonly [number, number, number];

/** The light on one swatch, told from the paper on its four sides. */
export type Around = Readonly<{
  /** Linear red, green and blue of bare paper, if it lay where the swatch's middle is, ÷ the surface's there. */
  factor: Triple;
  /** Range of brightness among the sides, in natural logs; 0 up. */
  range: number;
  /** The sides tell of two lights, so that nobody can say which one the swatch lies in. */
  divided: boolean;
  /** A side lies in a shadow, although the light may still be told from the others. */
  shadowed: boolean;
}>;

type Side = Readonly<{ off: Triple; brightness: number }>;

/** The strips on one side of a swatch, the nearest first. */
function sidesOf({ rows, columns }: Grid, { strips }: Light, row: number, column: number) {
  const upright = (at: number) => strips.upright[row * (columns + 1) + at] ?? null;
  const level = (at: number) => strips.level[at * columns + column] ?? null;
  const upTo = (last: number) => Array.from({ length: last + 1 }, (_, at) => last - at);
  const from = (first: number, last: number) =>
    Array.from({ length: last - first + 1 }, (_, at) => first + at);
  return [
    upTo(column).map(upright),
    from(column + 1, columns).map(upright),
    upTo(row).map(level),
    from(row + 1, rows).map(level),
  ];
}

function sideOf({ surface }: Light, strip: Strip): Side {
  const [r, g, b] = surface(strip.u, strip.v);
  const off: Triple = [strip.log[0] - r, strip.log[1] - g, strip.log[2] - b];
  return { off, brightness: (off[0] + off[1] + off[2]) / 3 };
}

/** The nearest bare paper on each side; beside the swatch if two sides have it there, else as far as it takes. */
function paperSides(light: Light, lists: readonly (readonly (Strip | null)[])[]): readonly Side[] {
  const isUsable = (strip: Strip | null): strip is Strip =>
    strip !== null && !strip.clipped && strip.share >= 0.2 && isPaper(departure(strip, light.surface));
  const ends = lists.map((list) => (light.between ? list : list.slice(-1)));
  const beside = ends.flatMap((list) => list.slice(0, 1)).filter(isUsable);
  const near = beside.length >= 2 ? beside : ends.flatMap((list) => list.find(isUsable) ?? []);
  return near.map((strip) => sideOf(light, strip));
}

const rangeOf = (sides: readonly Side[]): number =>
  sides.length === 0
    ? 0
    : Math.max(...sides.map((side) => side.brightness)) - Math.min(...sides.map((side) => side.brightness));

/** Three sides that agree outvote a fourth: the first three that do, the odd one being looked for at either end. */
function agreeing(sides: readonly Side[]): readonly Side[] {
  if (sides.length < 4 || rangeOf(sides) <= unlike) return sides;
  const sorted = sides.toSorted((a, b) => a.brightness - b.brightness);
  const three = [sorted.slice(1), sorted.slice(0, -1)].find((some) => rangeOf(some) <= (2 / 3) * unlike);
  return three ?? sides;
}

const meanOff = (sides: readonly Side[], channel: 0 | 1 | 2): number =>
  sides.reduce((sum, { off }) => sum + off[channel], 0) / Math.max(1, sides.length);

/** The light on one swatch. Where no side tells, it is that of the surface. */
export function lightAround(grid: Grid, light: Light, row: number, column: number): Around {
  const lists = sidesOf(grid, light, row, column);
  const sides = paperSides(light, lists);
  const agreed = agreeing(sides);
  return {
    factor: [Math.exp(meanOff(agreed, 0)), Math.exp(meanOff(agreed, 1)), Math.exp(meanOff(agreed, 2))],
    range: rangeOf(agreed),
    divided: rangeOf(agreed) > unlike,
    shadowed: rangeOf(sides) > unlike,
  };
}
