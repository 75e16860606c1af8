import { Decimal, difference, type Money } from "../money/index.ts";
import type { PricedLine } from "../price/index.ts";
import type { KitCost, TierWorth, Totals } from "./figures.ts";
import type { Tier } from "./schema.ts";
import { spansOf } from "./totals.ts";
import { judge } from "./verdict.ts";

/** `a ÷ b` with two decimals, half away from zero; null over nought. */
function ratioText(a: Money, b: Money): string | null {
  if (new Decimal(b.amount).isZero()) return null;
  const ratio = new Decimal(a.amount).div(b.amount).toDecimalPlaces(2);
  return (ratio.isZero() ? ratio.abs() : ratio).toFixed(2);
}

/** Whether a tier is offered in a market; one that names none is offered everywhere. */
export const isOffered = (tier: Tier, market: string): boolean =>
  !tier.markets || tier.markets.includes(market);

/** What a tier gains and whether it pays, given its cost and a market's totals. */
export function tierWorth(
  tier: Tier,
  cost: KitCost,
  totals: Totals,
  lines: readonly PricedLine[],
): TierWorth {
  const { kitCost } = cost;
  const list = judge(spansOf(lines, "list"), { low: totals.listLow, high: totals.listHigh }, kitCost);
  const street = judge(spansOf(lines, "street"), { low: totals.streetLow, high: totals.streetHigh }, kitCost);
  return {
    tier: tier.id,
    kits: tier.kits,
    ...cost,
    listGain: difference(totals.listTotal, kitCost),
    streetGain: difference(totals.streetTotal, kitCost),
    wantedGain: difference(totals.wantedTotal, kitCost),
    listRatio: ratioText(totals.listTotal, kitCost),
    streetRatio: ratioText(totals.streetTotal, kitCost),
    breakEvenShare: ratioText(kitCost, totals.streetTotal),
    listVerdict: list.verdict,
    streetVerdict: street.verdict,
    listHangsOn: list.hangsOn,
    streetHangsOn: street.hangsOn,
  };
}
