import { type InEvery, type Language, languages } from "../../record/index.ts";
import { type Family, families } from "../traits.ts";
import { type Kind, type KindName, kinds, type Sets } from "./kinds.ts";
import { anyOf, type Phrases } from "./phrase.ts";
import { listed, type Wording, wordings } from "./words/index.ts";

/** A kind that a pattern names, with what its word tells beside what the kind itself does. */
export type Head = Readonly<{ kind: Kind; tells: Sets; pattern: RegExp }>;

/** A value of a trait that a pattern tells. */
export type Told = Readonly<{ trait: string; value: string | boolean; pattern: RegExp }>;

/** The words for how many. */
export type CountWords = Readonly<{
  numbers: ReadonlyMap<string, number>;
  two: string;
  dozen: string;
  halfDozen: string;
  packs: string;
  of: string;
  pieces: string;
  holders: string;
  quantity: string;
  inOne: string;
  plural: string;
}>;

/** All words that lines are read by where one language is spoken: its own, and those of others that do not clash. */
export type Vocabulary = Readonly<{
  heads: readonly Head[];
  told: ReadonlyMap<Family, readonly Told[]>;
  counts: CountWords;
  joiners: readonly string[];
  noColours: ReadonlySet<string>;
  /** What stands before a number that counts nothing, and before a colon and a colour, as patterns. */
  size: string;
  label: string;
}>;

type Spoken = Readonly<{ wording: Wording; has: (word: string) => boolean }>;

/** The wording of the language itself first, then that of others without what only they mean by a word. */
function spokenIn(language: Language): readonly Spoken[] {
  const others = languages.filter((other) => other !== language);
  return [language, ...others].map((each) => {
    const wording = wordings[each];
    const kept = new Set(listed(wording.onlyHere));
    return { wording, has: (word) => each === language || !kept.has(word) };
  });
}

const phrasesOf = (
  all: readonly Spoken[],
  words: (wording: Wording) => string | undefined,
): readonly Phrases[] =>
  all.map(({ wording, has }) => ({
    words: listed(words(wording) ?? "").filter(has),
    ending: wording.ending,
  }));

/** Words as one alternative of a pattern, the longest first. */
const choice = (all: readonly Spoken[], words: (wording: Wording) => string): string =>
  all
    .flatMap(({ wording, has }) => listed(words(wording)).filter(has))
    .toSorted((a, b) => b.length - a.length)
    .map((word) => word.replace(/[\s-]+/g, "[\\s-]+"))
    .join("|");

/** Words of every language at once, where a figure beside them leaves no doubt. */
const pooled = (words: (wording: Wording) => string): string =>
  choice(
    languages.map((language) => ({ wording: wordings[language], has: () => true })),
    words,
  );

const kindEntries = Object.entries(kinds) as [KindName, Kind][]; // keys of a literal we wrote

const headsOf = (all: readonly Spoken[]): readonly Head[] =>
  kindEntries.flatMap(([name, kind]) => [
    ...all.flatMap(({ wording }) =>
      wording.compounds
        .filter(([of]) => of === name)
        .map(([, words, tells]) => ({
          kind,
          tells,
          pattern: anyOf([{ words: listed(words), ending: wording.ending }]),
        })),
    ),
    { kind, tells: {}, pattern: anyOf(phrasesOf(all, ({ kinds: named }) => named[name])) },
  ]);

const valueNamed = (name: string): string | boolean =>
  name === "true" ? true : name === "false" ? false : name;

function toldOf(all: readonly Spoken[], family: Family): readonly Told[] {
  const told = all.flatMap(({ wording }) =>
    Object.entries(wording.traits[family]).flatMap(([trait, values]) =>
      Object.keys(values).map((value) => [trait, value] as const),
    ),
  );
  const each = new Map(told.map(([trait, value]) => [`${trait} ${value}`, [trait, value] as const]));
  return [...each.values()].map(([trait, value]) => ({
    trait,
    value: valueNamed(value),
    pattern: anyOf(phrasesOf(all, (wording) => wording.traits[family][trait]?.[value])),
  }));
}

const numbersOf = (all: readonly Spoken[]): ReadonlyMap<string, number> =>
  new Map(
    all
      .toReversed()
      .flatMap(({ wording, has }) => Object.entries(wording.numbers).filter(([word]) => has(word))),
  );

function vocabularyOf(language: Language): Vocabulary {
  const all = spokenIn(language);
  return {
    heads: headsOf(all),
    told: new Map(families.map((family) => [family, toldOf(all, family)])),
    counts: {
      numbers: numbersOf(all),
      two: choice(all, ({ two }) => two),
      dozen: choice(all, ({ dozen }) => dozen),
      halfDozen: choice(all, ({ halfDozen }) => halfDozen),
      packs: pooled(({ packs }) => packs),
      of: pooled(({ of }) => of),
      pieces: pooled(({ pieces }) => pieces),
      holders: pooled(({ holders }) => holders),
      quantity: pooled(({ quantity }) => quantity),
      inOne: pooled(({ inOne }) => inOne),
      plural: all.map(({ wording }) => wording.plural).join("|"),
    },
    joiners: all.flatMap(({ wording, has }) => listed(wording.joiners).filter(has)),
    noColours: new Set(
      all.flatMap(({ wording, has }) =>
        listed(`${wording.noColours}, ${wording.joiners}, ${Object.keys(wording.numbers).join(", ")}`).filter(
          has,
        ),
      ),
    ),
    size: choice(all, ({ size }) => size),
    label: choice(all, ({ label }) => label),
  };
}

/** What each language reads lines by. */
export const vocabularies: InEvery<Vocabulary> = { en: vocabularyOf("en"), sv: vocabularyOf("sv") };

/** What may stand between a number and its sheets, and what sheets and inches are called. */
export const looseWords = pooled(({ loose }) => loose);
export const sheetWords = pooled(({ sheets }) => sheets);
export const inchWords = pooled(({ inch }) => inch);
