import { deltaE2000, type Lab, labOf } from "../colour/index.ts";
import { foldText } from "./fold.ts";
import { type Identity, identityOf, keyOf } from "./identity.ts";
import { file } from "./multimap.ts";
import type { StashItem, Supply } from "./schema.ts";

/**
 * Why two things are taken for one: the same bar code; the same maker, line and number; the same in everything that
 * names them (`sameProduct`); or nearly the same name and colour of one maker's line.
 */
export type DoubleReason = "gtin" | "code" | "name" | "nearly";

/** Things of a stash that may be one. `apart`: the largest ΔE00 between them, of a pair found by nearness; else null. */
export type Doubles = Readonly<{
  items: readonly StashItem[];
  why: DoubleReason;
  apart: number | null;
}>;

/** ΔE00 within which two of one name are one colour, and two whose names are spelt a little differently. Ours. */
const sameNameUpTo = 5;
const spelledUpTo = 3;

/** Of many alike, each is compared with so many that come next in lightness: never all pairs. */
const neighbours = 50;

/** Shorter names differ by one letter and are other things ("HB", "2B"). */
const shortestSpelled = 5;

type Looked = Readonly<{
  at: number;
  item: StashItem;
  identity: Identity;
  code: string;
  lab: Lab | null;
  /** Maker, line and family. */
  shelf: string | null;
  /** The words of the name in order of the alphabet, and its figures apart. */
  words: string;
  figures: string;
}>;

type Pair = Readonly<{ a: number; b: number; why: DoubleReason; apart: number | null }>;

/** Words and figures of a name: "Gouache, moss 2" and "moss gouache 2" have the same. Never throws. */
function partsOf(name: string): Readonly<{ words: string; figures: string }> {
  const parts = name.toLowerCase().match(/\p{L}[\p{L}\p{M}]*|\p{N}+/gu) ?? [];
  const folded = parts.map(foldText).toSorted();
  const isFigure = (part: string) => /^\p{N}/u.test(part);
  return {
    words: folded.filter((part) => !isFigure(part)).join(" "),
    figures: folded.filter(isFigure).join(" "),
  };
}

function look(item: StashItem, at: number): Looked {
  const { supply } = item;
  const [maker, line] = [foldText(supply.maker), foldText(supply.line)];
  return {
    at,
    item,
    identity: identityOf(supply),
    code: foldText(supply.code),
    lab: labOf(supply.colour),
    shelf: maker ? keyOf(supply.family, maker, line) : null,
    ...partsOf([supply.name, supply.colour?.name].filter(Boolean).join(" ")),
  };
}

/** Everything filed under the same key, twos and more. */
function alike(
  looked: readonly Looked[],
  key: (one: Looked) => string | null,
): readonly (readonly Looked[])[] {
  const files = new Map<string, Looked[]>();
  for (const one of looked) {
    const under = key(one);
    if (under !== null) file(files, under, one);
  }
  return [...files.values()].filter((some) => some.length > 1);
}

/** Each with the first: enough to join them all. */
const chained = (some: readonly Looked[], why: DoubleReason): readonly Pair[] =>
  some.slice(1).map((one) => ({ a: some[0]?.at ?? one.at, b: one.at, why, apart: null }));

/**
 * The same in all that names them, where some lack a code. With two codes among them nobody can tell which one a
 * thing without a code is, so those without are joined among themselves alone.
 */
function namedAlike(some: readonly Looked[]): readonly Pair[] {
  const codes = new Set(some.map(({ code }) => code).filter((code) => code !== ""));
  return codes.size > 1
    ? chained(
        some.filter(({ code }) => code === ""),
        "name",
      )
    : chained(some, "name");
}

const certain = (looked: readonly Looked[]): readonly Pair[] => [
  ...alike(looked, ({ identity }) => identity.gtin).flatMap((some) => chained(some, "gtin")),
  ...alike(looked, ({ identity }) => identity.coded).flatMap((some) => chained(some, "code")),
  ...alike(looked, ({ identity }) => identity.plain).flatMap(namedAlike),
];

const traitsOf = (supply: Supply): Readonly<Record<string, unknown>> => supply.traits ?? {};

/** Whether nothing that is known of both speaks against their being one: a tube of 5 ml is none of 15 ml. */
function canBeOne(a: Looked, b: Looked): boolean {
  if (a.code && b.code && a.code !== b.code) return false;
  if (a.identity.gtin && b.identity.gtin && a.identity.gtin !== b.identity.gtin) return false;
  const [here, there] = [traitsOf(a.item.supply), traitsOf(b.item.supply)];
  return Object.keys(here).every((trait) => {
    const [x, y] = [here[trait], Object.hasOwn(there, trait) ? there[trait] : null];
    return x === null || x === undefined || y === null || y === undefined || sameValue(x, y);
  });
}

