import MiniSearch from "minisearch";
import { readColourPhrase } from "../../src/engine/supply/index.ts";
import { entriesOf } from "../../src/ui/app/entries.ts";
import { findEntries } from "../../src/ui/app/find-entries.ts";
import { anything } from "../../src/ui/stash/view/asked.ts";
import { findIn } from "../../src/ui/stash/view/find.ts";
import { knownStash } from "../../src/ui/stash/view/known.ts";
import { type Palette, stashOf } from "./stash.ts";
import { median } from "./timing.ts";

/** What is typed, key by key. */
const typed = [
  "gouache",
  "kvitlyng moss",
  "pale sea green",
  "torrin hill",
  "g404",
  "norrsken deep",
  "ateljé",
  "top drawer",
  "winter hedge",
  "zzz",
];
const keystrokes = typed.flatMap((text) => [...text].map((_, at) => text.slice(0, at + 1)));

type Worst = Readonly<{ worst: number; median: number; build: number; at: string }>;

/** Every keystroke several times, the quickest of each, and the worst of these: what else the machine does is no search. */
function eachKey(runs: number, search: (text: string) => unknown): Omit<Worst, "build"> {
  const times = keystrokes.map((text) => {
    const took = Array.from({ length: runs }, () => {
      const began = performance.now();
      search(text);
      return performance.now() - began;
    });
    return Math.min(...took);
  });
  const worst = Math.max(...times);
  return { worst, median: median(times), at: keystrokes[times.indexOf(worst)] ?? "" };
}

function built<T>(make: () => T): readonly [T, number] {
  const began = performance.now();
  return [make(), performance.now() - began];
}

/** P14: a key typed in the stash's search, in the finder, and in MiniSearch over the same words. */
export function search(runs: number, count: number, palette: Palette) {
  const stash = stashOf(count, palette);
  const [known, knownIn] = built(() => {
    const all = knownStash(stash);
    for (const one of all) void one.findable; // as the screen does while nobody waits
    return all;
  });
  const ours = eachKey(runs, (text) => findIn(known, { ...anything, text }, readColourPhrase));
  const [entries, entriesIn] = built(() => entriesOf({ stash }));
  const finder = eachKey(runs, (text) => findEntries(entries, text));
  const [index, indexIn] = built(() => {
    const mini = new MiniSearch({ fields: ["words"] });
    mini.addAll(known.map(({ item, findable }) => ({ id: item.id, words: findable })));
    return mini;
  });
  const peer = eachKey(runs, (text) => index.search(text, { prefix: true, combineWith: "AND" }));
  return {
    stash: { ...ours, build: knownIn },
    finder: { ...finder, build: entriesIn },
    peer: { ...peer, build: indexIn },
  };
}
