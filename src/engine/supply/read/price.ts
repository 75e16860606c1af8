import { prices } from "./aside.ts";
import { matches, type Span } from "./phrase.ts";
import { type Found, found } from "./piece.ts";
import type { Says } from "./says/index.ts";

/**
 * A price as a line gives it: a plain decimal and the sign beside it. A sign may stand for several currencies ("kr",
 * "$"), and whoever wrote the line may mean another than whoever reads it: which one, a person says.
 */
export type WrittenPrice = Readonly<{ amount: string; sign: string }>;

const figure = /\d+(?:[ .,’]\d{3})*(?:[.,]\d{1,2})?/u;

/** The amount as decimal text; null for "1,500", which is one and a half to some and fifteen hundred to others. */
function amountOf(written: string): string | null {
  if (/^\d{1,3}[.,]\d{3}$/.test(written)) return null;
  const cents = /[.,](\d{1,2})$/.exec(written)?.[1];
  const whole = (cents ? written.slice(0, -cents.length - 1) : written).replace(/[ .,’]/gu, "");
  return cents ? `${whole}.${cents}` : whole;
}

/** "69:-" is in crowns without saying so: common practice, no source. */
const signOf = (written: string): string => {
  const sign = written.replace(figure, "").replace(/[\s.:,-]/g, "");
  return sign === "" ? "kr" : sign;
};

function readOne(match: RegExpExecArray, says: Says): Found | null {
  const written = figure.exec(match[0])?.[0];
  const amount = written ? amountOf(written) : null;
  if (amount === null) return null;
  const price: WrittenPrice = { amount, sign: signOf(match[0]) };
  return found(match, "price", price, says.price(match[0].trim()));
}

/** The price that a line gives; of two prices nobody knows which is the one, so that both stay in the name. */
export function readPrice(text: string, says: Says, taken: readonly Span[]): Found | null {
  const all = matches(text, prices, taken);
  const [first] = all;
  return first && all.length === 1 ? readOne(first, says) : null;
}

/** The value of a piece that is a price. */
export const isPrice = (value: unknown): value is WrittenPrice =>
  typeof value === "object" && value !== null && "amount" in value && "sign" in value;