const sameValue = (x: unknown, y: unknown): boolean =>
  typeof x === "string" && typeof y === "string"
    ? foldText(x) === foldText(y)
    : JSON.stringify(Array.isArray(x) ? x.toSorted() : x) ===
      JSON.stringify(Array.isArray(y) ? y.toSorted() : y);

/** Keys that two words share when they are one letter apart: the word, and the word without each of its letters. */
const spellings = (word: string): readonly string[] => [
  word,
  ...Array.from(word, (_, at) => word.slice(0, at) + word.slice(at + 1)),
];

const isOneLetterOff = (a: string, b: string): boolean => {
  if (a === b) return true;
  const [short, long] = a.length <= b.length ? [a, b] : [b, a];
  if (long.length - short.length > 1) return false;
  let at = 0;
  while (at < short.length && short[at] === long[at]) at++;
  return short.length === long.length
    ? short.slice(at + 1) === long.slice(at + 1)
    : short.slice(at) === long.slice(at + 1);
};

function nearPair(a: Looked, b: Looked): Pair | null {
  const isSpelledAlike = a.words === b.words;
  if (!isSpelledAlike && !isOneLetterOff(a.words, b.words)) return null;
  if (!canBeOne(a, b)) return null;
  const isColourless = !a.lab && !b.lab;
  if (!a.lab || !b.lab)
    return isSpelledAlike || isColourless ? { a: a.at, b: b.at, why: "nearly", apart: null } : null;
  const apart = deltaE2000(a.lab, b.lab);
  const most = isSpelledAlike ? sameNameUpTo : spelledUpTo;
  return apart <= most ? { a: a.at, b: b.at, why: "nearly", apart } : null;
}

const byLightness = (a: Looked, b: Looked): number => (a.lab?.l ?? -1) - (b.lab?.l ?? -1) || a.at - b.at;

/** Of two with codes the certain rules have said already whether they are one. */
const isOpen = (a: Looked, b: Looked): boolean => !(a.code && b.code);

function nearIn(some: readonly Looked[]): readonly Pair[] {
  const sorted = some.toSorted(byLightness);
  return sorted.flatMap((one, at) =>
    sorted
      .slice(at + 1, at + 1 + neighbours)
      .flatMap((other) => (isOpen(one, other) ? (nearPair(one, other) ?? []) : [])),
  );
}

/** Things of one shelf and one name: `spelled` apart from others of the shelf only by their words. */
type Named = Readonly<{ shelf: string; words: string; things: readonly Looked[] }>;

function namesOf(looked: readonly Looked[]): readonly Named[] {
  const files = new Map<string, Looked[]>();
  for (const one of looked) {
    if (one.shelf !== null && one.words !== "")
      file(files, `${one.shelf}\n${one.figures}\n${one.words}`, one);
  }
  return [...files].map(([key, things]) => ({
    shelf: key.slice(0, key.lastIndexOf("\n")),
    words: things[0]?.words ?? "",
    things,
  }));
}

/** Names of one shelf that are one letter apart, each two once. */
function spelledAlike(names: readonly Named[]): readonly (readonly [Named, Named])[] {
  const shelves = new Map<string, number>();
  const files = new Map<string, Named[]>();
  for (const name of names) {
    if (name.words.length < shortestSpelled) continue;
    const shelf = shelves.get(name.shelf) ?? shelves.size; // a number, since the keys are many
    shelves.set(name.shelf, shelf);
    for (const form of new Set(spellings(name.words))) file(files, `${shelf} ${form}`, name);
  }
  const found = new Map<Named, Set<Named>>();
  for (const some of files.values())
    some.slice(0, neighbours).forEach((one, at) => {
      for (const other of some.slice(at + 1, neighbours))
        found.set(one, (found.get(one) ?? new Set()).add(other));
    });
  return [...found].flatMap(([one, others]) => [...others].map((other) => [one, other] as const));
}

/** Pairs of one maker's line whose names are one letter apart at most, and whose colours are close. */
function near(looked: readonly Looked[]): readonly Pair[] {
  const names = namesOf(looked);
  return [
    ...names.flatMap(({ things }) => (things.length > 1 ? nearIn(things) : [])),
    ...spelledAlike(names).flatMap(([a, b]) =>
      a.things
        .slice(0, neighbours)
        .flatMap((one) =>
          b.things
            .slice(0, neighbours)
            .flatMap((other) => (isOpen(one, other) ? (nearPair(one, other) ?? []) : [])),
        ),
    ),
  ];
}

