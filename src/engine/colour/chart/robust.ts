import { type Lab, labFromLinear } from "../lab.ts";
import type { Triple } from "../matrix.ts";
import type { Part } from "./parts.ts";

/** A swatch's colour, and which of its parts are of that colour. */
export type Centre = Readonly<{ linear: Triple; lab: Lab; isOfIt: (part: Part) => boolean }>;

/**
 * How far a colour lies from a middle one: plain distance in Lab, a* and b* counting less the stronger the
 * middle colour is, as in CIE 94 (kL = kC = kH = 1). Cheaper than CIEDE2000, and enough to tell parts apart.
 * @see CIE 116-1995
 */
function away(middle: Lab, other: Lab): number {
  const [da, db] = [other.a - middle.a, other.b - middle.b];
  const chroma = Math.hypot(middle.a, middle.b);
  const dC = Math.hypot(other.a, other.b) - chroma;
  const dHSquared = Math.max(0, da * da + db * db - dC * dC);
  return Math.sqrt(
    (other.l - middle.l) ** 2 + (dC / (1 + 0.045 * chroma)) ** 2 + dHSquared / (1 + 0.015 * chroma) ** 2,
  );
}

/** The part around which half of all parts lie closest, and how far the furthest of that half is. */
function densest(
  parts: readonly Part[],
): Readonly<{ part: Pick<Part, "linear" | "lab">; radius: number }> | null {
  const half = Math.floor((parts.length - 1) / 2);
  const radii = parts.map(
    ({ lab }) => parts.map((other) => away(lab, other.lab)).toSorted((a, b) => a - b)[half] ?? 0,
  );
  const radius = Math.min(...radii);
  const part = parts[radii.indexOf(radius)];
  return part ? { part, radius } : null;
}

/** Parts of one even swatch differ by this much through paper and camera; more than the other is another colour. */
const [leastCut, mostCut] = [2.5, 12];
/** The half of an even, noisy swatch lies within about 1.54 deviations (chi, 3 degrees of freedom). */
const deviationsToHalf = 1.538;

/**
 * The robust mean of a swatch's parts, in linear light: begins where half of the parts lie closest together (the
 * idea of the minimum volume ellipsoid, which up to half of strange parts cannot pull away), then averages with
 * Tukey's biweight around it.
 * @returns null without parts
 * @see Rousseeuw (1985), Multivariate Estimation with High Breakdown Point; Beaton & Tukey (1974), Technometrics 16(2)
 */
export function robustMean(parts: readonly Part[]): Centre | null {
  const start = densest(parts);
  if (!start) return null;
  const cut = Math.min(mostCut, Math.max(leastCut, (4.685 * start.radius) / deviationsToHalf));
  let centre = start.part;
  for (let turn = 0; turn < 6; turn++) {
    const linear = weightedMean(parts, centre.lab, cut);
    if (linear) centre = { linear, lab: labFromLinear(linear) };
  }
  const { linear, lab } = centre;
  return { linear, lab, isOfIt: (part) => away(lab, part.lab) < cut };
}

function weightedMean(parts: readonly Part[], around: Lab, cut: number): Triple | null {
  const weights = parts.map(({ lab }) => Math.max(0, 1 - (away(around, lab) / cut) ** 2) ** 2);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  if (total === 0) return null;
  const mean = (channel: 0 | 1 | 2) =>
    parts.reduce((sum, { linear }, at) => sum + (weights[at] ?? 0) * linear[channel], 0) / total;
  return [mean(0), mean(1), mean(2)];
}
