import {
  convert,
  dividedBy,
  type Exact,
  exact,
  type Money,
  nought,
  plus,
  plusTax,
  printed,
  type RateTable,
  type RateUse,
  sumMoney,
  times,
} from "../money/index.ts";
import { type Outcome, ok } from "../record/index.ts";
import { type BorderWhy, chargesFor } from "./border.ts";
import type { KitCost } from "./figures.ts";
import type { Market, Tier } from "./schema.ts";

/** What a tier's cost depends on beside the tier: where it goes, from where, on which day's rates. */
export type Shipment = Readonly<{
  market: Market;
  origin: string | null;
  rates: readonly RateTable[];
  valuedOn: string;
  /** Where the tier, and the market's rules, stand in the workbook. */
  places: Readonly<{ tier: string; market: string }>;
}>;

/** One amount of a sum: what it is, as quoted, and the rate it was converted at (null for none). */
export type CostPart = Readonly<{
  what: "price" | "feeOnce" | "discount" | "postage";
  quoted: Money;
  rate: RateUse | null;
}>;

/** How a tier's cost came about. */
export type CostWhy = Readonly<{
  goods: readonly CostPart[];
  postage: readonly CostPart[];
  plusTax: string;
  kits: number;
  border: BorderWhy;
}>;

type Costed = Readonly<{ cost: KitCost; why: CostWhy; rates: readonly RateUse[] }>;
type Asked = Readonly<{ what: CostPart["what"]; money: Money; sign: 1 | -1; place: string }>;
type Sum = Readonly<{ amount: Exact; parts: readonly CostPart[] }>;

const isNothing = (money: Money): boolean => /^[0.]+$/.test(money.amount);

/** The sum of amounts that may be in several currencies. Nothing is nothing in any of them, rate or no. */
function sumOf(asked: readonly Asked[], shipment: Shipment): Outcome<Sum> {
  const { market, rates, valuedOn } = shipment;
  let sum: Sum = { amount: nought(market.currency), parts: [] };
  for (const { what, money, sign, place } of asked.filter((part) => !isNothing(part.money))) {
    const converted = convert(exact(money), market.currency, { rates, on: valuedOn, place });
    if (!converted.ok) return converted;
    const { amount, rate } = converted.value;
    sum = {
      amount: plus(sum.amount, times(amount, sign)),
      parts: [...sum.parts, { what, quoted: money, rate }],
    };
  }
  return ok(sum);
}

/** What one payment comes to: its price and fee less its discount. */
function paymentOf(tier: Tier, shipment: Shipment): Outcome<Sum> {
  const place = (field: string): string => `${shipment.places.tier}.${field}`;
  const asked: Asked[] = [{ what: "price", money: tier.price, sign: 1, place: place("price") }];
  if (tier.feeOnce) asked.push({ what: "feeOnce", money: tier.feeOnce, sign: 1, place: place("feeOnce") });
  if (tier.discount) {
    asked.push({ what: "discount", money: tier.discount, sign: -1, place: place("discount") });
  }
  return sumOf(asked, shipment);
}

/** Postage of one kit: the one to this market where given, else the general one, else nothing. */
function postageOf(tier: Tier, shipment: Shipment): Outcome<Sum> {
  const { id } = shipment.market;
  const named = tier.postageTo && Object.hasOwn(tier.postageTo, id) ? tier.postageTo[id] : undefined;
  const money = named ?? tier.postagePerKit;
  if (!money) return sumOf([], shipment);
  const place = `${shipment.places.tier}.${named ? `postageTo.${id}` : "postagePerKit"}`;
  return sumOf([{ what: "postage", money, sign: 1, place }], shipment);
}

const ratesIn = (...lists: readonly (readonly CostPart[])[]): readonly RateUse[] =>
  lists.flat().flatMap(({ rate }) => (rate ? [rate] : []));

/**
 * What one kit of a tier costs in a market: its share of one payment, its postage, and what the border
 * charges, each rounded to the minor unit.
 * @returns a missing rate as a fault
 */
export function costOf(tier: Tier, shipment: Shipment): Outcome<Costed> {
  const payment = paymentOf(tier, shipment);
  if (!payment.ok) return payment;
  const sent = postageOf(tier, shipment);
  if (!sent.ok) return sent;
  const goods = printed(dividedBy(plusTax(payment.value.amount, tier.plusTax), tier.kits));
  const postage = printed(plusTax(sent.value.amount, tier.plusTax));
  const { market, origin, rates, valuedOn, places } = shipment;
  const charges = chargesFor(
    { market, origin, goods, postage },
    { rates, on: valuedOn, place: places.market },
  );
  if (!charges.ok) return charges;
  const { why: border, ...due } = charges.value;
  const parts = [goods, postage, due.duty, due.tax, due.handling];
  return ok({
    cost: { kitCost: sumMoney(market.currency, parts), goods, postage, ...due },
    why: {
      goods: payment.value.parts,
      postage: sent.value.parts,
      plusTax: tier.plusTax ?? "0",
      kits: tier.kits,
      border,
    },
    rates: [...ratesIn(payment.value.parts, sent.value.parts), ...border.rates],
  });
}
