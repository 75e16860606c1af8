import type { Lab } from "./lab.ts";

const radians = Math.PI / 180;
const power7 = (v: number): number => v ** 7;

/**
 * A CIEDE2000 difference and its three signed parts, each already weighted so that they can be compared:
 * `l` above 0 when the second colour is lighter, `c` when it is stronger, `h` when its hue lies further on.
 */
export type Difference = Readonly<{ total: number; l: number; c: number; h: number }>;

/**
 * CIEDE2000 difference from `first` to `second` with kL = kC = kH = 1.
 * The symbols are those of the paper, whose numbered steps this follows.
 * @see Sharma, Wu & Dalal (2005), Color Research & Application 30(1), 21–30
 */
export function difference(first: Lab, second: Lab): Difference {
  // Stretch a* of near-greys, whose ellipses would otherwise lie along it.
  const meanC = (Math.hypot(first.a, first.b) + Math.hypot(second.a, second.b)) / 2;
  const g = 0.5 * (1 - Math.sqrt(power7(meanC) / (power7(meanC) + power7(25))));
  const a1 = (1 + g) * first.a;
  const a2 = (1 + g) * second.a;
  const c1 = Math.hypot(a1, first.b);
  const c2 = Math.hypot(a2, second.b);
  const h1 = hueDegrees(a1, first.b);
  const h2 = hueDegrees(a2, second.b);

  const dL = second.l - first.l;
  const dC = c2 - c1;
  const dh = c1 * c2 === 0 ? 0 : shortestTurn(h2 - h1);
  const dH = 2 * Math.sqrt(c1 * c2) * Math.sin((dh / 2) * radians);

  const meanL = (first.l + second.l) / 2;
  const meanC1 = (c1 + c2) / 2;
  const meanH = meanHue(h1, h2, c1 * c2 === 0);
  const t =
    1 -
    0.17 * Math.cos((meanH - 30) * radians) +
    0.24 * Math.cos(2 * meanH * radians) +
    0.32 * Math.cos((3 * meanH + 6) * radians) -
    0.2 * Math.cos((4 * meanH - 63) * radians);
  const sL = 1 + (0.015 * (meanL - 50) ** 2) / Math.sqrt(20 + (meanL - 50) ** 2);
  const sC = 1 + 0.045 * meanC1;
  const sH = 1 + 0.015 * meanC1 * t;
  // Chroma and hue pull on each other around blue: the rotation term.
  const turn = 30 * Math.exp(-(((meanH - 275) / 25) ** 2));
  const rC = 2 * Math.sqrt(power7(meanC1) / (power7(meanC1) + power7(25)));
  const rT = -Math.sin(2 * turn * radians) * rC;

  const [l, c, h] = [dL / sL, dC / sC, dH / sH];
  return { total: Math.sqrt(Math.max(0, l * l + c * c + h * h + rT * c * h)), l, c, h };
}

/**
 * CIEDE2000 difference with kL = kC = kH = 1.
 * @returns 0 for equal colours, else positive; argument order does not matter. It breaks the triangle
 *   inequality, so metric trees and early cut-offs would miss the nearest colour.
 */
export const deltaE2000 = (a: Lab, b: Lab): number => difference(a, b).total;

function hueDegrees(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const degrees = Math.atan2(b, a) / radians;
  return degrees < 0 ? degrees + 360 : degrees;
}

const shortestTurn = (dh: number): number => (dh > 180 ? dh - 360 : dh < -180 ? dh + 360 : dh);

/** The paper's mean hue: for a grey, the other's hue; not circular above 360, on purpose. */
function meanHue(h1: number, h2: number, oneIsGrey: boolean): number {
  const sum = h1 + h2;
  if (oneIsGrey) return sum;
  if (Math.abs(h1 - h2) <= 180) return sum / 2;
  return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}

/** A CIEDE2000 difference as a word. The limits are ours; that about 1 is just noticeable is usual. */
export function differenceWord(deltaE: number): string {
  if (deltaE < 1) return "indistinguishable";
  if (deltaE < 2) return "only side by side";
  if (deltaE < 5) return "close";
  if (deltaE < 10) return "kindred";
  return deltaE < 20 ? "different" : "far";
}
