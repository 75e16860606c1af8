/**
 * Worth: what a kit's contents come to beside what a kit of each tier costs, market by market.
 *
 * Units    printed money in the market's currency; every total is the sum of printed lines. Ratios are text
 *          with two decimals.
 * Sources  Council Directive 2006/112/EC, Articles 85 and 86, for how tax stacks on duty and postage. Rates,
 *          thresholds and reliefs are a person's own data with a date and a place, never constants here.
 * Not here What one line costs: `price/`.
 */
export * from "./beside.ts";
export { reportedMarkets, type WorthBook } from "./book.ts";
export type { BorderWhy } from "./border.ts";
export type { CostPart, CostWhy } from "./cost.ts";
export * from "./figures.ts";
export * from "./schema.ts";
export { wantedOf } from "./totals.ts";
export { judgeWanted, wantedRange } from "./wanted.ts";
export * from "./worth.ts";
