import { solve } from "./solve.ts";
import type { Strip } from "./strips.ts";

type Logs = readonly [number, number, number];

/** The log of the light on paper, by place of the chart: a constant, a plane, or a curved sheet a channel. */
export type Surface = (u: number, v: number) => Logs;

/** How a place departs from a surface: in brightness (below 0: darker) and, at most, in any channel's tint. */
export type Departure = Readonly<{ brightness: number; tint: number }>;

/** The terms of a polynomial around the chart's middle: 1, 3 or 6 of them. */
const termsAt = (u: number, v: number, count: number): readonly number[] => {
  const [x, y] = [u - 0.5, v - 0.5];
  return [1, x, y, x * x, x * y, y * y].slice(0, count);
};

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, at) => sum + value * (b[at] ?? 0), 0);

export function departure({ u, v, log }: Pick<Strip, "u" | "v" | "log">, surface: Surface): Departure {
  const [red, green, blue] = surface(u, v);
  const [r, g, b] = [log[0] - red, log[1] - green, log[2] - blue];
  const brightness = (r + g + b) / 3;
  const tint = Math.max(Math.abs(r - brightness), Math.abs(g - brightness), Math.abs(b - brightness));
  return { brightness, tint };
}

/** A little pull to flatness in the slopes, so that places on one line still determine a sheet. */
const stiffness = 1e-4;

/** Weighted least squares of all three channels at once; null where the places do not determine it. */
function fitted(strips: readonly Strip[], weights: readonly number[], count: number): Surface | null {
  const equations = Array.from({ length: count }, () => new Array<number>(count + 3).fill(0));
  strips.forEach((strip, at) => {
    const terms = termsAt(strip.u, strip.v, count);
    equations.forEach((equation, row) => {
      const factor = (weights[at] ?? 0) * (terms[row] ?? 0);
      [...terms, ...strip.log].forEach((value, column) => {
        equation[column] = (equation[column] ?? 0) + factor * value;
      });
    });
  });
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const stiff = equations.map((equation, row) =>
    equation.map((value, column) => (row === column && row > 0 ? value + stiffness * total : value)),
  );
  const found = solve(stiff);
  if (!found) return null;
  const [red = [], green = [], blue = []] = found;
  return (u, v) => {
    const terms = termsAt(u, v, count);
    return [dot(red, terms), dot(green, terms), dot(blue, terms)];
  };
}

const distanceOf = ({ brightness, tint }: Departure): number => Math.hypot(brightness, tint);

export const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor((values.length - 1) / 2)] ?? 0;

/** Logs of light within which places lie on one plane, for a start: a lamp's fall-off bends by about as much. */
const onPlane = 0.08;
/** As many planes are tried, so that with four places in ten in another light a good one is all but certain. */
const planesTried = 240;

/** A whole number scattered over 32 bits, without a pattern but always the same: no chance in the engine. */
function scattered(number: number): number {
  const once = Math.imul(number ^ (number >>> 16), 0x45d9f3b);
  const twice = Math.imul(once ^ (once >>> 16), 0x45d9f3b);
  return (twice ^ (twice >>> 16)) >>> 0;
}

/** Three of `count` places, most often different ones. */
const triple = (turn: number, count: number): readonly number[] =>
  [1, 2, 3].map((nth) => scattered(3 * turn + nth) % count);

const supportOf = (surface: Surface, strips: readonly Strip[]): number =>
  strips.reduce((sum, strip) => sum + (distanceOf(departure(strip, surface)) < onPlane ? strip.share : 0), 0);

/**
 * The plane that most places lie on. The others, in a shadow or no paper at all, do not bend it.
 * @see Fischler & Bolles (1981), Communications of the ACM 24(6), 381–395 (random sample consensus)
 */
function consensus(strips: readonly Strip[]): Surface | null {
  const flat = strips.map(
    ({ log }): Surface =>
      () =>
        log,
  );
  const planes = Array.from({ length: planesTried }, (_, turn) => {
    const three = triple(turn, strips.length).flatMap((at) => strips[at] ?? []);
    return fitted(three, [1, 1, 1], 3);
  });
  let best: { surface: Surface; support: number } | null = null;
  for (const surface of [...flat, ...planes]) {
    const support = surface ? supportOf(surface, strips) : 0;
    if (surface && (!best || support > best.support)) best = { surface, support };
  }
  return best?.surface ?? null;
}

/** The least and the most that places of one light depart from a curved sheet. */
const [leastScale, mostScale] = [0.01, 0.03];
const scaleOf = (distances: readonly number[]): number =>
  Math.min(mostScale, Math.max(leastScale, 1.4826 * median(distances)));

/** Tukey's biweight: what is far away does not pull at all. */
const tukey = (distance: number, scale: number): number =>
  Math.max(0, 1 - (distance / (4.685 * scale)) ** 2) ** 2;

/** One turn of reweighting: fits with the weights that the last surface gives. */
function refitted(strips: readonly Strip[], surface: Surface): Surface {
  const distances = strips.map((strip) => distanceOf(departure(strip, surface)));
  const scale = scaleOf(distances);
  const weights = strips.map(({ share }, at) => share * tukey(distances[at] ?? 0, scale));
  const held = weights.filter((weight) => weight > 0).length;
  return fitted(strips, weights, termsFor(held)) ?? surface;
}

const termsFor = (places: number): number => (places >= 12 ? 6 : places >= 4 ? 3 : 1);
const turns = 10;

/**
 * The light over the chart from places that are mostly bare paper: the plane that most of them lie on, then a
 * polynomial of at most the second degree in the log of linear light, by iteratively reweighted least squares.
 * @returns null without a single place
 * @see Beaton & Tukey (1974), Technometrics 16(2), 147–185 (biweight); Holland & Welsch (1977), Communications in
 *   Statistics A6(9), 813–827 (the factor 4.685)
 */
export function lightSurface(strips: readonly Strip[]): Surface | null {
  let surface = consensus(strips);
  for (let turn = 0; surface && turn < turns; turn++) surface = refitted(strips, surface);
  return surface;
}

/** The light from a few places that are surely paper: a plane through them, as level as they allow. */
export const lightThrough = (strips: readonly Strip[]): Surface | null =>
  fitted(
    strips,
    strips.map(({ share }) => share),
    strips.length > 1 ? 3 : 1,
  );
