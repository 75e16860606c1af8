import { daysBetween } from "../record/index.ts";
import type { RateTable } from "./schema.ts";

/** One table's word about two currencies: 1 `base` is `fromQuote` of one and `toQuote` of the other. */
export type RateUse = Readonly<{
  date: string;
  base: string;
  from: string;
  to: string;
  fromQuote: string;
  toQuote: string;
}>;

/** Days after which a table counts as old. */
const staleAfterDays = 7;

/** Whether a table of `date` is more than seven days older than the day it values. */
export const isStale = (date: string, valuedOn: string): boolean =>
  daysBetween(date, valuedOn) > staleAfterDays;

/** What 1 base is worth in `code`; the base itself counts as 1. Undefined where the table lacks it. */
export function quoteOf(table: RateTable, code: string): string | undefined {
  if (code === table.base) return "1";
  return Object.hasOwn(table.quotes, code) ? (table.quotes[code] ?? undefined) : undefined;
}

function pairOf(table: RateTable, from: string, to: string): RateUse | undefined {
  const fromQuote = quoteOf(table, from);
  const toQuote = quoteOf(table, to);
  if (fromQuote === undefined || toQuote === undefined) return undefined;
  return { date: table.date, base: table.base, from, to, fromQuote, toQuote };
}

/** The newest table dated on or before `on` that has both currencies; of one day, the later in the file. */
export function findRate(
  rates: readonly RateTable[],
  pair: Readonly<{ from: string; to: string }>,
  on: string,
): RateUse | undefined {
  let newest: RateUse | undefined;
  for (const table of rates) {
    if (table.date > on || (newest && table.date < newest.date)) continue;
    newest = pairOf(table, pair.from, pair.to) ?? newest;
  }
  return newest;
}

/** The date of the oldest table used, and whether it is stale; null where no table was needed. */
export function agesOf(
  uses: readonly RateUse[],
  valuedOn: string,
): Readonly<{ ratesOf: string | null; staleRates: boolean }> {
  const ratesOf = uses.map((use) => use.date).toSorted()[0] ?? null;
  return { ratesOf, staleRates: ratesOf !== null && isStale(ratesOf, valuedOn) };
}
