import { language } from "../../../store/index.ts";
import { formatter, localeFor } from "../../words/format.ts";
import { keepSafeWords } from "../../words/keep-safe.ts";

const words = keepSafeWords.device;

/** The locales on offer by name; any that the browser knows can be the reader's own. */
const offered = ["en-GB", "en-US", "sv-SE", "de-DE", "ja-JP"] as const;

const example = { amount: "1234.50", currency: "EUR" };

/** How a locale writes an amount and a day: "1 234,50 EUR, 30 apr. 2026". */
function sampleOf(locale: string | undefined): string {
  const format = formatter(locale);
  return `${format.money(example)}, ${format.date("2026-04-30")}`;
}

/** The ways to write numbers and dates, each with what it looks like; a choice that is kept stays among them. */
export function localeOptions(chosen: string | null) {
  const browser = localeFor(null, globalThis.navigator?.language, language);
  const others =
    chosen === null || offered.some((known) => known === chosen) ? offered : [...offered, chosen];
  return [
    { value: "", label: words.asBrowser(sampleOf(browser)) },
    ...others.map((value) => ({ value, label: `${nameOf(value)}: ${sampleOf(value)}` })),
  ];
}

function nameOf(locale: string): string {
  return new Intl.DisplayNames([language], { type: "language" }).of(locale) ?? locale;
}
