import type { Family } from "../traits.ts";
import { hexOfWord } from "./colour-words.ts";
import { type Kind, kinds, type Sets } from "./kinds.ts";
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

/** Greys are pencils of graphite as well, and so is whatever has a grade. */
const greys = /^(?:(?:dark|light|pale|mid)?gr[ea]y|black|white|silver|charcoal|slate|lead)$/i;
const grade = /(?<![\p{L}\p{N}])(?:(?:10|[2-9])\s?[hb]|hb)(?![\p{L}\p{N}])/iu;

/** A pencil of which a colour is said, and no grade, is a colour pencil: "water soluble pencil, indigo". */
export function asColoured(text: string, named: Named | null): Named | null {
  if (named?.kind !== kinds.pencil || grade.test(text)) return named;
  const isColoured = [...text.matchAll(/\p{L}+/gu)].some(
    ([word]) => hexOfWord(word) !== null && !greys.test(word),
  );
  return isColoured && /^p/i.test(named.match[0])
    ? { ...named, kind: kinds["colour-pencil"], sets: {} }
    : named;
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

/** "2 nibs" are two more things, and "colour:" only says what comes next. */
const isOfItsOwn = (text: string, { index, 0: word }: RegExpExecArray): boolean =>
  /\d\s*$/.test(text.slice(0, index)) || /^\s*:/.test(text.slice(index + word.length));

/** What a line says once more: "kneadable putty rubber", "tracing paper pad". It belongs to what was understood. */
export function readAgain(
  text: string,
  family: Family,
  { words, says }: Voice,
  taken: readonly Found[],
  aside: readonly Span[],
): readonly Found[] {
  const values = new Map(taken.map(({ field, value }) => [field, value]));
  const isKnown = ([trait, value]: readonly [string, unknown]): boolean =>
    values.get(traitField(trait)) === value;
  const again = words.heads.filter(
    ({ kind, tells }) =>
      kind.family === family && !kind.called && Object.entries({ ...kind.sets, ...tells }).every(isKnown),
  );
  const told = (words.told.get(family) ?? []).filter(({ trait, value }) => isKnown([trait, value]));
  const all: Found[] = [];
  const take = (pattern: RegExp, field: string, value: unknown, reads: string) =>
    all.push(
      ...matches(text, pattern, [...taken, ...aside, ...all])
        .filter((match) => !isOfItsOwn(text, match))
        .map((match) => found(match, field, value, reads)),
    );
  for (const { trait, value, pattern } of told)
    take(pattern, traitField(trait), value, say(family, trait, value, says));
  for (const { pattern } of again) take(pattern, "family", family, says.families[family]);
  return all;
}
