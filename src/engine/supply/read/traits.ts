import type { Family } from "../traits.ts";
import { anyOf, matches, overlaps, type Span } from "./phrase.ts";
import { type Found, found, isList, traitField } from "./piece.ts";
import { familyWords, type Head, heads, traitName, traitWords } from "./words.ts";

type Told = Readonly<{ trait: string; value: string | boolean; pattern: RegExp }>;

const valueNamed = (name: string): string | boolean =>
  name === "true" ? true : name === "false" ? false : name;

const toldBy = (family: Family): readonly Told[] =>
  Object.entries(traitWords[family]).flatMap(([trait, values]) =>
    Object.entries(values).map(([name, words]) => ({
      trait,
      value: valueNamed(name),
      pattern: anyOf(words.split(",")),
    })),
  );

const headPatterns = heads.map((head) => ({ head, pattern: anyOf(head.words) }));
const patterns = new Map<string, readonly Told[]>(
  Object.keys(traitWords).map((family) => [family, toldBy(family as Family)]), // keys of our own table
);

function say(trait: string, value: string | boolean): string {
  if (value === true) return traitName(trait);
  return value === false ? `not ${traitName(trait)}` : `${traitName(trait)}: ${value}`;
}

/** What kind of thing the line names, and where it does so. */
export function readHead(
  text: string,
  taken: readonly Span[],
): Readonly<{ head: Head; match: RegExpExecArray }> | null {
  for (const { head, pattern } of headPatterns) {
    const [match] = matches(text, pattern, taken);
    if (match) return { head, match };
  }
  return null;
}

const article = (word: string): string =>
  word === "pad" || word === "block" || word === "book" ? `a ${word}` : word;

/** The piece for the word that names the kind: "block" reads "paper, a block". */
export function headPiece(head: Head, match: RegExpExecArray): Found {
  const [[trait, value] = []] = Object.entries(head.sets ?? {});
  const family = familyWords[head.family];
  if (trait === undefined || typeof value !== "string") return found(match, "family", head.family, family);
  const said = family.endsWith(value) ? family : `${family}, ${article(value)}`;
  return found(match, traitField(trait), value, said);
}

/** The words that tell traits, where nothing has been read yet; of two that differ, the first holds. */
export function readTraits(text: string, family: Family, taken: readonly Found[]): readonly Found[] {
  const hits = (patterns.get(family) ?? [])
    .flatMap(({ trait, value, pattern }) =>
      matches(text, pattern, taken).map((match) => found(match, traitField(trait), value, say(trait, value))),
    )
    // Where two words begin alike the longer one says more: "semi-opaque" before "opaque".
    .toSorted((a, b) => a.start - b.start || b.end - a.end);
  const all: Found[] = [];
  for (const hit of hits) {
    const clear = !all.some((piece) => overlaps(piece, hit));
    const open = isList(hit.field) || ![...taken, ...all].some((piece) => piece.field === hit.field);
    if (clear && open) all.push(hit);
  }
  return all;
}
