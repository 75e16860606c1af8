import { gtin14, isGtin } from "../../engine/supply/index.ts";
import { foldWords } from "../words/fold-words.ts";
import { words } from "../words/index.ts";
import type { Entry } from "./entries.ts";
import { go, type Target } from "./navigate.ts";

const shownAtOnce = 12;

/** An entry with what it is found by, folded; the name with a space before each of its words. */
type Ready = Readonly<{ entry: Entry; name: string; all: string }>;

const readyEntries = new WeakMap<Entry, Ready>();
const readyLists = new WeakMap<readonly Entry[], readonly Ready[]>();

function readyOf(entry: Entry): Ready {
  const name = ` ${foldWords(entry.name)}`;
  const fact = entry.fact ?? words.find.kinds[entry.kind];
  return { entry, name, all: `${name} ${foldWords(`${fact} ${entry.also ?? ""}`)}` };
}

/** Folds what the entries are found by, once for each, so that a key in a list of thousands only looks it through. */
export function makeReady(entries: readonly Entry[]): readonly Ready[] {
  const known = readyLists.get(entries);
  if (known) return known;
  const ready = entries.map((entry) => {
    const one = readyEntries.get(entry) ?? readyOf(entry);
    readyEntries.set(entry, one);
    return one;
  });
  readyLists.set(entries, ready);
  return ready;
}

/**
 * The entries that hold every word of the text: first those whose name begins with it, then those with a word that
 * does, then the rest, each in their own order. A bar code's number is looked for in full, however it was parted.
 */
export function findEntries(entries: readonly Entry[], text: string): readonly Entry[] {
  const whole = ` ${(isGtin(text) ? gtin14(text) : null) ?? foldWords(text)}`;
  const wanted = whole.slice(1).split(" ");
  const [begins, holds, rest]: readonly Entry[][] = [[], [], []];
  for (const { entry, name, all } of makeReady(entries)) {
    if (!wanted.every((word) => all.includes(word))) continue;
    const place = name.indexOf(whole);
    (place === 0 ? begins : place > 0 ? holds : rest)?.push(entry);
  }
  return [begins, holds, rest].flatMap((some) => some ?? []);
}

/** Where the rest of each kind is seen. */
const seenAt: Readonly<Partial<Record<Entry["kind"], (text: string) => Target>>> = {
  kit: () => ({ name: "kits" }),
  stash: (text) => `/stash?${new URLSearchParams({ q: text, view: "list" })}`,
  remake: () => ({ name: "remakes" }),
};

/** What is shown of what was found: the first twelve, then how many more there are of each kind, which leads to them. */
export function shownOf(found: readonly Entry[], text: string): readonly Entry[] {
  const rest = found.slice(shownAtOnce);
  const kinds = [...new Set(rest.map(({ kind }) => kind))];
  const more = kinds.flatMap((kind): readonly Entry[] => {
    const to = seenAt[kind]?.(text);
    const count = rest.filter((entry) => entry.kind === kind).length;
    return to ? [{ key: `more ${kind}`, kind, name: words.find.more(count), run: () => go(to) }] : [];
  });
  return [...found.slice(0, shownAtOnce), ...more];
}
