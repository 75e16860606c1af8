import { difference, exact, type Money, multiple, plus, printed, sumMoney } from "../money/index.ts";
import type { PricedLine } from "../price/index.ts";
import type { WorthBook } from "./book.ts";
import type { LineWorth, TierWorth } from "./figures.ts";
import type { Parcel } from "./schema.ts";
import { beats } from "./verdict.ts";

/** The lines at which a running total passes the kit's price, and price with postage; null for never. */
export type Passing = Readonly<{ price: string | null; withPostage: string | null }>;

type Row = Readonly<{ line: string; amount: Money | null }>;

/** The first line whose running total is greater than `mark`. */
function passes(rows: readonly Row[], mark: Money): string | null {
  let total: Money = { amount: "0", currency: mark.currency };
  for (const { line, amount } of rows) {
    if (amount) total = sumMoney(mark.currency, [total, amount]);
    if (beats(total, mark)) return line;
  }
  return null;
}

/**
 * At which line, going down the contents, the kit's price is passed, and its price with postage: from then
 * on the rest comes on top.
 */
export function passingOf(
  lines: readonly LineWorth[],
  tier: TierWorth,
): Readonly<{ list: Passing; street: Passing }> {
  const withPostage = printed(plus(exact(tier.goods), exact(tier.postage)));
  const passing = (side: "list" | "street"): Passing => {
    const rows = lines.map((line) => ({ line: line.line, amount: line[side] }));
    return { price: passes(rows, tier.goods), withPostage: passes(rows, withPostage) };
  };
  return { list: passing("list"), street: passing("street") };
}

/** What the sender says the contents are worth beside what was found, over the lines the card prices. */
export type CardTotals = Readonly<{ card: Money; found: Money; lines: number; without: readonly string[] }>;

/**
 * The senders' card total against the found list total of the same lines; `without` names the lines on
 * which the card says nothing.
 */
export function cardTotals(currency: string, lines: readonly PricedLine[]): CardTotals {
  const rows = lines.map(({ line, qty, estimate }) => {
    const card = estimate.listOptions.find(({ method }) => method === "card");
    const each = card && estimate.list ? { card: card.likely, found: estimate.list.likely } : null;
    return { line: line.id, qty, each };
  });
  const carded = rows.flatMap(({ qty, each }) =>
    each ? [{ card: multiple(each.card, qty), found: multiple(each.found, qty) }] : [],
  );
  return {
    card: sumMoney(
      currency,
      carded.map((row) => row.card),
    ),
    found: sumMoney(
      currency,
      carded.map((row) => row.found),
    ),
    lines: carded.length,
    without: rows.filter(({ each }) => !each).map(({ line }) => line),
  };
}

/** A tier's figures as they would be had the border charged nothing. */
export type WithoutBorder = Readonly<{
  kitCost: Money;
  listGain: Money;
  streetGain: Money;
  wantedGain: Money;
}>;

/** A tier's cost and gains without border charges; the difference is what the border takes. */
export function withoutBorder(tier: TierWorth): WithoutBorder {
  const { currency } = tier.kitCost;
  const charges = sumMoney(currency, [tier.duty, tier.tax, tier.handling]);
  const more = (gain: Money): Money => sumMoney(currency, [gain, charges]);
  return {
    kitCost: difference(tier.kitCost, charges),
    listGain: more(tier.listGain),
    streetGain: more(tier.streetGain),
    wantedGain: more(tier.wantedGain),
  };
}

/** How many of my own parcels from a market were charged at the border; `unknown`: nobody wrote it down. */
export type ParcelCount = Readonly<{ parcels: number; charged: number; unknown: number }>;

const wasCharged = ({ charged }: Parcel): boolean => !!charged && !/^[0.]+$/.test(charged.amount);

/** Counts my own parcels that came from one market to another; one without a destination counts. */
export function parcelsFrom(book: WorthBook, from: string, to: string): ParcelCount {
  const all = (book.parcels ?? []).filter((parcel) => parcel.from === from && (parcel.to ?? to) === to);
  return {
    parcels: all.length,
    charged: all.filter(wasCharged).length,
    unknown: all.filter(({ charged }) => !charged).length,
  };
}
