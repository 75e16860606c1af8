import type { Estimate, Line, Settled } from "../../../engine/price/index.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { figureOf } from "./prices.ts";

const words = kitsWords.prices;

type Kind = "list" | "street";

/** What a person settled for a line, in this market or else for all of them; the later one counts. */
export function settledFor(line: Line, kind: Kind, market: string): Settled | null {
  const all = (line.settled ?? []).filter((one) => (one.kind ?? "list") === kind);
  return all.findLast((one) => one.market === market) ?? all.findLast((one) => !one.market) ?? null;
}

/** The ways to a figure that apply, each with what it gives; the first of all, and one's own figure. */
export function choicesFor(options: readonly Estimate[], kind: Kind, format: Formatter = ownFormat) {
  const ways = options
    .filter(({ method }) => method !== "settled")
    .map((estimate) => ({
      value: estimate.method as string,
      label: `${figureOf(estimate, kind, format)?.how}: ${format.money(estimate.likely)}`,
      more: estimate.sentence,
    }));
  return [
    ...(ways.length > 0 ? [{ value: "", label: words.best }] : []),
    ...ways,
    { value: "own", label: words.own },
  ];
}

type Picked = Readonly<{
  kind: Kind;
  market: string | null;
  /** Empty: leave it to the first; "own": a figure of one's own; else the way gone with. */
  picked: string;
  price: Readonly<{ amount: string | null; currency: string }>;
  reason: string;
}>;

/** What is settled by a choice, or null where it is left to the first that applies. */
export function settledOf({ kind, market, picked, price, reason }: Picked): Settled | null {
  if (picked === "") return null;
  const because = reason.trim() === "" ? {} : { reason: reason.trim() };
  if (picked !== "own") return { kind, market, method: picked, ...because };
  if (price.amount === null) return null;
  return { kind, market, price: { amount: price.amount, currency: price.currency }, ...because };
}
