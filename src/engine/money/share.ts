import { minorDigits } from "./currencies.ts";
import { type Decimal, Wide } from "./decimal.ts";
import type { Figure } from "./exact.ts";
import type { Money } from "./schema.ts";

type Part = Readonly<{ index: number; whole: Decimal; remainder: Decimal }>;

/** Weights as decimals. @throws RangeError when one is below nought, or all are nought */
function weighed(weights: readonly Figure[]): { parts: readonly Decimal[]; sum: Decimal } {
  const parts = weights.map((weight) => new Wide(weight));
  const sum = parts.reduce((total, part) => total.plus(part), new Wide(0));
  if (parts.some((part) => part.lt(0)) || !sum.gt(0)) {
    throw new RangeError("shares need weights of nought or more, one of them above nought");
  }
  return { parts, sum };
}

/** Minor units per part: each its whole quota, then one more to the largest remainders, earlier first. */
function quotas(units: Decimal, weights: readonly Figure[]): readonly Decimal[] {
  const { parts, sum } = weighed(weights);
  const shares: Part[] = parts.map((part, index) => {
    const product = units.times(part);
    return { index, whole: product.divToInt(sum), remainder: product.mod(sum) };
  });
  const given = shares.reduce((total, part) => total.plus(part.whole), new Wide(0));
  const left = units.minus(given).toNumber(); // fewer than there are parts, so a safe integer
  const ranked = shares.toSorted((a, b) => b.remainder.cmp(a.remainder) || a.index - b.index);
  const lucky = new Set(ranked.slice(0, left).map((part) => part.index));
  return shares.map((part) => (lucky.has(part.index) ? part.whole.plus(1) : part.whole));
}

/**
 * Shares an amount out by weight, to the minor unit: the shares add up to exactly the amount.
 * @throws RangeError when the amount has decimals below the minor unit (round it first), or when the
 *   weights are no basis for sharing
 * @see Balinski & Young (1982), Fair Representation: the largest-remainder (Hamilton) method; ties
 *   go to the earlier part
 */
export function share(total: Money, weights: readonly Figure[]): readonly Money[] {
  const digits = minorDigits(total.currency);
  const units = new Wide(total.amount).times(new Wide(10).pow(digits));
  if (!units.isInteger()) throw new RangeError(`${total.amount} is not in whole minor units`);
  const sign = units.lt(0) ? -1 : 1;
  return quotas(units.abs(), weights).map((quota) => ({
    amount: (quota.isZero() ? quota : quota.times(sign)).div(new Wide(10).pow(digits)).toFixed(digits),
    currency: total.currency,
  }));
}