/** Of several reasons for one pair the first: the surest come first. */
const strongest = (pairs: readonly Pair[]): readonly Pair[] => [
  ...new Map(pairs.toReversed().map((pair) => [`${pair.a} ${pair.b}`, pair])).values(),
];

const strength: Readonly<Record<DoubleReason, number>> = { gtin: 0, code: 1, name: 2, nearly: 3 };

/** The ids that somebody said a thing is not the same as, an optional field of ours; anything else there counts as none. */
export function keptApartOf({ keptApart }: StashItem): readonly string[] {
  return Array.isArray(keptApart) ? keptApart.filter((id): id is string => typeof id === "string") : [];
}

/** A thing's group, by place in the stash: what was joined, whoever did it. */
function joined(count: number, pairs: readonly Pair[]): (at: number) => number {
  const over = Array.from({ length: count }, (_, at) => at);
  const top = (at: number): number => {
    let up = at;
    while (over[up] !== undefined && over[up] !== up) {
      over[up] = over[over[up] ?? up] ?? up;
      up = over[up] ?? up;
    }
    return up;
  };
  for (const { a, b } of pairs) {
    const [x, y] = [top(a), top(b)];
    over[Math.max(x, y)] = Math.min(x, y);
  }
  return top;
}

/**
 * The pairs without those that would join things of different codes over one that has none: nobody can tell which of
 * them it is.
 */
function unmixed(looked: readonly Looked[], pairs: readonly Pair[]): readonly Pair[] {
  const top = joined(looked.length, pairs);
  const code = (at: number) => looked[at]?.code ?? "";
  const codes = new Map<number, Set<string>>();
  for (const at of new Set(pairs.flatMap(({ a, b }) => [a, b])))
    if (code(at) !== "") codes.set(top(at), (codes.get(top(at)) ?? new Set()).add(code(at)));
  const isMixed = ({ a, b, why }: Pair) =>
    why !== "gtin" && (code(a) === "") !== (code(b) === "") && (codes.get(top(a))?.size ?? 0) > 1;
  return pairs.filter((pair) => !isMixed(pair));
}

/** More than so many that are only nearly alike are a range of colours, and not one thing entered twice. */
const mostNearly = 8;

function groupsOf(stash: readonly StashItem[], pairs: readonly Pair[]): readonly Doubles[] {
  const top = joined(stash.length, pairs);
  const members = new Map<number, Set<number>>();
  const reasons = new Map<number, Pair[]>();
  for (const pair of pairs) {
    const group = top(pair.a);
    file(reasons, group, pair);
    members.set(group, (members.get(group) ?? new Set()).add(pair.a).add(pair.b));
  }
  return [...members].map(([group, places]) => {
    const why = (reasons.get(group) ?? []).toSorted((a, b) => strength[b.why] - strength[a.why]);
    const distances = why.flatMap(({ apart }) => (apart === null ? [] : [apart]));
    return {
      items: [...places].toSorted((a, b) => a - b).flatMap((at) => stash[at] ?? []),
      why: why[0]?.why ?? "nearly", // the weakest link is what has to be looked at
      apart: distances.length > 0 ? distances.reduce((a, b) => Math.max(a, b)) : null,
    };
  });
}

/**
 * Groups of a stash that may be one thing entered twice, by the rule of the same product (`sameProduct`) and by
 * nearness: of one maker's line and family, names that differ by their order or by one letter, no figure, code or
 * trait that speaks against it, and colours within ΔE00 5 (3 where the names are spelt differently). Pairs that
 * somebody has kept apart are left out. Everything is looked up by key, so thousands take a moment.
 * @returns the certain ones first, then in the order of the stash; each thing is in one group at most
 */
export function doublesIn(stash: readonly StashItem[]): readonly Doubles[] {
  const looked = stash.map(look);
  const apart = new Set(
    stash.flatMap((item) => keptApartOf(item).flatMap((id) => [keyOf(item.id, id), keyOf(id, item.id)])),
  );
  const isAsked = ({ a, b }: Pair) => !apart.has(keyOf(stash[a]?.id ?? "", stash[b]?.id ?? ""));
  const pairs = strongest([...certain(looked), ...near(looked)]).filter(isAsked);
  const groups = groupsOf(stash, unmixed(looked, pairs));
  return groups
    .filter(({ why, items }) => why !== "nearly" || items.length <= mostNearly)
    .toSorted((a, b) => strength[a.why] - strength[b.why]);
}
