import { type Money, sumMoney } from "../money/index.ts";
import type { PricedLine } from "../price/index.ts";
import { type Edge, type Span, wantedOf } from "./totals.ts";
import { type Judged, judge } from "./verdict.ts";

/** The least and the most that what this person would use may come to. */
export function wantedRange(
  currency: string,
  lines: readonly PricedLine[],
): Readonly<{ low: Money; high: Money }> {
  const total = (edge: Edge): Money =>
    sumMoney(
      currency,
      lines.flatMap((line) => wantedOf(line, edge) ?? []),
    );
  return { low: total("low"), high: total("high") };
}

const isUsed = ({ line }: PricedLine): boolean => !/^[0.]+$/.test(line.want ?? "1");

/** Whether a kit pays counting only what would be used, by the rule that list and street follow. */
export function judgeWanted(lines: readonly PricedLine[], cost: Money): Judged {
  const used = lines.filter(isUsed);
  const spans = used.map((priced): Span => {
    const [low, high] = [wantedOf(priced, "low"), wantedOf(priced, "high")];
    return { line: priced.line.id, range: low && high ? { low, high } : null };
  });
  return judge(spans, wantedRange(cost.currency, lines), cost);
}
