import { type Term, terms } from "../../words/terms.ts";

/** A stretch of a sentence, and the word of ours that it is, if it is one. */
export type Stretch = Readonly<{ text: string; term: Term | null }>;

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** Any of these forms where it stands as a word of its own, the longest first. */
const wholeWords = (forms: readonly string[]): RegExp => {
  const longestFirst = forms.toSorted((a, b) => b.length - a.length).map(escaped);
  return new RegExp(`(?<![\\p{L}-])(?:${longestFirst.join("|")})(?![\\p{L}-])`, "iu");
};

type Place = Readonly<{ at: number; end: number; term: Term }>;

/** Where a term first stands in a text. */
function firstPlace(text: string, term: Term): Place | null {
  const found = wholeWords(terms[term]).exec(text);
  return found && { at: found.index, end: found.index + found[0].length, term };
}

/** A sentence in stretches, so that the first time each of these words stands in it, it can be asked what it means. */
export function termsIn(text: string, wanted: readonly Term[]): readonly Stretch[] {
  const places = wanted
    .flatMap((term) => firstPlace(text, term) ?? [])
    .toSorted((a, b) => a.at - b.at || b.end - a.end);
  const stretches: Stretch[] = [];
  let told = 0;
  for (const { at, end, term } of places) {
    if (at < told) continue; // inside a longer one
    stretches.push({ text: text.slice(told, at), term: null }, { text: text.slice(at, end), term });
    told = end;
  }
  stretches.push({ text: text.slice(told), term: null });
  return stretches.filter(({ text: stretch }) => stretch !== "");
}

/** The words that a text before does not offer already. */
export const notAskedIn = (before: unknown, wanted: readonly Term[]): readonly Term[] =>
  typeof before === "string" ? wanted.filter((term) => firstPlace(before, term) === null) : wanted;
