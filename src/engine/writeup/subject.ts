import { type KitMatch, matchKit } from "../match/index.ts";
import type { Fault, Language } from "../record/index.ts";
import type { StashItem } from "../supply/index.ts";
import type { Remake, Workbook } from "../workbook/index.ts";
import { type Kit, type Market, reportedMarkets, type ValuedKit, valueKit } from "../worth/index.ts";
import { type WriteupWords, wordsIn } from "./words/index.ts";

/** All that a write-up is drawn from, looked up and computed once. */
export type Subject = Readonly<{
  book: Workbook;
  remake: Remake;
  language: Language;
  words: WriteupWords;
  kit: Kit;
  match: KitMatch;
  /** Null where a rate or the date is missing; `missing` then says what. */
  valued: ValuedKit | null;
  missing: readonly Fault[];
  market: (id: string) => Market | undefined;
  item: (id: string | null | undefined) => StashItem | undefined;
}>;

/** @returns null when the remake's kit is not in the workbook, which a checked workbook rules out */
export function subjectOf(book: Workbook, remake: Remake, language: Language): Subject | null {
  const kit = (book.kits ?? []).find(({ id }) => id === remake.kit);
  if (!kit) return null;
  const stash = book.stash ?? [];
  const items = new Map(stash.map((item) => [item.id, item]));
  const markets = new Map((book.markets ?? []).map((market) => [market.id, market]));
  const valued = valueKit(book, kit, reportedMarkets(book), language);
  return {
    book,
    remake,
    language,
    words: wordsIn[language],
    kit,
    match: matchKit({ kit, stash, kinships: book.kinships, weights: book.weights, remake }),
    valued: valued.ok ? valued.value : null,
    missing: valued.ok ? [] : valued.faults,
    market: (id) => markets.get(id),
    item: (id) => (id ? items.get(id) : undefined),
  };
}

/** The kit as it is spoken of: its title, else its maker and month. */
export const kitName = ({ title, maker, period }: Kit): string => title || `${maker}, ${period}`;
