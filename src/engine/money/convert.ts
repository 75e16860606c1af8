import { type Fault, fail, type Outcome, ok } from "../record/index.ts";
import { dividedBy, type Exact, times } from "./exact.ts";
import { findRate, quoteOf, type RateUse } from "./rates.ts";
import type { RateTable } from "./schema.ts";

/** What converting needs to know: the tables, the day whose rates hold, and where a fault would be. */
export type Exchange = Readonly<{ rates: readonly RateTable[]; on: string; place: string }>;

/** An amount in the wanted currency; `rate` is null when it was in that currency already. */
export type Converted = Readonly<{ amount: Exact; rate: RateUse | null }>;

/** Says which currency no table in force has, or that no one table has both. */
function noRate(from: string, to: string, exchange: Exchange): { ok: false; fault: Fault } {
  const tables = exchange.rates.filter((table) => table.date <= exchange.on);
  const lacking = [from, to].filter((code) => !tables.some((table) => quoteOf(table, code)));
  const problem =
    lacking.length > 0
      ? `there is no exchange rate for ${lacking.join(" and ")} on or before ${exchange.on}`
      : `no one rate table dated on or before ${exchange.on} has both ${from} and ${to}`;
  const remedy = `add a rate table dated on or before ${exchange.on} with ${to} and ${from}`;
  return fail(exchange.place, problem, remedy);
}

/**
 * Values an amount in another currency, `amount × quote(to) ÷ quote(from)`, at full precision;
 * `printed` rounds it, once.
 * @returns a fault that names the currency and the day when no table will do; never a rate of 1:1
 * @see Council Regulation (EC) No 1103/97, Article 4: rates are not rounded, inverse rates are not used
 */
export function convert(amount: Exact, to: string, exchange: Exchange): Outcome<Converted> {
  const from = amount.currency;
  if (from === to) return ok({ amount, rate: null });
  const rate = findRate(exchange.rates, { from, to }, exchange.on);
  if (!rate) return noRate(from, to, exchange);
  const value = dividedBy(times(amount, rate.toQuote), rate.fromQuote);
  return ok({ amount: { ...value, currency: to }, rate });
}
