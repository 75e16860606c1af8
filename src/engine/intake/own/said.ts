import { type Language, languages } from "../../record/index.ts";
import { families, traitsByFamily, valueWord } from "../../supply/index.ts";
import { ownWordsIn } from "../words/index.ts";
import type { Codec, Speech } from "./written.ts";

type Words<T> = readonly (readonly [value: T, word: string])[];

const folded = (word: string): string => word.trim().toLowerCase();

/**
 * What words stand for in a list of each language: by that language first, since one language's word may be another's
 * for something else ("block"), then by any, then as the workbook has it.
 */
function meanings<T>(
  wordsOf: (language: Language) => Words<T>,
  raw: Words<T>,
): (written: string, speech: Speech) => T | undefined {
  const byLanguage = new Map(
    languages.map((language) => {
      const all = [
        ...raw.toReversed(),
        ...languages.flatMap(wordsOf).toReversed(),
        ...wordsOf(language).toReversed(),
      ];
      return [language, new Map(all.map(([value, word]) => [folded(word), value]))] as const; // the last one said stays
    }),
  );
  return (written, { language }) => byLanguage.get(language)?.get(folded(written));
}

export const yesNo: Codec = {
  write: (value, { language }) => ownWordsIn[language][value === true ? "yes" : "no"],
  read: meanings<boolean>(
    (language) => [
      [true, ownWordsIn[language].yes],
      [false, ownWordsIn[language].no],
    ],
    [
      [true, "true"],
      [false, "false"],
    ],
  ),
};

/** Words of a table of ours, which may also be written as the workbook has them. */
function tableCodec(key: "families" | "states" | "from"): Codec {
  const words = new Map(
    languages.map((language) => [language, new Map(Object.entries(ownWordsIn[language][key]))]),
  );
  return {
    write: (value, { language }) => words.get(language)?.get(String(value)) ?? null,
    read: meanings<string>(
      (language) => [...(words.get(language) ?? [])],
      Object.keys(ownWordsIn.en[key]).map((value) => [value, value]),
    ),
  };
}

export const familyWord = tableCodec("families");
export const stateWord = tableCodec("states");
export const fromWord = tableCodec("from");

/** What is looked at in a schema: its words, and what it wraps. */
type Definition = Readonly<{
  entries?: Readonly<Record<string, string>>;
  innerType?: Schema;
  element?: Schema;
}>;
type Schema = Readonly<{ _zod: Readonly<{ def: Definition }> }>;

/** The words that a trait may have, read off its schema; none where it is no trait of words. */
function valuesOf({ _zod: { def } }: Schema): readonly string[] {
  const inner = def.innerType ?? def.element;
  return inner ? valuesOf(inner) : Object.values(def.entries ?? {});
}

/** What the words of each family's traits stand for. */
const traits = new Map(
  families.flatMap((family) =>
    // zod's own types do not tell what a schema is made of; its documented `_zod.def` does.
    (Object.entries(traitsByFamily[family]) as unknown as readonly [string, Schema][]).map(
      ([trait, schema]) => {
        const values = valuesOf(schema);
        const words = (language: Language) =>
          values.map((value) => [value, valueWord(family, trait, value, language)] as const);
        return [
          `${family} ${trait}`,
          meanings<string>(
            words,
            values.map((value) => [value, value]),
          ),
        ] as const;
      },
    ),
  ),
);

const readWord = (trait: string, written: string, speech: Speech): string | undefined =>
  traits.get(`${speech.family} ${trait}`)?.(written, speech);

/** A trait of words, in the words that screens have for them. */
export const traitWord = (trait: string): Codec => ({
  write: (value, { family, language }) => valueWord(family, trait, String(value), language),
  read: (written, speech) => readWord(trait, written, speech),
});

export const traitWords = (trait: string): Codec => ({
  write: (value, { family, language }) =>
    (value as readonly string[]).map((one) => valueWord(family, trait, one, language)).join("; "), // the schema's list
  read: (written, speech) => {
    const all = written.split(";").map((part) => readWord(trait, part, speech));
    return all.every((one) => one !== undefined) ? all : undefined;
  },
});
