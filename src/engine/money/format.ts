import { minorDigits } from "./currencies.ts";
import { exact, printed } from "./exact.ts";
import type { Money } from "./schema.ts";

/** Decimal text; `Intl` takes it digit by digit, where a number would lose digits past 2^53. */
type NumberText = `${number}`;

function currencyFormat(currency: string, locale: string): Intl.NumberFormat {
  const digits = minorDigits(currency);
  return new Intl.NumberFormat(locale, {
    style: "currency",
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
}

/**
 * Writes money for people of a locale: order, separators and symbol by `Intl`, decimals by ISO 4217
 * from our own table, rounding by ours.
 */
export const formatMoney = (money: Money, locale: string): string => moneyFormatter(locale)(money);

/** `formatMoney` for many amounts: keeps one format per currency, as building one is slow. */
export function moneyFormatter(locale: string): (money: Money) => string {
  const formats = new Map<string, Intl.NumberFormat>();
  return (money) => {
    const format = formats.get(money.currency) ?? currencyFormat(money.currency, locale);
    formats.set(money.currency, format);
    return format.format(printed(exact(money)).amount as NumberText); // printed amounts are decimal text
  };
}
