import { type Language, languages } from "../../engine/record/index.ts";
import { keepLanguage, language } from "../../store/index.ts";

/** Each language in its own words, for those who read no other: its name, and the offer of it. */
const own: Readonly<Record<Language, Readonly<{ name: string; offer: string }>>> = {
  en: { name: "English", offer: "In English" },
  sv: { name: "svenska", offer: "På svenska" },
};

/** Every language by its own name. */
export const allLanguages = languages.map((code) => ({ code, ...own[code] }));

/** The languages that the page is not in. */
export const otherLanguages = allLanguages.filter(({ code }) => code !== language);

/**
 * Words are chosen before the page is drawn, so another language draws it anew. Nothing is lost by it: each act is
 * kept as it is done.
 */
export function speak(wanted: Language): void {
  if (keepLanguage(wanted)) location.reload();
}
