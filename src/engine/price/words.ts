import { Decimal, plainMoney, type RateUse } from "../money/index.ts";
import type { Scene } from "./book.ts";
import type { PackUse, Quote, Source } from "./trace.ts";

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** A date in plain words: "20 Apr 2026". */
export function plainDate(date: string): string {
  const [year, month, day] = date.split("-");
  return `${Number(day)} ${months[Number(month) - 1] ?? month} ${year}`;
}

/** The rates as the table wrote them, none worked out: "1 EUR = 11.0250 SEK of 31 Mar 2026". */
function rateWords(rate: RateUse): string {
  const sides = [
    { code: rate.from, quote: rate.fromQuote },
    { code: rate.to, quote: rate.toQuote },
  ].filter((side) => side.code !== rate.base);
  const quotes = sides.map((side) => `${side.quote} ${side.code}`).join(" = ");
  return `1 ${rate.base} = ${quotes} of ${plainDate(rate.date)}`;
}

/** A fraction in plain words: "0.25" is "25 %". */
const percent = (fraction: string): string => `${new Decimal(fraction).times(100).toFixed()} %`;

const taxWords = (source: Source): string =>
  new Decimal(source.plusTax).isZero() ? "" : `, with ${percent(source.plusTax)} tax added`;

const conversionWords = (source: Source): string =>
  source.rate ? `, converted at ${rateWords(source.rate)}` : "";

const dayWords = (source: Source): string => (source.date ? ` on ${plainDate(source.date)}` : "");

/** What was quoted and what was done to it: "EUR 5.40 on 20 Apr 2026, converted at …". */
const sourceWords = (source: Source): string =>
  `${plainMoney(source.quoted)}${dayWords(source)}${taxWords(source)}${conversionWords(source)}`;

/** Where a price was found: "here", "in Ireland", or "elsewhere" where nobody noted it. */
function whereWords(scene: Scene, market: string | null): string {
  if (market === scene.market.id) return "here";
  const name = (scene.book.markets ?? []).find((other) => other.id === market)?.name;
  return name ? `in ${name}` : "elsewhere";
}

const shopName = (scene: Scene, id: string | null): string | undefined =>
  (scene.book.shops ?? []).find((shop) => shop.id === id)?.name;

export const listWords = (scene: Scene, { source }: Quote): string =>
  `List price ${whereWords(scene, source.market)}, ${sourceWords(source)}`;

export const cardWords = ({ source }: Quote): string => `The kit's own card says ${sourceWords(source)}`;

/** `more` tells whether a shop reduced the price from a usual one. */
export function shopWords(scene: Scene, { source }: Quote, more: string): string {
  const shop = shopName(scene, source.shop);
  const at = shop ? ` at ${shop}` : "";
  return `Lowest shop price ${whereWords(scene, source.market)}${at}, ${sourceWords(source)}${more}`;
}

const areaUnit = "mm²";
const packWords = ({ unit, line, pack }: PackUse): string =>
  unit === areaUnit
    ? `${new Decimal(line).div(pack).toSignificantDigits(4).toString()} times its paper`
    : `${line} of its ${pack} ${unit}`;

const otherPackWords = (scene: Scene, { source }: Quote): string =>
  `From another pack ${whereWords(scene, source.market)}, ${sourceWords(source)}`;

const forWords = ({ source }: Quote): string => (source.pack ? ` for ${packWords(source.pack)}` : "");

export const proportionWords = (scene: Scene, quote: Quote): string =>
  `${otherPackWords(scene, quote)}, in proportion${forWords(quote)}; small packs usually cost more`;

export const fittedWords = (scene: Scene, quote: Quote, points: number): string =>
  `${otherPackWords(scene, quote)}, scaled${forWords(quote)} the way ${points} prices of such supplies grow ` +
  `with size, to the power of ${new Decimal(quote.source.pack?.exponent ?? 1).toFixed(2)}`;

export const precedentWords = (count: number, low: string, high: string): string =>
  count === 1
    ? `What an earlier kit's list said, ${low}`
    : `What earlier kits' lists said, halfway from ${low} to ${high} over ${count} prices`;

export const guessWords = ({ source }: Quote, range: string): string =>
  `A guess, ${sourceWords(source)}${range}`;

export const settledWords = (scene: Scene, { source }: Quote): string => {
  const where = source.market === scene.market.id ? "here" : "in every market";
  const why = source.source ? `, because: ${source.source.replace(/[.\s]+$/, "")}` : "";
  return `The price gone with ${where}, ${plainMoney(source.quoted)}${conversionWords(source)}${why}`;
};

/** Makes an estimate's words a part of a longer sentence. */
export const inside = (words: string): string => words.slice(0, 1).toLowerCase() + words.slice(1);
