import { type Language, languages } from "../engine/record/index.ts";

/**
 * What this device is set to, beside the notebook itself: kept in localStorage, so that it is known before the
 * first word is drawn, and never part of a backup.
 */
const place = (name: string): string => `understudy.${name}`;

/** What is kept under a name, or null; storage that is shut off keeps nothing. */
function read(name: string): string | null {
  try {
    return localStorage.getItem(place(name));
  } catch {
    return null;
  }
}

/** @returns whether it is kept; where storage is shut off the choice lasts until the tab is closed */
function keep(name: string, value: string | null): boolean {
  try {
    if (value === null) localStorage.removeItem(place(name));
    else localStorage.setItem(place(name), value);
    return true;
  } catch {
    return false;
  }
}

const isLanguage = (text: string | null): text is Language => languages.some((known) => known === text);

/** The first language of the reader's own list that is spoken here; English where none is. */
export function firstSpoken(wanted: readonly string[]): Language {
  const spoken = wanted.map((tag) => tag.toLowerCase().split("-", 1)[0] ?? "").find(isLanguage);
  return spoken ?? "en";
}

function chosenLanguage(): Language {
  const kept = read("language");
  return isLanguage(kept) ? kept : firstSpoken(globalThis.navigator?.languages ?? []);
}

/** The language that words are in, from the start of the page to its end: a change of it loads the page anew. */
export const language: Language = chosenLanguage();

/** Keeps the language for the next time the page is loaded. */
export const keepLanguage = (wanted: Language): boolean => keep("language", wanted);

/** The locale that numbers, money and dates are to be written for, or null for the browser's own. */
export const chosenLocale = (): string | null => read("locale");

/** Keeps the locale of numbers and dates for the next time the page is loaded; null for the browser's own. */
export const keepLocale = (wanted: string | null): boolean => keep("locale", wanted);

/** Whether single-key shortcuts are on, as this device was last told. */
export const areKeysOn = (): boolean => read("single-keys") !== "off";

/** Keeps whether single-key shortcuts are on. */
export const keepKeysOn = (on: boolean): boolean => keep("single-keys", on ? "on" : "off");
