/** What the person writes in their own words. All of it is invented. */

export const kit = {
  maker: "Tärnpost",
  month: "April 2026",
  title: "Moss on the skerry",
  day: "30 April 2026",
} as const;

/** Three lines are written by hand, the other seven come from a card's text and are pasted. */
export const writtenLines = [
  "2 gouache tubes moss #6b7d3a 15 ml",
  "wax colour pencil sand #c8b187",
  "graphite pencil 2B",
] as const;

export const pastedLines = [
  "gouache tube rust #a3522b 15 ml",
  "gouache tube lichen #8a9455 15 ml",
  "black fineliner 0.5 mm pigment waterproof",
  "kneaded eraser",
  "flat brush 10 mm synthetic",
  "watercolour block 24 x 32 cm, 20 sheets, 300 gsm",
  "oil based colour pencil kelp #4a5a3a",
].join("\n");

export const tier = { name: "Month by month", price: "24" } as const;

export const market = { name: "Sweden", currency: "SEK" } as const;

export const rate = "11,0250";

export const writtenStash = [
  "gouache tube olive #73823f 15 ml",
  "graphite pencil 2B",
  "soft eraser",
] as const;

export const pastedStash = [
  "gouache tube fern #4f6b32 15 ml",
  "gouache tube brick #b0553a 20 ml",
  "oil based colour pencil straw #d2b877",
  "oil based colour pencil pine #3f5136",
  "graphite pencil 4B",
  "black fineliner 0.3 mm pigment waterproof",
  "flat brush 12 mm synthetic",
  "watercolour block A3, 12 sheets, 200 gsm",
  "drawing pad A4, 40 sheets, 120 gsm",
].join("\n");

/** The price of whatever line comes next, in the market's own currency. */
export const prices = ["62", "24,50", "19", "65", "58", "32", "18", "49", "240", "21"] as const;

export const verdict = "Seven of ten I have already. The block is what I would have paid for.";
