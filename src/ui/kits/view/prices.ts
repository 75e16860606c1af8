import type { Money } from "../../../engine/money/index.ts";
import type { Estimate, Line, LineEstimate } from "../../../engine/price/index.ts";
import type { Fault } from "../../../engine/record/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import { type Kit, type Market, reportedMarkets } from "../../../engine/worth/index.ts";
import { estimateLine } from "../../words/engine/price.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { factsText } from "./line-rows.ts";

const words = kitsWords.prices;

/** One figure of a line: the amount, its range where it has one, how it came about in few words and in a sentence. */
export type Figure = Readonly<{ likely: Money; range: string | null; how: string; sentence: string }>;

/** A line in one market, ready to print. */
export type PriceRow = Readonly<{
  line: Line;
  number: number;
  name: string;
  facts: string;
  list: Figure | null;
  shop: Figure | null;
  /** Why there is no figure, where something is known all the same. */
  without: string;
  /** Whether both figures are still missing, and whether one is only for want of a rate. */
  needs: boolean;
  waits: boolean;
  /** Whether the shop price is all there is. */
  shopOnly: boolean;
  estimate: LineEstimate;
}>;

export type MarketPrices = Readonly<{
  market: Market;
  /** In their own order. */
  rows: readonly PriceRow[];
  /** Those that still need a price first. */
  sorted: readonly PriceRow[];
  missing: number;
  /** How many have a shop price only, and how many were made for the kit and have none. */
  shopOnly: number;
  unsold: number;
  /** How many have prices, but no rate to bring them here. */
  waiting: number;
  faults: readonly Fault[];
}>;

/** The markets that are reported on and that the workbook has, in the order they are reported. */
export const marketsOf = (book: Workbook): readonly Market[] =>
  reportedMarkets(book).flatMap((id) => (book.markets ?? []).find((market) => market.id === id) ?? []);

function rangeText({ low, high, likely }: Estimate, format: Formatter): string | null {
  if (low.amount === likely.amount && high.amount === likely.amount) return null;
  return words.to(format.amount(low), format.amount(high));
}

function howText(estimate: Estimate, kind: "list" | "street", format: Formatter): string {
  const [source] = estimate.trace.sources;
  if (kind === "street" && estimate.method === "list") return words.listStandsIn;
  if (estimate.method === "shop" && source?.date) return words.shopOn(format.shortDate(source.date));
  return words.methods[estimate.method] ?? estimate.method;
}

export function figureOf(
  estimate: Estimate | null,
  kind: "list" | "street",
  format: Formatter = ownFormat,
): Figure | null {
  if (!estimate) return null;
  return {
    likely: estimate.likely,
    range: rangeText(estimate, format),
    how: howText(estimate, kind, format),
    sentence: estimate.sentence,
  };
}

const withoutText = ({ faults, notSold }: LineEstimate, line: Line, hasShop: boolean): string => {
  if (faults.length > 0) return words.waits;
  if (line.exclusive) return words.neverSold;
  if (hasShop) return words.noList;
  return notSold.length > 0 ? words.notSold : words.needs;
};

function priceRow(
  book: Workbook,
  kit: Kit,
  line: Line,
  at: number,
  market: Market,
  format: Formatter,
): PriceRow {
  const estimate = estimateLine(book, kit, line, market.id);
  const qty = line.qty ?? 1;
  const list = figureOf(estimate.list, "list", format);
  const shop = figureOf(estimate.street, "street", format);
  const isMissing = list === null || shop === null;
  return {
    line,
    number: at + 1,
    name: line.supply.name,
    facts: [factsText(line.supply, format), ...(qty > 1 ? [words.each(qty)] : [])].filter(Boolean).join(", "),
    list,
    shop,
    without: withoutText(estimate, line, shop !== null),
    needs: !list && !shop && estimate.faults.length === 0 && !line.exclusive,
    shopOnly: !list && shop !== null && estimate.faults.length === 0,
    waits: isMissing && estimate.faults.length > 0,
    estimate,
  };
}

const urgency = ({ needs, waits, shopOnly }: PriceRow): number => (needs ? 3 : waits ? 2 : Number(shopOnly));

/** Made for the kit, and never sold: nobody can find a price for it. */
const isUnsold = ({ line, list, shop, waits }: PriceRow): boolean =>
  Boolean(line.exclusive) && !list && !shop && !waits;

/** What is known of every line's price in each market. */
export function pricesView(book: Workbook, kit: Kit, format: Formatter = ownFormat): readonly MarketPrices[] {
  return marketsOf(book).map((market) => {
    const rows = (kit.lines ?? []).map((line, at) => priceRow(book, kit, line, at, market, format));
    const faults = rows.flatMap(({ estimate }) => estimate.faults);
    return {
      market,
      rows,
      sorted: rows.toSorted((a, b) => urgency(b) - urgency(a)),
      missing: rows.filter(({ needs }) => needs).length,
      shopOnly: rows.filter((row) => row.shopOnly).length,
      unsold: rows.filter(isUnsold).length,
      waiting: rows.filter(({ waits }) => waits).length,
      faults: faults.filter(
        (fault, index) => faults.findIndex(({ problem }) => problem === fault.problem) === index,
      ),
    };
  });
}

/** The next row after this one, round the end, about which nothing is known yet; null where there is none. */
export function nextWithout(rows: readonly PriceRow[], line: string | null): PriceRow | null {
  const at = rows.findIndex((row) => row.line.id === line);
  const isBare = ({ list, shop, needs, estimate }: PriceRow) =>
    !list && !shop && needs && estimate.notSold.length === 0;
  return [...rows.slice(at + 1), ...rows.slice(0, Math.max(0, at))].find(isBare) ?? null;
}

/** "Three of eight still need a price in Sweden.", and how the other markets stand. */
export function sumUpPrices(all: readonly MarketPrices[], marketId: string) {
  const here = all.find(({ market }) => market.id === marketId);
  if (!here) return { lead: "", leadMore: "" };
  const others = all.filter((other) => other !== here);
  return {
    lead: leadOf(here),
    leadMore: [
      ...(here.shopOnly > 0 ? [words.shopOnly(here.shopOnly)] : []),
      ...(here.unsold > 0 && here.unsold < here.rows.length ? [words.unsold(here.unsold)] : []),
      ...(others.some((other) => other.missing > 0)
        ? [words.others(others.map((other) => words.elsewhere(other.market.name, other.missing)))]
        : []),
    ].join(" "),
  };
}

function leadOf({ rows, missing, waiting, unsold, market }: MarketPrices): string {
  const sold = rows.length - unsold;
  if (missing > 0) return words.missing(missing, sold, market.name);
  if (waiting > 0) return words.waiting(waiting, sold, market.name);
  return sold === 0 ? words.unsold(unsold) : words.allPriced(sold, market.name);
}
