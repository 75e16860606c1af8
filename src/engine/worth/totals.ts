import { exact, type Money, multiple, printed, sumMoney, times } from "../money/index.ts";
import type { Estimate, PricedLine } from "../price/index.ts";
import type { LineWorth, Totals } from "./figures.ts";

type Side = "list" | "street";
export type Edge = "likely" | "low" | "high";

const each = (estimate: Estimate | null, edge: Edge): Money | null => estimate?.[edge] ?? null;

/** A rounded unit price times the quantity; null where there is no price. */
const lineTotal = ({ qty, estimate }: PricedLine, side: Side, edge: Edge): Money | null => {
  const unit = each(estimate[side], edge);
  return unit && multiple(unit, qty);
};

/** One line's printed figures. */
export const lineWorth = (priced: PricedLine): LineWorth => ({
  line: priced.line.id,
  qty: priced.qty,
  listEach: each(priced.estimate.list, "likely"),
  list: lineTotal(priced, "list", "likely"),
  streetEach: each(priced.estimate.street, "likely"),
  street: lineTotal(priced, "street", "likely"),
  listMethod: priced.estimate.list?.method ?? null,
  streetMethod: priced.estimate.street?.method ?? null,
});

/** A line's street price as far as this person would use it, rounded; null where it has none. */
export function wantedOf(priced: PricedLine, edge: Edge): Money | null {
  const street = lineTotal(priced, "street", edge);
  return street && printed(times(exact(street), priced.line.want ?? "1"));
}

const isUnpriced = ({ estimate }: PricedLine): boolean => !(estimate.list && estimate.street);

/** Sums the printed lines; a line without a price adds nothing and is named. */
export function totalsOf(currency: string, lines: readonly PricedLine[]): Totals {
  const sum = (amounts: readonly (Money | null)[]): Money =>
    sumMoney(
      currency,
      amounts.filter((amount) => amount !== null),
    );
  const total = (side: Side, edge: Edge): Money => sum(lines.map((line) => lineTotal(line, side, edge)));
  return {
    listTotal: total("list", "likely"),
    listLow: total("list", "low"),
    listHigh: total("list", "high"),
    streetTotal: total("street", "likely"),
    streetLow: total("street", "low"),
    streetHigh: total("street", "high"),
    wantedTotal: sum(lines.map((line) => wantedOf(line, "likely"))),
    unpriced: lines.filter(isUnpriced).map(({ line }) => line.id),
  };
}

/** One line's low and high on one side, times its quantity; null where it has no price. */
export type Span = Readonly<{ line: string; range: Readonly<{ low: Money; high: Money }> | null }>;

/** Every line's span on one side, in the file's order. */
export const spansOf = (lines: readonly PricedLine[], side: Side): readonly Span[] =>
  lines.map((priced) => {
    const low = lineTotal(priced, side, "low");
    const high = lineTotal(priced, side, "high");
    return { line: priced.line.id, range: low && high ? { low, high } : null };
  });
