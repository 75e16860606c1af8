import { lightfastness } from "../supply/index.ts";
import { blueWoolOfAstm, type Credit, colourHalving } from "./table.ts";

/** One trait's part in a comparison: likeness 0 to 1 and how much it counts. */
export type Part = Readonly<{ similarity: number; weight: number }>;

/**
 * Gower's general similarity of the parts that count: Σ weight · similarity ÷ Σ weight.
 * A trait that does not count is left out of the parts, which is Gower's δ = 0.
 * @returns null when nothing counts
 * @see J. C. Gower (1971), Biometrics 27(4), 857–871
 */
export function gower(parts: readonly Part[]): number | null {
  let [sum, total] = [0, 0];
  for (const { similarity, weight } of parts) {
    sum += weight * similarity;
    total += weight;
  }
  return total > 0 ? sum / total : null;
}

/** 1 if equal, else the credit the table gives the pair, either way round, else 0. */
export function nominal(credits: readonly Credit[], a: unknown, b: unknown): number {
  if (a === b) return 1;
  const pair = credits.find(([one, other]) => (one === a && other === b) || (one === b && other === a));
  return pair?.[2] ?? 0;
}

/** Jaccard: shared members ÷ all members. */
export function jaccard(a: readonly string[], b: readonly string[]): number {
  const [one, other] = [new Set(a), new Set(b)];
  const shared = [...one].filter((member) => other.has(member)).length;
  return shared / (one.size + other.size - shared);
}

/** 1 − steps apart ÷ range; 0 for a word that is not on the scale. */
export function ordered(scale: readonly string[], a: string, b: string): number {
  const [one, other] = [scale.indexOf(a), scale.indexOf(b)];
  return one < 0 || other < 0 ? 0 : 1 - Math.abs(one - other) / (scale.length - 1);
}

const astm = lightfastness.slice(0, 5);
const blueWool = lightfastness.slice(5);
const woolSteps = (rating: string): number => blueWoolOfAstm[rating] ?? Number(rating.slice(2));

/** Steps on one scale where both sides use it; else both as blue wool steps, 1 to 8. */
export function lightfastLikeness(a: string, b: string): number {
  for (const scale of [astm, blueWool] as readonly (readonly string[])[]) {
    if (scale.includes(a) && scale.includes(b)) return ordered(scale, a, b);
  }
  return 1 - Math.abs(woolSteps(a) - woolSteps(b)) / 7;
}

/** 1 − |log ratio| ÷ log of the ratio at which it is 0: the same either way round, never below 0. */
export const ratioLikeness = (zeroAt: number, a: number, b: number): number =>
  Math.max(0, 1 - Math.abs(Math.log(a / b)) / Math.log(zeroAt));

/** 2^(−ΔE00 ÷ 12): halves with every 12. */
export const colourLikeness = (deltaE: number): number => 2 ** (-deltaE / colourHalving);
