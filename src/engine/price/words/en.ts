import type { Ratio } from "../quantity.ts";

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

type Unit = Exclude<Ratio["unit"], "mm²">;

/** How a price came about, in English, without the full stop. `source` is what `source` below puts together. */
export const priceWords = {
  date: (year: string, month: string, day: number) => `${day} ${months[Number(month) - 1] ?? month} ${year}`,
  rate: (base: string, quotes: readonly string[], day: string) =>
    `1 ${base} = ${quotes.join(" = ")} of ${day}`,

  here: "here",
  inMarket: (name: string) => `in ${name}`,
  elsewhere: "elsewhere",
  everywhere: "in every market",

  /** What was quoted and what was done to it. */
  source: (price: string, day: string | null, tax: string | null, rate: string | null) =>
    [
      day ? `${price} on ${day}` : price,
      ...(tax ? [`with ${tax} tax added`] : []),
      ...(rate ? [`converted at ${rate}`] : []),
    ].join(", "),

  list: (where: string, source: string) => `List price ${where}, ${source}`,
  card: (source: string) => `The kit's own card says ${source}`,
  shop: (where: string, shop: string | null, source: string) =>
    `Lowest shop price ${where}${shop ? ` at ${shop}` : ""}, ${source}`,
  reduced: (from: string) => `, reduced from ${from}`,
  listStandsIn: (list: string) => `No shop price, so the list price stands in: ${list}`,

  otherPack: (where: string, source: string) => `From another pack ${where}, ${source}`,
  part: (line: string, pack: string, unit: Unit) => ` for ${line} of its ${pack} ${unit}`,
  times: (ratio: string) => ` for ${ratio} times its paper`,
  proportion: (pack: string, quantity: string) =>
    `${pack}, in proportion${quantity}; small packs usually cost more`,
  fitted: (pack: string, quantity: string, prices: number, power: string) =>
    `${pack}, scaled${quantity} the way ${prices} prices of such supplies grow with size, to the power of ${power}`,

  precedent: (price: string) => `What an earlier kit's list said, ${price}`,
  precedents: (low: string, high: string, prices: number) =>
    `What earlier kits' lists said, halfway from ${low} to ${high} over ${prices} prices`,
  guess: (source: string) => `A guess, ${source}`,
  between: (low: string, high: string) => `, between ${low} and ${high}`,

  settled: (where: string, source: string, why: string | null) =>
    `The price gone with ${where}, ${source}${why ? `, because: ${why}` : ""}`,
  byHand: (words: string, why: string | null) => `${words}; chosen by hand${why ? ` because: ${why}` : ""}`,
};
