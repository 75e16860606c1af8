import type { Money } from "../money/index.ts";
import type { Method } from "../price/index.ts";

/** Whether a tier pays: even at the lowest, not even at the highest, or it hangs on a line. */
export type Verdict = "ahead" | "behind" | "hangs";

/** One line's worth: per unit, and times its quantity; null where no price is known. */
export type LineWorth = Readonly<{
  line: string;
  qty: number;
  listEach: Money | null;
  list: Money | null;
  streetEach: Money | null;
  street: Money | null;
  listMethod: Method | null;
  streetMethod: Method | null;
}>;

/** What one kit of a tier costs in a market, each part rounded; `kitCost` is their sum. */
export type KitCost = Readonly<{
  kitCost: Money;
  goods: Money;
  postage: Money;
  duty: Money;
  tax: Money;
  handling: Money;
}>;

/** What a tier is worth in a market. Ratios and shares have two decimals, null over nought. */
export type TierWorth = Readonly<{ tier: string; kits: number }> &
  KitCost &
  Readonly<{
    listGain: Money;
    streetGain: Money;
    wantedGain: Money;
    listRatio: string | null;
    streetRatio: string | null;
    breakEvenShare: string | null;
    listVerdict: Verdict;
    streetVerdict: Verdict;
    /** The line a verdict hangs on; null unless it hangs. */
    listHangsOn: string | null;
    streetHangsOn: string | null;
  }>;

/** Sums of the printed lines. Where a line has no price they say "at least". */
export type Totals = Readonly<{
  listTotal: Money;
  listLow: Money;
  listHigh: Money;
  streetTotal: Money;
  streetLow: Money;
  streetHigh: Money;
  wantedTotal: Money;
  /** Lines without a list price or without a street price. */
  unpriced: readonly string[];
}>;

export type MarketWorth = Readonly<{ market: string; currency: string; lines: readonly LineWorth[] }> &
  Totals &
  Readonly<{ tiers: readonly TierWorth[] }>;

/** The figures of the command line's `worth`. `ratesOf` is null where no rate was needed. */
export type KitWorth = Readonly<{
  kit: string;
  valuedOn: string;
  ratesOf: string | null;
  staleRates: boolean;
  markets: readonly MarketWorth[];
}>;
