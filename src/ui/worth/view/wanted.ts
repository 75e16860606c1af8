import {
  compare,
  difference,
  exact,
  type Money,
  multiple,
  printed,
  sumMoney,
  times,
} from "../../../engine/money/index.ts";
import type { PricedLine } from "../../../engine/price/index.ts";
import type { Verdict } from "../../../engine/worth/index.ts";
import type { Scene } from "./scene.ts";

type Edge = "likely" | "low" | "high";

/** A line's street price as far as this person would use it; null where it has none. */
export function wantedOf({ line, qty, estimate }: PricedLine, edge: Edge): Money | null {
  const each = estimate.street?.[edge];
  return each ? printed(times(exact(multiple(each, qty)), line.want ?? "1")) : null;
}

/** The least and the most that what this person would use may come to. */
export function wantedRange({ why, worth }: Scene): Readonly<{ low: Money; high: Money }> {
  const total = (edge: Edge) =>
    sumMoney(
      worth.currency,
      why.lines.flatMap((line) => wantedOf(line, edge) ?? []),
    );
  return { low: total("low"), high: total("high") };
}

const beats = (a: Money, b: Money): boolean => compare(exact(a), exact(b)) > 0;
const isUsed = ({ line }: PricedLine): boolean => !/^[0.]+$/.test(line.want ?? "1");

/** The line whose least and most are furthest apart; of equal ones the first. */
function widest(lines: readonly PricedLine[]): string | null {
  const widths = lines.flatMap((line) => {
    const [low, high] = [wantedOf(line, "low"), wantedOf(line, "high")];
    return low && high ? [{ id: line.line.id, width: difference(high, low) }] : [];
  });
  return widths.toSorted((a, b) => compare(exact(b.width), exact(a.width)))[0]?.id ?? null;
}

/** Whether a tier pays counting only what would be used, by the rule that list and street follow. */
export function judgeWanted(
  scene: Scene,
  cost: Money,
): Readonly<{ verdict: Verdict; hangsOn: string | null }> {
  const { low, high } = wantedRange(scene);
  if (beats(low, cost)) return { verdict: "ahead", hangsOn: null };
  const used = scene.why.lines.filter(isUsed);
  const unpriced = used.find(({ estimate }) => !estimate.street);
  if (!unpriced && !beats(high, cost)) return { verdict: "behind", hangsOn: null };
  return { verdict: "hangs", hangsOn: unpriced?.line.id ?? widest(used) };
}
