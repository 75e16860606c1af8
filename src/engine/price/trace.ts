import type { Exact, Money, RateUse } from "../money/index.ts";
import type { Ratio } from "./quantity.ts";

/** How a list figure came about; `settled` is a price given by hand. */
export type ListMethod = "settled" | "list" | "converted" | "card" | "precedents" | "scaled" | "guess";

/** How a street figure came about; `list` is the list estimate standing in. */
export type StreetMethod = "settled" | "shop" | "converted" | "list";

export type Method = ListMethod | StreetMethod;

/**
 * How much a price bought beside what the line is, both in `unit`, and the power of their ratio that the
 * price was scaled by: 1 is in proportion, anything else was fitted to the workbook's own prices.
 */
export type PackUse = Readonly<{ unit: Ratio["unit"]; line: string; pack: string; exponent: number }>;

/** One price that a figure rests on, and each step from what was written to what was used. */
export type Source = Readonly<{
  /** Id of the price found; null for one settled by hand. */
  evidence: string | null;
  /** Whose line it was found for, `kit/line`. */
  of: string;
  quoted: Money;
  date: string | null;
  market: string | null;
  shop: string | null;
  source: string | null;
  /** The fraction of tax added to what was quoted ("0" for none). */
  plusTax: string;
  /** Set where the price was for another quantity than the line's. */
  pack: PackUse | null;
  /** Null where no conversion was needed. */
  rate: RateUse | null;
  /** In the market's currency, rounded. */
  comesTo: Money;
}>;

/** What stands behind an estimate. `chosen` when a person settled on this method or price. */
export type Trace = Readonly<{ chosen: boolean; reason: string | null; sources: readonly Source[] }>;

/** An estimate per unit in the market's currency, printed, with how it came about in one sentence. */
export type Estimate = Readonly<{
  likely: Money;
  low: Money;
  high: Money;
  method: Method;
  sentence: string;
  trace: Trace;
}>;

/** An amount in the market's currency before rounding, with where it came from. */
export type Quote = Readonly<{ amount: Exact; source: Source }>;

/** An estimate before rounding. `words` is its sentence without the full stop. */
export type Draft = Readonly<{
  likely: Exact;
  low: Exact;
  high: Exact;
  method: Method;
  words: string;
  trace: Trace;
}>;
