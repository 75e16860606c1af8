/**
 * Money: currencies, exact amounts, dated exchange rates, rounding, sharing out.
 *
 * Units    decimal text at the edges (`Money`); fractions of exact decimals inside (`Exact`), rounded once,
 *          half away from zero, where a figure is printed or charged (`printed`).
 * Sources  ISO 4217 (minor units); Council Regulation (EC) No 1103/97 (converting through a base);
 *          Balinski & Young 1982 (largest remainder).
 * Not here What a thing costs: `price/`.
 */
export * from "./checked.ts";
export * from "./convert.ts";
export * from "./currencies.ts";
export { Decimal, roundMinor } from "./decimal.ts";
export * from "./exact.ts";
export * from "./format.ts";
export * from "./rates.ts";
export * from "./reference-rates.ts";
export * from "./schema.ts";
export * from "./share.ts";
export * from "./signs.ts";
export * from "./sum.ts";
