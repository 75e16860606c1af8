import type { Supply } from "../../../engine/supply/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { foldWords } from "../../words/fold-words.ts";
import { kitName } from "./kits-list.ts";
import { factsText } from "./line-rows.ts";

/** A line of an earlier kit that may be meant. */
export type Suggestion = Readonly<{ key: string; supply: Supply; name: string; facts: string; kit: string }>;

const shownAtOnce = 6;

/** Fewer letters fit nearly everything. */
const leastLetters = 2;

const count = /^\s*(\d{1,3})\s*(?:[x×]|st\.?(?=\s))?\s+/iu;

/** How many are meant, and the words after that. */
export function countedIn(typed: string): Readonly<{ qty: number; words: string }> {
  const match = count.exec(typed);
  return { qty: Math.max(1, Number(match?.[1] ?? 1)), words: match ? typed.slice(match[0].length) : typed };
}

const wordsOf = ({ name, maker, line }: Supply): readonly string[] =>
  foldWords([name, maker ?? "", line ?? ""].join(" ")).split(/[^\p{L}\p{N}]+/u);

/**
 * Lines of other kits of which every word typed begins a word: those of the same maker's kits first, then of the newest
 * kit; each thing once.
 */
export function suggestionsFor(
  { kits }: Pick<Workbook, "kits">,
  kit: Kit,
  typed: string,
): readonly Suggestion[] {
  const wanted = foldWords(countedIn(typed).words)
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
  if (wanted.join("").length < leastLetters) return [];
  const others = (kits ?? [])
    .filter(({ id }) => id !== kit.id)
    .toSorted(
      (a, b) =>
        Number(b.maker === kit.maker) - Number(a.maker === kit.maker) || (a.period < b.period ? 1 : -1),
    );
  const found = new Map<string, Suggestion>();
  for (const other of others)
    for (const { supply } of other.lines ?? []) {
      if (found.size >= shownAtOnce) return [...found.values()];
      const known = wordsOf(supply);
      if (!wanted.every((word) => known.some((one) => one.startsWith(word)))) continue;
      const facts = factsText(supply);
      const key = [supply.name, supply.maker, supply.line, facts].join("|");
      if (!found.has(key)) found.set(key, { key, supply, name: supply.name, facts, kit: kitName(other) });
    }
  return [...found.values()];
}
