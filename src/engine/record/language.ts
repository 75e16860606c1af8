/** The languages that the engine and the screens speak. English is the terminal's, and comes first. */
export const languages = ["en", "sv"] as const;

/** A language by its BCP 47 code. */
export type Language = (typeof languages)[number];

/** A text, or a set of texts, in every language. */
export type InEvery<T> = Readonly<Record<Language, T>>;

/** Decimal text with the language's decimal sign: "5.40" is "5,40" in Swedish. Digits stay as they are, ungrouped. */
export const figureIn = (text: string, language: Language): string =>
  language === "sv" ? text.replace(".", ",") : text;
