import type { Language } from "../record/index.ts";
import type { Family } from "./traits.ts";
import { wordsIn } from "./words/index.ts";

const own = <T>(table: Readonly<Partial<Record<string, T>>> | undefined, key: string): T | undefined =>
  table && Object.hasOwn(table, key) ? table[key] : undefined;

/** A trait's value as people say it: "semi-opaque", "täckande". What has no word of ours comes as it is. */
export const valueWord = (family: Family, trait: string, value: string, language: Language = "en"): string =>
  own(own(own(wordsIn[language].values, family), trait), value) ?? value;
