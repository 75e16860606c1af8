import {
  convert,
  dividedBy,
  type Exact,
  exact,
  type Money,
  plusTax,
  printed,
  times,
} from "../money/index.ts";
import { type Outcome, ok } from "../record/index.ts";
import { type Choice, type Found, reference, type Scene } from "./book.ts";
import { type Ratio, ratioOf } from "./quantity.ts";
import type { Draft, Method, Quote, Source } from "./trace.ts";

/** What is known of a price before it is converted. */
type Asked = Readonly<{
  money: Money;
  about: Pick<Source, "evidence" | "date" | "market" | "shop" | "source">;
  plusTax: string;
  sizing: Sizing | null;
  place: string;
}>;

/** The line's quantity beside the one bought, and the power of it that the price goes by: 1 in proportion. */
type Sizing = Readonly<{ ratio: Ratio; exponent: number }>;

const packUse = (sizing: Sizing | null): Source["pack"] => {
  if (!sizing || sizing.ratio.line.eq(sizing.ratio.pack)) return null;
  const { unit, line, pack } = sizing.ratio;
  return { unit, line: line.toFixed(), pack: pack.toFixed(), exponent: sizing.exponent };
};

/** In proportion nothing is divided early; a power is worked out to 40 digits. */
const sizedBy = (amount: Exact, { ratio, exponent }: Sizing): Exact =>
  exponent === 1
    ? dividedBy(times(amount, ratio.line), ratio.pack)
    : times(amount, ratio.line.div(ratio.pack).pow(exponent));

/** Tax first, then the quantity, then the currency. */
function quote(scene: Scene, asked: Asked): Outcome<Quote> {
  const taxed = plusTax(exact(asked.money), asked.plusTax);
  const { sizing } = asked;
  const sized = sizing ? sizedBy(taxed, sizing) : taxed;
  const exchange = { rates: scene.book.rates ?? [], on: scene.valuedOn, place: asked.place };
  const converted = convert(sized, scene.market.currency, exchange);
  if (!converted.ok) return converted;
  const { amount, rate } = converted.value;
  const source: Source = {
    ...asked.about,
    of: reference(scene.kit, scene.line),
    quoted: asked.money,
    plusTax: asked.plusTax,
    pack: packUse(sizing),
    rate,
    comesTo: printed(amount),
  };
  return ok({ amount, source });
}

/** The market a price was found in: its own field, else that of its shop; null where neither says. */
export function marketOfFound(scene: Scene, found: Found): string | null {
  const { market, shop } = found.evidence;
  if (market) return market;
  return (scene.book.shops ?? []).find((other) => other.id === shop)?.market ?? null;
}

/** Where a price found stands in the workbook. A precedent's own price is the fault of who names it. */
export const foundPlace = (scene: Scene, found: Found): string =>
  scene.path.length > 1 ? scene.place : `${scene.place}.evidence[${found.index}]`;

/** What a price found asks, apart from its quantity. */
function askedOf(scene: Scene, found: Found, money: Money): Omit<Asked, "sizing"> {
  const { id, date, shop, source, plusTax: tax } = found.evidence;
  const about = {
    evidence: id,
    date: date ?? null,
    market: marketOfFound(scene, found),
    shop: shop ?? null,
    source: source ?? null,
  };
  return { money, about, plusTax: tax ?? "0", place: foundPlace(scene, found) };
}

/**
 * A price found, or another amount of the same observation (the low of a guess), in the market's currency,
 * scaled by a power of the ratio of the quantities: in proportion unless said.
 */
export function quoteFound(scene: Scene, found: Found, money: Money, exponent = 1): Outcome<Quote> {
  const ratio = ratioOf(found.evidence.pack, scene.line.supply);
  return quote(scene, { ...askedOf(scene, found, money), sizing: ratio && { ratio, exponent } });
}

/** A price settled by hand, in the market's currency. */
export function quoteSettled(scene: Scene, choice: Choice, money: Money): Outcome<Quote> {
  const { market, reason } = choice.settled;
  const about = { evidence: null, date: null, market: market ?? null, shop: null, source: reason ?? null };
  const place = scene.path.length > 1 ? scene.place : `${scene.place}.settled[${choice.index}].price`;
  return quote(scene, { money, about, plusTax: "0", sizing: null, place });
}

/** An estimate without a range, resting on one price. */
export const draftOf = (quoted: Quote, method: Method, words: string): Draft => ({
  likely: quoted.amount,
  low: quoted.amount,
  high: quoted.amount,
  method,
  words,
  trace: { chosen: false, reason: null, sources: [quoted.source] },
});
