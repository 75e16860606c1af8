import { differenceCiede2000, parse } from "culori";

/**
 * Likeness worked once more from docs/likeness.md, with culori's CIEDE2000 (an independent library) and none of
 * the app's code.
 */
const ciede2000 = differenceCiede2000();

const colour = (hex: string) => {
  const parsed = parse(hex);
  if (!parsed) throw new Error(`not a colour: ${hex}`);
  return parsed;
};

const apart = (a: string, b: string): number => ciede2000(colour(a), colour(b));
const alike = (deltaE: number): number => 2 ** (-deltaE / 12);
const ratio = (a: number, b: number, zeroAt: number): number =>
  1 - Math.abs(Math.log(a / b)) / Math.log(zeroAt);

/** The weighted mean of pairs of likeness and weight. */
const gower = (...parts: readonly (readonly [number, number])[]): number =>
  parts.reduce((sum, [value, weight]) => sum + value * weight, 0) /
  parts.reduce((sum, [, weight]) => sum + weight, 0);

const hex = {
  moss: "#6b7d3a",
  rust: "#a3522b",
  lichen: "#8a9455",
  sand: "#c8b187",
  olive: "#73823f",
  fern: "#4f6b32",
  brick: "#b0553a",
  burnt: "#b5562a",
  straw: "#d2b877",
  black: "#000000",
} as const;
type Name = keyof typeof hex;

const missOf = (kit: Name, mine: Name): number => apart(hex[kit], hex[mine]);
const tube = (kit: Name, mine: Name, ml = 15): number =>
  gower([alike(missOf(kit, mine)), 6], [1, 4], [1, 1], [ratio(ml, 15, 10), 0.5]);

/** Every nearness figure of the scene, of 1. */
export const near = {
  mossOlive: tube("moss", "olive"),
  mossFern: tube("moss", "fern"),
  rustBrick: tube("rust", "brick", 20),
  rustPan: gower([alike(missOf("rust", "burnt")), 6], [0.5, 4], [0.6, 1], [0.5, 0.5]),
  lichenOlive: tube("lichen", "olive"),
  lichenFern: tube("lichen", "fern"),
  straw: gower([alike(missOf("sand", "straw")), 6], [0.8, 3]),
  pencil4B: gower([1 - 2 / 21, 4], [1, 3], [1, 2]),
  liner: gower([1, 4], [ratio(0.3, 0.5, 4), 3], [1, 2], [1, 2]),
  block: gower([1, 4], [1, 3], [ratio(200, 300, 4), 3], [1, 0.5]),
  pad: gower([0.4, 4], [(210 * 297) / (240 * 320), 3], [ratio(120, 300, 4), 3], [0.8, 0.5]),
} as const;

type Pair = readonly [Name, Name];
const others: readonly Pair[] = [
  ["rust", "brick"],
  ["sand", "straw"],
  ["black", "black"],
];

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Mean nearness of all eight lines, mean miss of the coloured ones, and the mean change of the steps between them. */
function meansOf(moss: Name, lichen: Name) {
  const pairs: readonly Pair[] = [["moss", moss], ["lichen", lichen], ...others];
  const steps = pairs.flatMap(([kitA, mineA], i) =>
    pairs.slice(i + 1).map(([kitB, mineB]) => Math.abs(missOf(kitA, kitB) - missOf(mineA, mineB))),
  );
  const whole = [
    tube("moss", moss),
    near.rustBrick,
    tube("lichen", lichen),
    near.straw,
    1, // the very same pencil
    near.liner,
    0, // no eraser
    near.block,
  ];
  return {
    near: Math.round(mean(whole) * 100),
    apart: mean(pairs.map(([kit, mine]) => missOf(kit, mine))).toFixed(1),
    // 2 ÷ (n − 1) · Σ over pairs, shared over n colours
    steps: ((2 / (pairs.length - 1) / pairs.length) * steps.reduce((sum, step) => sum + step, 0)).toFixed(1),
  };
}

const said = ({ near: figure, apart: miss, steps }: ReturnType<typeof meansOf>): string =>
  `${figure} of 100, colours ${miss} apart, steps ${steps} off`;

export const meansWorked = {
  before: said(meansOf("fern", "olive")),
  after: said(meansOf("olive", "fern")),
} as const;
