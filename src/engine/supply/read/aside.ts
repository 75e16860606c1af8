import type { InEvery } from "../../record/index.ts";
import { amount } from "./amount.ts";
import { matches, type Span } from "./phrase.ts";
import type { Run } from "./rest.ts";
import { vocabularies } from "./vocabulary.ts";
import type { Voice } from "./voice.ts";

/** Money as lists write it. Only codes that are no word of the trade: "PEN" is a currency too. */
const currency = "[€$£¥₩₹]|kr|zł|EUR|USD|GBP|SEK|NOK|DKK|ISK|JPY|CHF|CAD|AUD|NZD|PLN|CZK|KWD";
const price = "\\d{1,3}(?:[ .,’]\\d{3})+(?:[.,]\\d{1,2})?|\\d+(?:[.,]\\d{1,2})?";
const edge = "(?![\\p{L}\\p{N}])";

export const prices = new RegExp(
  [
    `(?<![\\p{L}\\p{N}])(?:${currency})\\.?\\s?(?:${price})(?:[:,.]-)?${edge}`,
    `(?<![\\p{L}\\p{N}])(?<!\\p{N}[.,])(?:${price})(?:[:,.]-|\\s?(?:${currency})${edge}\\.?)`,
  ].join("|"),
  "gu",
);

/** A number of a brush's size or a code: what it measures, each maker settles alone. Common practice, no source. */
const numbered = (size: string): RegExp =>
  new RegExp(
    `(?<![\\p{L}\\p{N}])(?:(?:${size})\\.?\\s*:?\\s*|[#№]\\s?(?=\\d{1,3}(?!\\p{L}|\\p{N})))\\d{1,4}(?:/\\d)?${edge}(?!\\s*(?:[x×]|[.,]\\d|mm|cm|in(?:ch)?${edge}|tum|ml|gsm|g${edge}|["”″]))`,
    "giu",
  );

const numbers: InEvery<RegExp> = {
  en: numbered(vocabularies.en.size),
  sv: numbered(vocabularies.sv.size),
};

const unit =
  "mm|cm|dm|m|km|inches|inch|in(?!\\s+[\\p{L}\\d])|tum|ft|feet|yd|yards?|ml|cl|l|fl\\.?\\s?oz|oz|g|gr|kg|lbs?|cm2|m2|m²|%";
const measured = `${amount}\\s?-?(?:(?:${unit})${edge}|["”″](?!\\p{L}))`;

/** Measures that the thing at hand has no field for: the length of a tape, the width of a marker. */
const measures = new RegExp(
  `(?<![\\p{L}\\p{N}])(?:(?:${amount}\\s*(?:${unit})?["”″]?\\s*[x×*]\\s*)?${measured}(?:\\s*[x×*]\\s*${measured})*|${amount}\\s*[x×]\\s*${amount}${edge}|\\d+[.,]\\d+\\s*[x×]\\s*${amount}${edge})`,
  "giu",
);

/** Figures that are none of the line's measures or counts, before anything else is read: prices and sizes by number. */
export const figuresAside = (text: string, { language }: Voice): readonly Span[] =>
  [prices, numbers[language]].flatMap((pattern) => spans(text, pattern, []));

/** Measures left over once all that the thing has a field for have been read. */
export const measuresAside = (text: string, taken: readonly Span[]): readonly Span[] =>
  spans(text, measures, taken);

const spans = (text: string, pattern: RegExp, taken: readonly Span[]): readonly Span[] =>
  matches(text, pattern, taken).map(({ index, 0: { length } }) => ({ start: index, end: index + length }));

/** A stretch set aside, as it stands in the line. */
export const runOf = (text: string, { start, end }: Span): Run => ({
  start,
  end,
  text: text.slice(start, end),
});
