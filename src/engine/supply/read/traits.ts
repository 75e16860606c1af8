import type { Family } from "../traits.ts";
import type { Kind, Sets } from "./kinds.ts";
import { matches, overlaps, type Span } from "./phrase.ts";
import { type Found, found, isList, traitField } from "./piece.ts";
import type { Says } from "./says/index.ts";
import type { Vocabulary } from "./vocabulary.ts";
import type { Voice } from "./voice.ts";

/** What kind of thing the line names, with what the word tells of it, and where it does so. */
export type Named = Readonly<{ kind: Kind; sets: Sets; match: RegExpExecArray }>;

export function readHead(text: string, { heads }: Vocabulary, taken: readonly Span[]): Named | null {
  for (const { kind, tells, pattern } of heads) {
    const [match] = matches(text, pattern, taken);
    if (match) return { kind, sets: { ...kind.sets, ...tells }, match };
  }
  return null;
}

const isText = (value: unknown): value is string => typeof value === "string";

/**
 * The piece for the word that names the kind: "block" reads "paper, a block". Of the traits a word tells, the first
 * is said, and what is written into one word with it.
 */
export function headPiece({ kind, sets, match }: Named, says: Says): Found {
  const { family } = kind;
  const [first] = Object.entries(kind.sets ?? {});
  const told = Object.entries(sets).filter(
    ([trait]) => trait === first?.[0] || !(trait in (kind.sets ?? {})),
  );
  const values = told.flatMap(([trait, value]) =>
    isText(value) && value !== "other" ? says.value(family, trait, value) : [],
  );
  const [trait, value] = told[0] ?? [];
  if (trait === undefined || !isText(value)) return found(match, "family", family, says.families[family]);
  return found(match, traitField(trait), value, says.kind(family, values));
}

function say(family: Family, trait: string, value: string | boolean, says: Says): string {
  const name = says.trait(trait);
  if (value === true) return name;
  return value === false ? says.not(name) : says.about(name, says.value(family, trait, value));
}

/** The words that tell traits, where nothing has been read yet; of two that differ, the first holds. */
export function readTraits(
  text: string,
  family: Family,
  { words, says }: Voice,
  taken: readonly Found[],
  aside: readonly Span[],
): readonly Found[] {
  const hits = (words.told.get(family) ?? [])
    .flatMap(({ trait, value, pattern }) =>
      matches(text, pattern, [...taken, ...aside]).map((match) =>
        found(match, traitField(trait), value, say(family, trait, value, says)),
      ),
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
