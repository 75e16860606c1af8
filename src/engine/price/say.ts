import { Decimal, type Exact, type Money, plainMoney, printed, type RateUse } from "../money/index.ts";
import { figureIn, type Language } from "../record/index.ts";
import type { Scene } from "./book.ts";
import type { PackUse, Quote, Source } from "./trace.ts";
import { wordsIn } from "./words/index.ts";

/** A date in plain words: "20 Apr 2026", "20 apr. 2026". */
export function plainDate(date: string, language: Language = "en"): string {
  const [year = "", month = "", day = ""] = date.split("-");
  return wordsIn[language].date(year, month, Number(day));
}

const wordsOf = ({ language }: Scene) => wordsIn[language];

/** The rates as the table wrote them, none worked out: "1 EUR = 11.0250 SEK of 31 Mar 2026". */
function rateWords(rate: RateUse, language: Language): string {
  const sides = [
    { code: rate.from, quote: rate.fromQuote },
    { code: rate.to, quote: rate.toQuote },
  ].filter((side) => side.code !== rate.base);
  const quotes = sides.map((side) => `${figureIn(side.quote, language)} ${side.code}`);
  return wordsIn[language].rate(rate.base, quotes, plainDate(rate.date, language));
}

/** A fraction in plain words: "0.25" is "25 %"; null for none. */
function percent(fraction: string, language: Language): string | null {
  const share = new Decimal(fraction);
  return share.isZero() ? null : `${figureIn(share.times(100).toFixed(), language)} %`;
}

/** What was quoted and what was done to it: "EUR 5.40 on 20 Apr 2026, converted at …". */
function sourceWords({ language }: Scene, { quoted, date, plusTax, rate }: Source): string {
  return wordsIn[language].source(
    plainMoney(quoted, language),
    date && plainDate(date, language),
    percent(plusTax, language),
    rate && rateWords(rate, language),
  );
}

/** Where a price was found: "here", "in Ireland", or "elsewhere" where nobody noted it. */
function whereWords(scene: Scene, market: string | null): string {
  const words = wordsOf(scene);
  if (market === scene.market.id) return words.here;
  const name = (scene.book.markets ?? []).find((other) => other.id === market)?.name;
  return name ? words.inMarket(name) : words.elsewhere;
}

const shopName = (scene: Scene, id: string | null): string | null =>
  (scene.book.shops ?? []).find((shop) => shop.id === id)?.name ?? null;

export const listWords = (scene: Scene, { source }: Quote): string =>
  wordsOf(scene).list(whereWords(scene, source.market), sourceWords(scene, source));

export const cardWords = (scene: Scene, { source }: Quote): string =>
  wordsOf(scene).card(sourceWords(scene, source));

/** @param reducedFrom the usual price that a shop says it has reduced */
export function shopWords(scene: Scene, { source }: Quote, reducedFrom: Money | null | undefined): string {
  const words = wordsOf(scene);
  const where = whereWords(scene, source.market);
  const price = words.shop(where, shopName(scene, source.shop), sourceWords(scene, source));
  return reducedFrom ? price + words.reduced(plainMoney(reducedFrom, scene.language)) : price;
}

/** The list estimate's words, where it stands in for a shop price. */
export const standInWords = (scene: Scene, list: string): string => wordsOf(scene).listStandsIn(inside(list));

const otherPackWords = (scene: Scene, { source }: Quote): string =>
  wordsOf(scene).otherPack(whereWords(scene, source.market), sourceWords(scene, source));

/** " for 15 of its 60 ml", " for 0.25 times its paper". */
function quantityWords(scene: Scene, { unit, line, pack }: PackUse): string {
  const figure = (text: string): string => figureIn(text, scene.language);
  return unit === "mm²"
    ? wordsOf(scene).times(figure(new Decimal(line).div(pack).toSignificantDigits(4).toString()))
    : wordsOf(scene).part(figure(line), figure(pack), unit);
}

const forWords = (scene: Scene, { source }: Quote): string =>
  source.pack ? quantityWords(scene, source.pack) : "";

export const proportionWords = (scene: Scene, quote: Quote): string =>
  wordsOf(scene).proportion(otherPackWords(scene, quote), forWords(scene, quote));

export function fittedWords(scene: Scene, quote: Quote, points: number): string {
  const power = figureIn(new Decimal(quote.source.pack?.exponent ?? 1).toFixed(2), scene.language);
  return wordsOf(scene).fitted(otherPackWords(scene, quote), forWords(scene, quote), points, power);
}

const printedWords = ({ language }: Scene, amount: Exact): string => plainMoney(printed(amount), language);

/** ", between SEK 40.00 and SEK 50.00"; nothing where the two are printed alike. */
export function rangeWords(scene: Scene, low: Exact, high: Exact): string {
  const [least, greatest] = [printedWords(scene, low), printedWords(scene, high)];
  return least === greatest ? "" : wordsOf(scene).between(least, greatest);
}

export function precedentWords(scene: Scene, count: number, low: Exact, high: Exact): string {
  const [least, greatest] = [printedWords(scene, low), printedWords(scene, high)];
  return count === 1 ? wordsOf(scene).precedent(least) : wordsOf(scene).precedents(least, greatest, count);
}

export const guessWords = (scene: Scene, { source }: Quote): string =>
  wordsOf(scene).guess(sourceWords(scene, source));

/** A person's reason as the end of a sentence, without its own full stop; null where there is none. */
const reasonWords = (reason: string | null): string | null => reason?.replace(/[.\s]+$/, "") ?? null;

export function settledWords(scene: Scene, { source }: Quote): string {
  const words = wordsOf(scene);
  const where = source.market === scene.market.id ? words.here : words.everywhere;
  const price = words.source(
    plainMoney(source.quoted, scene.language),
    null,
    null,
    source.rate && rateWords(source.rate, scene.language),
  );
  return words.settled(where, price, reasonWords(source.source));
}

/** An estimate's words, where a person went with its method. */
export const byHandWords = (scene: Scene, words: string, reason: string | null): string =>
  wordsOf(scene).byHand(words, reasonWords(reason));

/** Makes an estimate's words a part of a longer sentence. */
const inside = (words: string): string => words.slice(0, 1).toLowerCase() + words.slice(1);
