import { Decimal as Shared } from "decimal.js";
import { minorDigits } from "./currencies.ts";

/** 40 digits, half away from zero. Our own constructor: `Decimal.set` would change everybody's. */
export const Decimal = Shared.clone({ precision: 40, rounding: Shared.ROUND_HALF_UP });
export type Decimal = Shared;

/**
 * The same, with room for the products of a whole sum: what is multiplied out before the one division
 * keeps every digit, so that an exact half is still one when it is rounded.
 */
export const Wide = Shared.clone({ precision: 240, rounding: Shared.ROUND_HALF_UP });

/** `amount` at the minor unit of `currency`, half away from zero: EUR 1.005 is 1.01, −1.005 is −1.01. */
export const roundMinor = (amount: Decimal, currency: string): Decimal =>
  amount.toDecimalPlaces(minorDigits(currency), Shared.ROUND_HALF_UP);

/** Decimal text with at least the decimals of the minor unit, and more only where they were given. */
export const amountText = (amount: Decimal, currency: string): string =>
  amount.toFixed(Math.max(minorDigits(currency), amount.decimalPlaces()));
