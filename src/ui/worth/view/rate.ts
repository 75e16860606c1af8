import type { RateUse } from "../../../engine/money/index.ts";
import type { Formatter } from "../../words/index.ts";

const sidesOf = (rate: RateUse) =>
  [
    { code: rate.from, quote: rate.fromQuote },
    { code: rate.to, quote: rate.toQuote },
  ].filter(({ code }) => code !== rate.base);

/** A rate as its table wrote it, none worked out: "EUR 1 = SEK 11.0250", "EUR 1 = SEK 11.0250 = JPY 164.10". */
export function rateText(rate: RateUse, format: Formatter): string {
  const sides = sidesOf(rate).map(({ code, quote }) => format.rate(code, quote));
  return [format.rate(rate.base, "1"), ...sides].join(" = ");
}

/** The rates used of one table, ready to print, with its day. */
export type DayRates = Readonly<{ date: string; text: string }>;

/** Every rate used, table by table in order of first use, each currency once. */
export function ratesByDay(rates: readonly RateUse[], format: Formatter): readonly DayRates[] {
  const tables = new Map<string, Readonly<{ base: string; date: string; sides: Map<string, string> }>>();
  for (const rate of rates) {
    const key = `${rate.base} ${rate.date}`;
    const table = tables.get(key) ?? { base: rate.base, date: rate.date, sides: new Map() };
    for (const side of sidesOf(rate)) table.sides.set(side.code, format.rate(side.code, side.quote));
    tables.set(key, table);
  }
  return [...tables.values()].map(({ base, date, sides }) => ({
    date,
    text: [format.rate(base, "1"), ...sides.values()].join(" = "),
  }));
}
