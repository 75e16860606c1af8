import { figureIn, type Language } from "../record/index.ts";
import { minorDigits } from "./currencies.ts";
import { amountText, type Decimal, roundMinor, Wide } from "./decimal.ts";
import type { Money } from "./schema.ts";

/**
 * An amount at full precision: `over ÷ under`, divided only where it is rounded. A third of a price,
 * converted and tripled, is then the price again, and an exact half stays a half.
 */
export type Exact = Readonly<{ over: Decimal; under: Decimal; currency: string }>;

/** What may stand for a number: decimal text, a whole number, or a decimal. */
export type Figure = string | number | Decimal;

export const exact = (money: Money): Exact => ({
  over: new Wide(money.amount),
  under: new Wide(1),
  currency: money.currency,
});

export const nought = (currency: string): Exact => exact({ amount: "0", currency });

/** @throws RangeError when the two are of different currencies: convert first */
function oneCurrency(a: Exact, b: Exact): void {
  if (a.currency !== b.currency) throw new RangeError(`${a.currency} and ${b.currency} do not add up`);
}

/** @throws RangeError for two currencies */
export function plus(a: Exact, b: Exact): Exact {
  oneCurrency(a, b);
  if (a.under.eq(b.under)) return { ...a, over: a.over.plus(b.over) };
  return { ...a, over: a.over.times(b.under).plus(b.over.times(a.under)), under: a.under.times(b.under) };
}

export const times = (a: Exact, factor: Figure): Exact => ({
  ...a,
  over: a.over.times(new Wide(factor)),
});

/** @throws RangeError for a divisor of nought or below */
export function dividedBy(a: Exact, divisor: Figure): Exact {
  const by = new Wide(divisor);
  if (!by.gt(0)) throw new RangeError(`an amount cannot be divided by ${by.toFixed()}`);
  return { ...a, under: a.under.times(by) };
}

/** `amount × (1 + tax)`: what a price quoted before tax comes to. `tax` is a fraction ("0.25"). */
export const plusTax = (a: Exact, tax: string | null | undefined): Exact =>
  times(a, new Wide(tax ?? 0).plus(1));

/**
 * Which of two amounts of one currency is the greater.
 * @returns below 0, 0 or above 0, as a sort wants it
 * @throws RangeError for two currencies
 */
export function compare(a: Exact, b: Exact): number {
  oneCurrency(a, b);
  return a.over.times(b.under).cmp(b.over.times(a.under));
}

/** The amount as one decimal, to 240 digits where the division does not come out even. */
export const quotient = (a: Exact): Decimal => (a.under.eq(1) ? a.over : a.over.div(a.under));

/** The figure that is printed or charged: rounded once, half away from zero, with exactly the minor decimals. */
export function printed(a: Exact): Money {
  const rounded = roundMinor(quotient(a), a.currency);
  const amount = rounded.isZero() ? rounded.abs() : rounded; // no "-0.00"
  return { amount: amount.toFixed(minorDigits(a.currency)), currency: a.currency };
}

/** The amount in plain words, as it was given: "EUR 5.40", "5,40 EUR". Locale-free; screens use `formatMoney`. */
export function plainMoney(money: Money, language: Language = "en"): string {
  const amount = figureIn(amountText(new Wide(money.amount), money.currency), language);
  return language === "sv" ? `${amount} ${money.currency}` : `${money.currency} ${amount}`;
}
