import type { InEvery, Language } from "../../record/index.ts";
import { type Says, says } from "./says/index.ts";
import { type Vocabulary, vocabularies } from "./vocabulary.ts";

/** The language that a line is read in: the words it is read by, and those that say what was read. */
export type Voice = Readonly<{ language: Language; words: Vocabulary; says: Says }>;

export const voices: InEvery<Voice> = {
  en: { language: "en", words: vocabularies.en, says: says.en },
  sv: { language: "sv", words: vocabularies.sv, says: says.sv },
};
