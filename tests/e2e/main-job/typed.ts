/** What the person types, word for word. All of it is invented. */

export const kit = {
  maker: "Tärnpost",
  month: "April 2026",
  title: "Moss on the skerry",
  prompt: "A rock with something growing on it",
} as const;

/** The contents, as they would be written down from the card. */
export const lines = [
  "2 gouache tubes moss #6b7d3a 15 ml",
  "gouache tube rust #a3522b 15 ml",
  "gouache tube lichen #8a9455 15 ml",
  "wax colour pencil sand #c8b187",
  "graphite pencil 2B",
  "black fineliner 0.5 mm pigment waterproof",
  "kneaded eraser",
  "watercolour block 24 x 32 cm, 20 sheets, 300 gsm",
] as const;

/** What those lines are called once they are understood. */
export const lineNames = [
  "Gouache, moss",
  "Gouache, rust",
  "Gouache, lichen",
  "Colour pencil, sand",
  "Graphite pencil",
  "Liner, black",
  "Kneaded eraser",
  "Watercolour block, 24 × 32 cm",
] as const;

/** Twelve things from the shelves. */
export const stash = [
  "gouache tube olive #73823f 15 ml",
  "gouache tube fern #4f6b32 15 ml",
  "gouache tube brick #b0553a 20 ml",
  "watercolour half pan burnt orange #b5562a",
  "oil based colour pencil straw #d2b877",
  "graphite pencil 2B",
  "graphite pencil 4B",
  "black fineliner 0.3 mm pigment waterproof",
  "drawing pad A4, 40 sheets, 120 gsm",
  "watercolour block A3, 12 sheets, 200 gsm",
  "flat brush 12 mm synthetic",
  "blue alcohol marker brush tip #2a5caa",
] as const;

export const stashNames = [
  "Gouache, olive",
  "Gouache, fern",
  "Gouache, brick",
  "Watercolour, burnt orange",
  "Colour pencil, straw",
  "Graphite pencil",
  "Graphite pencil",
  "Liner, black",
  "Drawing pad, A4",
  "Watercolour block, A3",
  "Flat brush",
  "Alcohol marker, blue",
] as const;

/** Where the stash lives: said once for a whole drawer. */
export const drawer = "blue tin";

/** Two ways to pay, in euro. Amounts as a person types them. */
export const tiers = [
  { name: "Month by month", kits: "1", price: "24", postage: "5,50", postageToJapan: "14", discount: "" },
  { name: "Three in a row", kits: "3", price: "65", postage: "5.50", postageToJapan: "", discount: "2" },
] as const;

/** Three prices, one of each kind. The rest stays unknown, so every total is "at least". */
export const prices = [
  { line: "Gouache, moss", kind: "list price", currency: "EUR", price: "4.90", source: "the maker's list" },
  {
    line: "Gouache, rust",
    kind: "shop price",
    currency: "SEK",
    price: "62,50",
    shop: "Strandboden",
    source: "",
  },
  {
    line: "Watercolour block, 24 × 32 cm",
    kind: "a guess",
    currency: "SEK",
    price: "240",
    low: "200",
    high: "280",
    source: "like the one I bought",
  },
] as const;

/** Two markets. Duty, tax and fee at the second one's border are invented. */
export const markets = [
  { name: "Sweden", currency: "SEK" },
  { name: "Japan", currency: "JPY" },
] as const;

/** What Japan's border charges a parcel from any other market: percentages and whole yen. */
export const border = { duty: "3.5", dutyFree: "6000", tax: "10", taxFree: "5000", fee: "200" } as const;

/** A rate table typed from a bank's page: what 1 EUR was worth. */
export const rates = {
  day: "30 April 2026",
  SEK: "11,0250",
  JPY: "163.45",
  source: "the bank's page",
} as const;
