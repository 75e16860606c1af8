import { Decimal } from "../../engine/money/index.ts";
import { keptApartOf, type StashItem } from "../../engine/supply/index.ts";
import type { Remake, Workbook } from "../../engine/workbook/index.ts";
import type { ActDraft, Change } from "../journal/index.ts";
import { difference } from "../journal/index.ts";
import { storeWords as words } from "../words/index.ts";
import { act, set } from "./record.ts";
import { supplyName } from "./words.ts";

type Ids = ReadonlySet<string>;
type Uses = NonNullable<NonNullable<NonNullable<Remake["picks"]>[number]["uses"]>>;
type Maybe<T> = T | null | undefined;

/** Ids with those of the merged ones as the kept one's, each once. */
const redirected = (ids: readonly string[], gone: Ids, kept: string): string[] => [
  ...new Set(ids.map((id) => (gone.has(id) ? kept : id))),
];

/** Two shares of what is one now are one share. */
function joinUses(uses: Uses, gone: Ids, kept: string): Uses {
  const joined = new Map<string, Uses[number]>();
  const rest: Uses = [];
  for (const use of uses) {
    const stash = use.stash && gone.has(use.stash) ? kept : use.stash;
    if (!stash) {
      rest.push(use);
      continue;
    }
    const before = joined.get(stash);
    const share = before ? shareOf(before.share, use.share) : use.share;
    joined.set(stash, before ? { ...before, ...(share === undefined ? {} : { share }) } : { ...use, stash });
  }
  return [...joined.values(), ...rest];
}

/** Shares are decimal text; two that are not both given leave the first. */
const shareOf = (a: Maybe<string>, b: Maybe<string>): string | undefined =>
  a && b ? Decimal.min(1, new Decimal(a).plus(b)).toFixed() : undefined;

/** What goes beside a remake, each thing once. */
function joinBeside<T extends Readonly<{ stash?: Maybe<string> }>>(list: T[], gone: Ids, kept: string): T[] {
  const moved = list.map((one) => (one.stash && gone.has(one.stash) ? { ...one, stash: kept } : one));
  return moved.filter(
    (one, at) => one.stash !== kept || moved.findIndex(({ stash }) => stash === kept) === at,
  );
}

const mentions = (remake: Remake, gone: Ids): boolean =>
  [
    ...(remake.picks ?? []).flatMap(({ uses }) => uses ?? []),
    ...(remake.essentials ?? []),
    ...(remake.shownOnly ?? []),
  ].some(({ stash }) => !!stash && gone.has(stash)) ||
  (Array.isArray(remake.fetched) && remake.fetched.some((id) => gone.has(id)));

function inRemake(remake: Remake, gone: Ids, kept: string): Remake {
  if (!mentions(remake, gone)) return remake;
  const { picks, essentials, shownOnly, fetched } = remake;
  return {
    ...remake,
    ...(picks && {
      picks: picks.map((pick) => (pick.uses ? { ...pick, uses: joinUses(pick.uses, gone, kept) } : pick)),
    }),
    ...(essentials && { essentials: joinBeside(essentials, gone, kept) }),
    ...(shownOnly && { shownOnly: joinBeside(shownOnly, gone, kept) }),
    ...(Array.isArray(fetched) && { fetched: redirected(fetched.map(String), gone, kept) }),
  };
}

/** Another thing's mentions, which now lead to the one kept. */
function inItem(item: StashItem, gone: Ids, kept: string): StashItem {
  const { twinOf } = item;
  const apart = keptApartOf(item);
  const isTwin = twinOf?.some((id) => gone.has(id)) ?? false;
  const isApart = apart.some((id) => gone.has(id));
  return isTwin || isApart
    ? {
        ...item,
        ...(isTwin && twinOf && { twinOf: redirected(twinOf, gone, kept) }),
        ...(isApart && { keptApart: redirected(apart, gone, kept) }),
      }
    : item;
}

/** The notebook with several things of the stash as one: `merged` in the place of the one whose id it has. */
export function mergedBook(book: Workbook, merged: StashItem, goneIds: readonly string[]): Workbook {
  const gone: Ids = new Set(goneIds.filter((id) => id !== merged.id));
  const kept = merged.id;
  const stash = (book.stash ?? [])
    .filter(({ id }) => !gone.has(id))
    .map((item) => (item.id === kept ? merged : inItem(item, gone, kept)));
  return {
    ...book,
    stash,
    ...(book.remakes && { remakes: book.remakes.map((remake) => inRemake(remake, gone, kept)) }),
  };
}

/** Several things of the stash become one, and all that named any of them names that one. Kinships name products. */
export const mergeStashItems = (book: Workbook, merged: StashItem, gone: readonly StashItem[]): ActDraft => ({
  label: words.mergeItems(gone.length + 1, supplyName(merged)),
  changes: difference(
    book,
    mergedBook(
      book,
      merged,
      gone.map(({ id }) => id),
    ),
  ),
});

/** Remembers that things which look like one are not, so that it is not asked again. */
export function keepItemsApart(items: readonly StashItem[]): ActDraft {
  const [first] = items;
  const changes = items.flatMap((item, at): readonly Change[] => {
    const others = items.slice(at + 1).map(({ id }) => id);
    const all = [...new Set([...keptApartOf(item), ...others])];
    return others.length > 0 ? [set("stash", item.id, ["keptApart"], all)] : [];
  });
  return act(words.keepApart(first ? supplyName(first) : ""), ...changes);
}
