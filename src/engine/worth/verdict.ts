import { compare, difference, exact, type Money } from "../money/index.ts";
import type { Verdict } from "./figures.ts";
import type { Span } from "./totals.ts";

/** A verdict, and the line it hangs on; `hangsOn` is null unless it hangs. */
export type Judged = Readonly<{ verdict: Verdict; hangsOn: string | null }>;

/** Whether one amount beats another: to beat is to be greater. */
export const beats = (a: Money, b: Money): boolean => compare(exact(a), exact(b)) > 0;

/** The line whose low and high are furthest apart; of equal ones the first. */
function widest(spans: readonly Span[]): string | null {
  const widths = spans.flatMap(({ line, range }) =>
    range ? [{ line, width: difference(range.high, range.low) }] : [],
  );
  const [first] = widths.toSorted((a, b) => compare(exact(b.width), exact(a.width)));
  return first?.line ?? null;
}

/**
 * Whether a total pays for a kit: ahead if even the low total beats the cost, behind if even the high one
 * does not and every line has a price, else it hangs on the first line without a price, or else on the
 * one with the widest range.
 */
export function judge(
  spans: readonly Span[],
  total: Readonly<{ low: Money; high: Money }>,
  cost: Money,
): Judged {
  if (beats(total.low, cost)) return { verdict: "ahead", hangsOn: null };
  const unpriced = spans.find(({ range }) => range === null);
  if (!unpriced && !beats(total.high, cost)) return { verdict: "behind", hangsOn: null };
  return { verdict: "hangs", hangsOn: unpriced?.line ?? widest(spans) };
}
