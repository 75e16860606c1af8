import type { RateUse } from "../../../engine/money/index.ts";
import type { Formatter } from "../../words/index.ts";

const decimals = (text: string): number => text.split(".")[1]?.length ?? 0;

/** A quote with every digit as it was written: "11.0250". */
const quote = (text: string, format: Formatter): string => format.number(text, decimals(text), true);

/** A rate as its table wrote it, none worked out: "EUR 1 = SEK 11.0250", "EUR 1 = SEK 11.0250 = JPY 164.10". */
export function rateText(rate: RateUse, format: Formatter): string {
  const sides = [
    { code: rate.from, quote: rate.fromQuote },
    { code: rate.to, quote: rate.toQuote },
  ].filter(({ code }) => code !== rate.base);
  return [`${rate.base} 1`, ...sides.map((side) => `${side.code} ${quote(side.quote, format)}`)].join(" = ");
}

/** The same rate once, in order of first use. */
export function distinctRates(rates: readonly RateUse[]): readonly RateUse[] {
  const known = new Map(rates.map((rate) => [[rate.base, rate.date, rate.from, rate.to].join(" "), rate]));
  return [...known.values()];
}
