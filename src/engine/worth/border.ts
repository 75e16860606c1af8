import {
  compare,
  convert,
  type Exact,
  type Exchange,
  exact,
  type Money,
  nought,
  printed,
  type RateUse,
  sumMoney,
  times,
} from "../money/index.ts";
import { type Outcome, ok } from "../record/index.ts";
import type { ImportRule, Market } from "./schema.ts";

/** A parcel at a border: its goods and its postage, both printed, in the market's currency. */
export type AtBorder = Readonly<{ market: Market; origin: string | null; goods: Money; postage: Money }>;

/** Why the border charges what it does; `rule` null where none applies. */
export type BorderWhy = Readonly<{
  rule: ImportRule | null;
  customsValue: Money;
  overDutyFree: boolean;
  overTaxFree: boolean;
  rates: readonly RateUse[];
}>;

/** What the border charges, each rounded, and why. */
export type Charges = Readonly<{ duty: Money; tax: Money; handling: Money; why: BorderWhy }>;

/**
 * The rule for parcels from another market: the one that names the origin before one for any. Null where
 * none fits, where the kit comes from the market itself, or where nobody knows where it comes from.
 */
function ruleFor(market: Market, origin: string | null): ImportRule | null {
  if (!origin || origin === market.id) return null;
  const rules = market.import ?? [];
  const named = rules.find(({ from }) => Array.isArray(from) && from.includes(origin));
  return named ?? rules.find(({ from }) => (from ?? "any") === "any") ?? null;
}

/** A rule's money in the market's currency, which it should be in already. */
type Rated = Readonly<{ amount: Exact | null; rates: readonly RateUse[] }>;

function rated(money: Money | null | undefined, currency: string, exchange: Exchange): Outcome<Rated> {
  if (!money) return ok({ amount: null, rates: [] });
  const converted = convert(exact(money), currency, exchange);
  if (!converted.ok) return converted;
  const { amount, rate } = converted.value;
  return ok({ amount, rates: rate ? [rate] : [] });
}

/** Above a threshold, which itself is still free; without one, anything above nought is. */
const isOver = (value: Money, threshold: Exact | null): boolean =>
  compare(exact(value), threshold ?? nought(value.currency)) > 0;

type Thresholds = Readonly<{ dutyFree: Rated; taxFree: Rated; fee: Rated }>;

function thresholdsOf(rule: ImportRule, market: Market, there: Exchange): Outcome<Thresholds> {
  const { currency } = market;
  const exchange = { ...there, place: `${there.place}.import[${(market.import ?? []).indexOf(rule)}]` };
  const dutyFree = rated(rule.dutyFreeUpTo, currency, exchange);
  if (!dutyFree.ok) return dutyFree;
  const taxFree = rated(rule.taxFreeUpTo, currency, exchange);
  if (!taxFree.ok) return taxFree;
  const fee = rated(rule.handlingFee, currency, exchange);
  if (!fee.ok) return fee;
  return ok({ dutyFree: dutyFree.value, taxFree: taxFree.value, fee: fee.value });
}

/** Duty on the customs value, tax on goods, postage and duty, a fee when either comes to more than nought. */
function charged(parcel: AtBorder, rule: ImportRule, { dutyFree, taxFree, fee }: Thresholds): Charges {
  const { currency } = parcel.market;
  const free = nought(currency);
  const withPostage = rule.valueBasis === "goods-and-postage" ? [parcel.postage] : [];
  const customsValue = sumMoney(currency, [parcel.goods, ...withPostage]);
  const overDutyFree = isOver(customsValue, dutyFree.amount);
  const overTaxFree = isOver(customsValue, taxFree.amount);
  const duty = printed(overDutyFree ? times(exact(customsValue), rule.dutyRate ?? "0") : free);
  const taxed = sumMoney(currency, [parcel.goods, parcel.postage, duty]);
  const tax = printed(overTaxFree ? times(exact(taxed), rule.taxRate ?? "0") : free);
  const isDue = isOver(duty, null) || isOver(tax, null);
  const rates = [...dutyFree.rates, ...taxFree.rates, ...(isDue ? fee.rates : [])];
  return {
    duty,
    tax,
    handling: printed(isDue ? (fee.amount ?? free) : free),
    why: { rule, customsValue, overDutyFree, overTaxFree, rates },
  };
}

/**
 * What the border charges for a parcel, in the market's currency; `exchange.place` is where the market
 * stands in the workbook. An estimate: the customs or tax
 * authority of the destination decides.
 * @see Council Directive 2006/112/EC, Articles 85 and 86, for tax on top of duty and postage
 */
export function chargesFor(parcel: AtBorder, exchange: Exchange): Outcome<Charges> {
  const { currency } = parcel.market;
  const rule = ruleFor(parcel.market, parcel.origin);
  if (rule) {
    const thresholds = thresholdsOf(rule, parcel.market, exchange);
    return thresholds.ok ? ok(charged(parcel, rule, thresholds.value)) : thresholds;
  }
  const none = printed(nought(currency));
  const why = { rule: null, customsValue: none, overDutyFree: false, overTaxFree: false, rates: [] };
  return ok({ duty: none, tax: none, handling: none, why });
}
