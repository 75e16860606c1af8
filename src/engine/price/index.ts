/**
 * Price: from dated prices found to one estimate per line, market and kind (list, street), with its range
 * and how it came about.
 *
 * Units    per unit of a line, in the market's currency, rounded to its minor unit; taxes are fractions.
 * Sources  the order of trust is the project's own rule.
 * Not here Totals, tiers and borders: `worth/`. Exchange: `money/`.
 */
export {
  kitPlace,
  marketOf,
  type PriceBook,
  type PricedKit,
  type PriceMarket,
  valuedOnOf,
} from "./book.ts";
export * from "./estimate.ts";
export * from "./offer.ts";
export { plainDate } from "./say.ts";
export * from "./schema.ts";
export * from "./trace.ts";
