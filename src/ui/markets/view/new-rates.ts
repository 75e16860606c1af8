import type { RateTable } from "../../../engine/money/index.ts";
import { readAmount } from "../../parts/read/amount.ts";
import { marketsWords } from "../../words/markets.ts";

const words = marketsWords.rates;

/** A rate as it is typed, with a comma or a point, above nought. Digits are kept as they were written. */
export function readQuote(typed: string): Readonly<{ value: string | null; fault: string | null }> {
  const reading = readAmount(typed, 4);
  if (reading.kind === "empty") return { value: null, fault: null };
  // "1,234" may be one and a bit or a thousand: for a rate both are likely, so it has to be written plainly.
  if (reading.kind !== "value" || /^[0.]+$/.test(reading.value))
    return { value: null, fault: words.quoteFault };
  return { value: reading.value, fault: null };
}

/** What was typed of a day's rates. */
export type RateDraft = Readonly<{
  date: string | null;
  base: string;
  quotes: ReadonlyMap<string, string>;
  source: string;
}>;

/** The table that a draft makes, or which of its fields are at fault. */
export type RateDraftRead =
  | Readonly<{ ok: true; table: RateTable }>
  | Readonly<{ ok: false; faults: ReadonlyMap<string, string> }>;

/** Reads a whole draft; faults by field: `date`, `quotes`, or a currency code. */
export function readRateDraft({ date, base, quotes, source }: RateDraft): RateDraftRead {
  const read = [...quotes]
    .filter(([code]) => code !== base)
    .map(([code, text]) => ({ code, ...readQuote(text) }));
  const faults = new Map<string, string>();
  if (date === null) faults.set("date", words.dateMissing);
  for (const { code, fault } of read) if (fault !== null) faults.set(code, fault);
  const given = read.flatMap(({ code, value }) => (value === null ? [] : [[code, value] as const]));
  if (given.length === 0 && faults.size === (date === null ? 1 : 0)) faults.set("quotes", words.noQuote);
  if (faults.size > 0 || date === null) return { ok: false, faults };
  const note = source.trim() === "" ? {} : { source: source.trim() };
  return { ok: true, table: { date, base, quotes: Object.fromEntries(given), ...note } };
}
