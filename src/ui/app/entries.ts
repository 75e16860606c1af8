import { gtin14 } from "../../engine/supply/index.ts";
import { format, words } from "../words/index.ts";
import { type Term, terms } from "../words/terms.ts";
import { go, type Target } from "./navigate.ts";
import { wordsAddress } from "./terms-of.ts";

/** Something the search field can find, and what choosing it does. */
export type Entry = Readonly<{
  key: string;
  kind: keyof typeof words.find.kinds;
  name: string;
  /** Shown beside the name, and searched too; without it the kind is shown. */
  fact?: string | undefined;
  /** Shown beside the name instead, and not searched. */
  beside?: string | undefined;
  /** Other words that it is found by. */
  also?: string | undefined;
  run: () => void;
}>;

/** What of a notebook can be found by name. */
export type Findable = Readonly<{
  kits?:
    | readonly Readonly<{
        id: string;
        title?: string | null | undefined;
        maker?: string | null | undefined;
        lines?: readonly Readonly<{ id: string; supply: Readonly<{ name: string }> }>[] | null | undefined;
      }>[]
    | null
    | undefined;
  remakes?: readonly Readonly<{ id: string; kit: string; started: string }>[] | null | undefined;
  stash?:
    | readonly Readonly<{
        id: string;
        supply: Readonly<{
          name: string;
          maker?: string | null | undefined;
          gtin?: string | null | undefined;
        }>;
      }>[]
    | null
    | undefined;
}>;

const leads = (
  key: string,
  kind: Entry["kind"],
  name: string,
  to: Target,
  fact?: string | null,
  also?: string | null,
): Entry => ({
  key,
  kind,
  name,
  fact: fact ?? undefined,
  also: also ?? undefined,
  run: () => go(to),
});

type Owned = NonNullable<Findable["stash"]>[number];

const stashEntries = new WeakMap<Owned, Entry>();

/** The entry of a thing, the very same for as long as the thing is: what it is found by is then known already. */
function stashEntry(item: Owned): Entry {
  const { id, supply } = item;
  const entry =
    stashEntries.get(item) ??
    leads(`stash ${id}`, "stash", supply.name, { name: "stash-item", id }, supply.maker, gtin14(supply.gtin));
  stashEntries.set(item, entry);
  return entry;
}

/** The entries of a notebook: kits, remakes by their kit and day, every supply of the stash, and what kits held. */
export function entriesOf(book: Findable): readonly Entry[] {
  const titles = new Map((book.kits ?? []).map((kit) => [kit.id, kit.title ?? kit.id]));
  return [
    ...(book.kits ?? []).map((kit) =>
      leads(
        `kit ${kit.id}`,
        "kit",
        kit.title ?? kit.id,
        { name: "kit", id: kit.id, tab: "contents" },
        kit.maker,
      ),
    ),
    ...(book.remakes ?? []).map((remake) =>
      leads(
        `remake ${remake.id}`,
        "remake",
        titles.get(remake.kit) ?? remake.kit,
        { name: "remake", id: remake.id, tab: "stand-ins" },
        `${words.find.kinds.remake}, ${format.date(remake.started)}`,
      ),
    ),
    ...(book.stash ?? []).map(stashEntry),
    ...(book.kits ?? []).flatMap(({ id, title, lines }) =>
      (lines ?? []).map((line) => ({
        ...leads(`line ${id} ${line.id}`, "kit", line.supply.name, { name: "kit", id, tab: "contents" }, ""),
        beside: title ?? id,
      })),
    ),
  ];
}

/** The places of the fore-edge. */
export const placeEntries: readonly Entry[] = [
  leads("place desk", "place", words.places.desk, { name: "desk" }),
  leads("place kits", "place", words.places.kits, { name: "kits" }),
  leads("place stash", "place", words.places.stash, { name: "stash" }),
  leads("place remakes", "place", words.places.remakes, { name: "remakes" }),
  leads("place markets", "place", words.places.markets, { name: "markets" }),
  leads("place keep-safe", "place", words.places.keepSafe, { name: "keep-safe" }),
  ...Object.entries(words.tidies).map(([tidy, name]) =>
    leads(`place ${tidy}`, "place", name, `/stash?tidy=${tidy}`, words.places.stash),
  ),
];

/** Our own words, each leading to what it means. */
export const wordEntries: readonly Entry[] = [
  leads("place words", "place", words.places.words, { name: "words" }),
  ...Object.entries(terms).map(([term, [name]]) =>
    leads(`word ${term}`, "word", name, wordsAddress(term as Term)),
  ), // its own keys
];
