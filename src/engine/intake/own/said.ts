import { type Language, languages } from "../../record/index.ts";
import { families, traitsByFamily, valueWord } from "../../supply/index.ts";
import { ownWordsIn } from "../words/index.ts";
import type { Codec, Speech } from "./written.ts";

type Words<T> = readonly (readonly [value: T, word: string])[];

/**
 * The value that a word stands for: in the list's language first, since one language's word may be another's for
 * something else ("block"), then in any, then as the workbook has it.
 */
function stoodFor<T>(
  written: string,
  { language }: Speech,
  wordsOf: (language: Language) => Words<T>,
  raw: Words<T> = [],
): T | undefined {
  const said = written.trim().toLowerCase();
  const tries = [wordsOf(language), ...languages.map(wordsOf), raw];
  return tries.flat().find(([, word]) => word.toLowerCase() === said)?.[0];
}

export const yesNo: Codec = {
  write: (value, { language }) => ownWordsIn[language][value === true ? "yes" : "no"],
  read: (written, speech) =>
    stoodFor(
      written,
      speech,
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
const tableCodec = (key: "families" | "states" | "from"): Codec => ({
  write: (value, { language }) =>
    new Map(Object.entries(ownWordsIn[language][key])).get(String(value)) ?? null,
  read: (written, speech) =>
    stoodFor(
      written,
      speech,
      (language) => Object.entries(ownWordsIn[language][key]),
      Object.keys(ownWordsIn.en[key]).map((value) => [value, value]),
    ),
});

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

/** Every word of every family's traits. */
const values: ReadonlyMap<string, readonly string[]> = new Map(
  families.flatMap((family) =>
    // zod's own types do not tell what a schema is made of; its documented `_zod.def` does.
    (Object.entries(traitsByFamily[family]) as unknown as readonly [string, Schema][]).map(
      ([trait, schema]) => [`${family} ${trait}`, valuesOf(schema)] as const,
    ),
  ),
);

function readWord(trait: string, written: string, speech: Speech): string | undefined {
  const { family } = speech;
  const known = values.get(`${family} ${trait}`) ?? [];
  return stoodFor(
    written,
    speech,
    (language) => known.map((value) => [value, valueWord(family, trait, value, language)]),
    known.map((value) => [value, value]),
  );
}

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
