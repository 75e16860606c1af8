import type { Language } from "../record/index.ts";
import type { Family } from "../supply/index.ts";
import { wordsIn } from "./words/index.ts";

/** A trait as it is said on screen: "kind of ink" for `base`. What has no word of ours comes back as it is. */
export function traitLabel(trait: string, language: Language = "en"): string {
  const traits: Readonly<Record<string, string>> = wordsIn[language].traits;
  return (Object.hasOwn(traits, trait) ? traits[trait] : null) ?? trait;
}

/** A family with its article: "a marker". */
export const familyLabel = (family: Family, language: Language = "en"): string =>
  wordsIn[language].families[family];
