import type { Line } from "../../../engine/price/index.ts";
import type { Fault } from "../../../engine/record/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import {
  type Kit,
  type Market,
  type MarketWhy,
  type MarketWorth,
  reportedMarkets,
  type Tier,
} from "../../../engine/worth/index.ts";
import { valueKit } from "../../words/engine/worth.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { worthWords as words } from "../../words/worth.ts";

/** One kit's worth in one market, with what stands behind it and how to print it. */
export type Scene = Readonly<{
  book: Workbook;
  kit: Kit;
  market: Market;
  worth: MarketWorth;
  why: MarketWhy;
  valuedOn: string;
  staleRates: boolean;
  format: Formatter;
}>;

/** The figures, or what keeps them from being worked out. */
export type Worth =
  | Readonly<{ kind: "ready"; scene: Scene }>
  | Readonly<{ kind: "no-lines" | "no-markets" | "no-day" }>
  | Readonly<{ kind: "no-rates"; market: Market; faults: readonly Fault[] }>;

/** The markets to show: those reported, and the one asked for in the address, in the workbook's order. */
export function marketsShown(book: Workbook, asked: string | null): readonly Market[] {
  const ids = new Set(reportedMarkets(book));
  return (book.markets ?? []).filter(({ id }) => ids.has(id) || id === asked);
}

/** The market looked at: the one asked for, else the one spoken of in the recording, else home, else the first. */
export function marketShown(book: Workbook, kit: Kit, asked: string | null): Market | null {
  const shown = marketsShown(book, asked);
  const wish = [asked, kit.spokenMarket, book.home?.market];
  return wish.flatMap((id) => shown.find((market) => market.id === id) ?? [])[0] ?? shown[0] ?? null;
}

/** Values a kit in the market looked at, or says what is missing. */
export function worthIn(
  book: Workbook,
  kit: Kit,
  asked: string | null,
  format: Formatter = ownFormat,
): Worth {
  if ((kit.lines ?? []).length === 0) return { kind: "no-lines" };
  const market = marketShown(book, kit, asked);
  if (!market) return { kind: "no-markets" };
  if (!kit.valuedOn) return { kind: "no-day" };
  const valued = valueKit(book, kit, [market.id]);
  if (!valued.ok) return { kind: "no-rates", market, faults: valued.faults };
  const { worth, whys } = valued.value;
  const [figures, why] = [worth.markets[0], whys[0]];
  if (!figures || !why) return { kind: "no-markets" };
  const { valuedOn, staleRates } = worth;
  return { kind: "ready", scene: { book, kit, market, worth: figures, why, valuedOn, staleRates, format } };
}

export const tierOf = ({ kit }: Scene, id: string): Tier | undefined =>
  (kit.tiers ?? []).find((tier) => tier.id === id);

export const tierName = (tier: Tier | undefined): string => tier?.label || words.unnamedTier;

const lineOf = ({ kit }: Scene, id: string): Line | undefined =>
  (kit.lines ?? []).find((line) => line.id === id);

export const lineName = (scene: Scene, id: string): string => lineOf(scene, id)?.supply.name ?? id;

/** A line's name within a sentence: in quotes where a comma in it would break the sentence up. */
export const nameInSentence = (scene: Scene, id: string): string => {
  const name = lineName(scene, id);
  return name.includes(",") ? words.quoted(name) : name;
};

/** A line's number, as it stands in the contents. */
export const lineNumber = ({ kit }: Scene, id: string): number =>
  (kit.lines ?? []).findIndex((line) => line.id === id) + 1;

export const marketName = ({ book }: Scene, id: string): string =>
  (book.markets ?? []).find((market) => market.id === id)?.name ?? id;

/** Whether every total is a least one, because a line has no price. */
export const isLeast = ({ worth }: Scene): boolean => worth.unpriced.length > 0;
