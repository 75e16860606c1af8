/** The text as it goes out, section by section; its figures are those of figures.ts and nearness.ts. */

const basis = [
  "WHAT THE FIGURES REST ON",
  "List and shop prices as of 2 May 2026; prices change.",
  "1 EUR = 11.0250 SEK, 163.45 JPY on 30 Apr 2026 (the bank's page)",
  "Duty, tax and fees at a border are estimates; the customs or tax authority of the country of arrival decides.",
];

const without =
  "Without a list or a shop price: Gouache, rust; Gouache, lichen; Colour pencil, sand; Graphite pencil; Liner, black; Kneaded eraser";

const unpriced = [
  "3. Gouache, lichen: list no price, shop no price",
  "4. Colour pencil, sand: list no price, shop no price",
  "5. Graphite pencil: list no price, shop no price",
  "6. Liner, black: list no price, shop no price",
  "7. Kneaded eraser: list no price, shop no price",
];

export const published = [
  [
    "Moss on the skerry: 7 of 8 from my own shelves. All mine already.",
    "",
    "The kit: Moss on the skerry, by Tärnpost, April 2026.",
    "The prompt: A rock with something growing on it",
    "Remade from 2 May 2026, nothing bought for it.",
    "Everything shown was mine already; nobody paid for this.",
  ],
  [
    "WHAT WAS IN IT, AND WHAT STOOD IN",
    "1. 2 × Gouache, moss (tube, 15 ml): Gouache, olive (tube, 15 ml), 93 of 100, very near, 2.3 apart, a little lighter",
    "2. Gouache, rust (tube, 15 ml): Gouache, brick (tube, 20 ml), 86 of 100, very near, 5.1 apart, leaning to red",
    "3. Gouache, lichen (tube, 15 ml): Gouache, fern (tube, 15 ml), 66 of 100, fairly near, 18.1 apart, much darker",
    "4. Colour pencil, sand (wax binder): Colour pencil, straw (oil binder), 75 of 100, fairly near, 5.5 apart, stronger",
    "5. Graphite pencil (2B): Graphite pencil (2B), 100 of 100, the same",
    "6. Liner, black (0.5 mm, pigment, waterproof): Liner, black (0.3 mm, pigment, waterproof), 90 of 100, very near, no difference in colour; width differs",
    "7. Kneaded eraser: nothing close on my shelves",
    "8. Watercolour block, 24 × 32 cm (300 gsm, 20 sheets): Watercolour block, A3 (200 gsm, 12 sheets), 92 of 100, very near, larger: cut down, one piece a sheet",
  ],
  [
    "WORTH IN SWEDEN, SEK",
    "The contents together: list at least 348.04, shop at least 410.54, only what I would use at least 290.54",
    without,
    "Month by month: one kit costs 325.24, by list price at least +22.80 hangs on Gouache, rust, by shop price at least +85.30 pays, by what I would use at least −34.70",
    "Three in a row: one kit costs 292.17, by list price at least +55.87 pays, by shop price at least +118.37 pays, by what I would use at least −1.63",
  ],
  [
    "WORTH IN JAPAN, JPY",
    "The contents together: list at least 5160, shop at least 6087, only what I would use at least 4308",
    without,
    "Month by month: one kit costs 7271, of it at the border 1060, by list price at least −2111 hangs on Gouache, rust, by shop price at least −1184 hangs on Gouache, lichen, by what I would use at least −2963",
    "Three in a row: one kit costs 4331, by list price at least +829 pays, by shop price at least +1756 pays, by what I would use at least −23",
  ],
  [
    "PRICES IN SWEDEN, SEK",
    "1. 2 × Gouache, moss: list 108.04, shop 108.04",
    "2. Gouache, rust: list no price, shop 62.50",
    ...unpriced,
    "8. Watercolour block, 24 × 32 cm: list 240.00, shop 240.00",
    "Together: list at least 348.04, shop at least 410.54",
  ],
  [
    "PRICES IN JAPAN, JPY",
    "1. 2 × Gouache, moss: list 1602, shop 1602",
    "2. Gouache, rust: list no price, shop 927",
    ...unpriced,
    "8. Watercolour block, 24 × 32 cm: list 3558, shop 3558",
    "Together: list at least 5160, shop at least 6087",
  ],
  basis,
  [
    "HOW THE PRICES IN SWEDEN WERE FOUND",
    "Gouache, moss: List price here, EUR 4.90 on 2 May 2026, converted at 1 EUR = 11.0250 SEK of 30 Apr 2026. No shop price: the list price stands in.",
    "Gouache, rust: Lowest shop price here at Strandboden, SEK 62.50 on 2 May 2026.",
    "Watercolour block, 24 × 32 cm: A guess, SEK 240.00 on 2 May 2026, between SEK 200.00 and SEK 280.00. No shop price: the list price stands in.",
  ],
  [
    "HOW THE PRICES IN JAPAN WERE FOUND",
    "Gouache, moss: List price in Sweden, EUR 4.90 on 2 May 2026, converted at 1 EUR = 163.45 JPY of 30 Apr 2026. No shop price: the list price stands in.",
    "Gouache, rust: Lowest shop price in Sweden at Strandboden, SEK 62.50 on 2 May 2026, converted at 1 EUR = 11.0250 SEK = 163.45 JPY of 30 Apr 2026.",
    "Watercolour block, 24 × 32 cm: A guess, SEK 240.00 on 2 May 2026, converted at 1 EUR = 11.0250 SEK = 163.45 JPY of 30 Apr 2026, between JPY 2965 and JPY 4151. No shop price: the list price stands in.",
  ],
  ["TAKE CARE", "A colour on a screen is an approximation: swatch on the real paper before relying on it."],
] as const;

/** The whole text: sections with a blank line between. */
export const publishedText = `${published.map((section) => section.join("\n")).join("\n\n")}\n`;
