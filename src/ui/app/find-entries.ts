import { foldWords } from "../words/fold-words.ts";
import { words } from "../words/index.ts";
import type { Entry } from "./entries.ts";
import { go, type Target } from "./navigate.ts";

const shownAtOnce = 12;

/**
 * The entries that hold every word of the text: first those whose name begins with it, then those with a word that
 * does, then the rest, each in their own order.
 */
export function findEntries(entries: readonly Entry[], text: string): readonly Entry[] {
  const whole = foldWords(text);
  const wanted = whole.split(" ");
  const ranked = entries.flatMap((entry) => {
    const name = foldWords(entry.name);
    const fact = entry.fact ?? words.find.kinds[entry.kind];
    const all = `${name} ${foldWords(`${fact} ${entry.also ?? ""}`)}`;
    if (!wanted.every((word) => all.includes(word))) return [];
    return [{ entry, rank: name.startsWith(whole) ? 0 : ` ${name}`.includes(` ${whole}`) ? 1 : 2 }];
  });
  return ranked.toSorted((a, b) => a.rank - b.rank).map(({ entry }) => entry);
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
