import type { KitMatch } from "../../../engine/match/index.ts";
import type { Family, StashItem } from "../../../engine/supply/index.ts";
import { format } from "../../words/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { ownPick, type Shelves, type Subject, shelvesOf } from "./solve.ts";

const words = remakeWords.standIns;

/** How an item turns out to be gone at the shelf: what dries can dry out, the rest is used up; a tool is neither. */
export type Gone = "dried" | "empty";

export type FetchItem = Readonly<{
  id: string;
  name: string;
  more: string;
  fetched: boolean;
  gone: Gone | null;
}>;
export type FetchPlace = Readonly<{ place: string; items: readonly FetchItem[] }>;
export type FetchView = Readonly<{ places: readonly FetchPlace[]; sum: string; count: number }>;

/** The ids ticked off, an optional field of the remake. */
export function fetchedIds(remake: Subject["remake"]): ReadonlySet<string> {
  const kept = remake.fetched;
  return new Set(Array.isArray(kept) ? kept.filter((id): id is string => typeof id === "string") : []);
}

/** What each item is fetched for, in the order of the kit, then what goes beside it. */
function wanted(
  { remake }: Subject,
  match: KitMatch,
  shelves: Shelves,
): ReadonlyMap<string, readonly string[]> {
  const lines = new Map<string, readonly number[]>();
  for (const { line, pick } of match.lines) {
    if (!pick) continue;
    const uses =
      pick.by === "person" ? (ownPick(remake, line)?.uses ?? []).map(({ stash }) => stash) : [pick.stash];
    for (const stash of uses)
      if (stash) lines.set(stash, [...(lines.get(stash) ?? []), shelves.numberOf(line)]);
  }
  const all = new Map(
    [...lines].map(([stash, numbers]) => [stash, [words.forLine(numbers)] as readonly string[]]),
  );
  const beside = (stash: string | null | undefined, what: string) =>
    stash && all.set(stash, [...(all.get(stash) ?? []), what]);
  for (const { stash } of remake.essentials ?? []) beside(stash, words.forBasics);
  for (const { stash } of remake.shownOnly ?? []) beside(stash, words.forShown);
  return all;
}

/** Places in order of their names, what has none last. */
const byPlace = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number =>
  a === "" ? 1 : b === "" ? -1 : a.localeCompare(b, format.locale);

const dries: ReadonlySet<Family> = new Set<Family>(["marker", "liner", "ink", "paint"]);

/** Nobody uses up a brush or a ruler. */
const lasts: ReadonlySet<Family> = new Set<Family>(["brush", "tool"]);

const goneOf = ({ supply }: StashItem): Gone | null =>
  lasts.has(supply.family) ? null : dries.has(supply.family) ? "dried" : "empty";

/** What to fetch, place by place. */
export function fetchView(subject: Subject, match: KitMatch): FetchView {
  const shelves = shelvesOf(subject);
  const ticked = fetchedIds(subject.remake);
  const places = new Map<string, readonly FetchItem[]>();
  for (const [id, what] of wanted(subject, match, shelves)) {
    const item = shelves.item(id);
    if (!item) continue;
    const place = item.place?.trim() ?? "";
    const { name } = item.supply;
    const one = { id, name, more: what.join(", "), fetched: ticked.has(id), gone: goneOf(item) };
    places.set(place, [...(places.get(place) ?? []), one]);
  }
  const all = [...places.values()].flat();
  return {
    places: [...places].toSorted(byPlace).map(([place, items]) => ({ place: place || words.noPlace, items })),
    sum: words.fetchedSome(all.filter(({ fetched }) => fetched).length, all.length),
    count: all.length,
  };
}
