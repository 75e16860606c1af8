import type { priceWords as en } from "./en.ts";

// As CLDR abbreviates them.
const months = [
  "jan.",
  "feb.",
  "mars",
  "apr.",
  "maj",
  "juni",
  "juli",
  "aug.",
  "sep.",
  "okt.",
  "nov.",
  "dec.",
];

const units = { pieces: "st", ml: "ml", sheets: "ark" };

/** How a price came about, in Swedish, without the full stop. */
export const priceWords: typeof en = {
  date: (year, month, day) => `${day} ${months[Number(month) - 1] ?? month} ${year}`,
  rate: (base, quotes, day) => `1 ${base} = ${quotes.join(" = ")} den ${day}`,

  here: "här",
  inMarket: (name) => `i ${name}`,
  elsewhere: "någon annanstans",
  everywhere: "överallt",

  source: (price, day, tax, rate) =>
    [
      day ? `${price} den ${day}` : price,
      ...(tax ? [`med ${tax} skatt tillagd`] : []),
      ...(rate ? [`omräknat med kursen ${rate}`] : []),
    ].join(", "),

  list: (where, source) => `Listpris ${where}, ${source}`,
  card: (source) => `Kitets eget kort säger ${source}`,
  shop: (where, shop, source) => `Lägsta butikspris ${where}${shop ? ` hos ${shop}` : ""}, ${source}`,
  reduced: (from) => `, nedsatt från ${from}`,
  listStandsIn: (list) => `Inget butikspris, så listpriset får gälla: ${list}`,

  otherPack: (where, source) => `Från en annan förpackning ${where}, ${source}`,
  part: (line, pack, unit) => ` till ${line} av förpackningens ${pack} ${units[unit]}`,
  times: (ratio) => ` till ${ratio} gånger så mycket papper`,
  proportion: (pack, quantity) => `${pack}, i proportion${quantity}; små förpackningar kostar oftast mer`,
  fitted: (pack, quantity, prices, power) =>
    `${pack}, skalat${quantity} så som ${prices} priser på sådant växer med mängden, med exponenten ${power}`,

  precedent: (price) => `Vad listan i ett tidigare kit sa, ${price}`,
  precedents: (low, high, prices) =>
    `Vad listorna i tidigare kit sa, mitt emellan ${low} och ${high}, av ${prices} priser`,
  guess: (source) => `En gissning, ${source}`,
  between: (low, high) => `, mellan ${low} och ${high}`,

  settled: (where, source, why) =>
    `Priset jag går på ${where}, ${source}${why ? `, därför att: ${why}` : ""}`,
  byHand: (words, why) => `${words}; eget val${why ? `, därför att: ${why}` : ""}`,
};
