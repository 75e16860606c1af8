import { exact, nought, plus, printed, times } from "./exact.ts";
import type { Money } from "./schema.ts";

/**
 * The sum of printed figures, itself printed.
 * @throws RangeError when one of them is in another currency
 */
export const sumMoney = (currency: string, amounts: readonly Money[]): Money =>
  printed(amounts.map(exact).reduce(plus, nought(currency)));

/** One printed figure less another. @throws RangeError for two currencies */
export const difference = (a: Money, b: Money): Money => printed(plus(exact(a), times(exact(b), -1)));

/** A printed figure times a whole number, such as a quantity. */
export const multiple = (money: Money, count: number): Money => printed(times(exact(money), count));
