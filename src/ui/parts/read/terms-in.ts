import { type Term, terms } from "../../words/terms.ts";

/** A stretch of a sentence, and the word of ours that it is, if it is one. */
export type Stretch = Readonly<{ text: string; term: Term | null }>;

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** A form of a term where it stands as a word of its own. */
const wholeWord = (form: string): RegExp => new RegExp(`(?<![\\p{L}-])${escaped(form)}(?![\\p{L}-])`, "iu");

type Place = Readonly<{ at: number; end: number; term: Term }>;

/** Where a term first stands in a text, the longest of its forms first. */
function firstPlace(text: string, term: Term): Place | null {
  const forms = terms[term].toSorted((a, b) => b.length - a.length);
  for (const form of forms) {
    const found = wholeWord(form).exec(text);
    if (found) return { at: found.index, end: found.index + found[0].length, term };
  }
  return null;
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
