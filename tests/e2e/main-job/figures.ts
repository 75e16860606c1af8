/**
 * Every figure the screens must show, worked by hand from what is typed (typed.ts). The sums stand beside them;
 * exact.ts and near.ts work them once more, by other code than the app's.
 *
 * Rates of 30 April 2026, 1 EUR = 11.0250 SEK = 163.45 JPY. Minor units: SEK 2, JPY 0 (ISO 4217). Halves round
 * away from zero, once, where a figure is printed; a unit price is rounded before it is multiplied.
 */
export const worth = {
  Sweden: {
    lead: "In Sweden it pays on every tier, at shop prices.",
    more:
      "By list price it pays with Three in a row. Counting only what I would use, it hangs on “Gouache, lichen”. " +
      "6 lines lack a list or a shop price, so every total is “at least”.",
    notes: ["EUR 1 = SEK 11.0250 on 30 Apr 2026.", "Sent from here, so there is no border to cross."],
    chart:
      // list 308.04 = 108.04 + 200, 388.04 = 108.04 + 280; shop and wanted as below
      "At list price: SEK 348.04, from SEK 308.04 to SEK 388.04. " +
      "At shop price: SEK 410.54, from SEK 370.54 to SEK 450.54. " +
      // half of the block: 100 to 140 for 200 to 280
      "Only what I would use: SEK 290.54, from SEK 270.54 to SEK 310.54. " +
      "One kit costs: Month by month 325.24; Three in a row 292.17.",
    tiers: [
      [
        "Month by month EUR 24.00",
        "264.60", // 24 × 11.0250
        "60.64", // 5.50 × 11.0250 = 60.6375
        "none",
        "325.24 why?", // 264.60 + 60.64
        "at least +22.80 hangs on Gouache, rust", // 348.04 − 325.24; its low, 308.04, is less
        "at least +85.30 pays", // 410.54 − 325.24; its low, 370.54, is more
        "at least −34.70 hangs on Gouache, lichen", // 290.54 − 325.24
      ],
      [
        "Three in a row EUR 65.00 for 3",
        "231.53", // (65 − 2) × 11.0250 ÷ 3 = 231.525
        "60.64",
        "none",
        "292.17 why?", // 231.53 + 60.64
        "at least +55.87 pays", // 348.04 − 292.17; its low, 308.04, is more
        "at least +118.37 pays", // 410.54 − 292.17
        "at least −1.63 hangs on Gouache, lichen", // 290.54 − 292.17
      ],
    ],
    making: [
      "One payment EUR 65.00",
      "off one payment −EUR 2.00",
      "One kit at EUR 1 = SEK 11.0250 of 30 Apr 2026, for 3 kits, so divided by 3, rounded SEK 231.53",
      "Postage of one kit EUR 5.50, at EUR 1 = SEK 11.0250 of 30 Apr 2026, rounded SEK 60.64",
      "Nothing is charged at the border it is sent from here none",
      "One kit costs SEK 292.17",
    ],
    lines: [
      // 4.90 × 11.0250 = 54.0225; 2 × 54.02 = 108.04
      [
        "1",
        "Gouache, moss",
        "108.04 2 at 54.02",
        "list price here",
        "108.04 2 at 54.02",
        "list figure stands in",
        "all",
      ],
      ["2", "Gouache, rust", "no price yet", "why?", "62.50", "shop, 2 May", "all"],
      ["3", "Gouache, lichen", "no price yet", "why?", "no price yet", "why?", "all"],
      ["4", "Colour pencil, sand", "no price yet", "why?", "no price yet", "why?", "all"],
      ["5", "Graphite pencil", "no price yet", "why?", "no price yet", "why?", "all"],
      ["6", "Liner, black", "no price yet", "why?", "no price yet", "why?", "all"],
      ["7", "Kneaded eraser", "no price yet", "why?", "no price yet", "why?", "all"],
      [
        "8",
        "Watercolour block, 24 × 32 cm",
        "240.00 200.00 to 280.00",
        "a guess",
        "240.00 200.00 to 280.00",
        "list figure stands in",
        "50 in 100",
      ],
      // 108.04 + 240; 108.04 + 62.50 + 240; 108.04 + 62.50 + 120
      ["", "Together", "at least 348.04", "", "at least 410.54", "", "at least 290.54"],
    ],
    // list 108.04, then 348.04; shop 108.04, 170.54, then 410.54: each passes 264.60 and 325.24 at the block
    passing: [
      ["Month by month", block(), block(), block(), block()],
      ["Three in a row", block(), block(), block(), block()],
    ],
    border: [],
  },
  Japan: {
    lead: "In Japan it pays with Three in a row.",
    more:
      "Month by month hangs on “Gouache, lichen”. Counting only what I would use, it hangs on “Gouache, lichen”. " +
      "6 lines lack a list or a shop price, so every total is “at least”.",
    notes: [
      "EUR 1 = JPY 163.45 = SEK 11.0250 on 30 Apr 2026.",
      "Ships from Sweden. Tax and fees at the border are counted in.",
    ],
    chart:
      // 200 and 280 × 163.45 ÷ 11.0250 = 2965.08 and 4151.11; 1602 + 2965 = 4567, 1602 + 4151 = 5753
      "At list price: JPY 5,160, from JPY 4,567 to JPY 5,753. " +
      "At shop price: JPY 6,087, from JPY 5,494 to JPY 6,680. " +
      // 2965 ÷ 2 = 1482.5 and 4151 ÷ 2 = 2075.5, rounded up; 2529 + 1483 = 4012, 2529 + 2076 = 4605
      "Only what I would use: JPY 4,308, from JPY 4,012 to JPY 4,605. " +
      "One kit costs: Month by month 7,271; Three in a row 4,331.",
    tiers: [
      [
        "Month by month EUR 24.00",
        "3,923", // 24 × 163.45 = 3922.8
        "2,288", // 14 × 163.45 = 2288.3
        "1,060", // 217 + 643 + 200, as below
        "7,271 why?", // 3923 + 2288 + 1060
        "at least −2,111 hangs on Gouache, rust", // 5160 − 7271
        "at least −1,184 hangs on Gouache, lichen", // 6087 − 7271
        "at least −2,963 hangs on Gouache, lichen", // 4308 − 7271
      ],
      [
        "Three in a row EUR 65.00 for 3",
        "3,432", // 63 × 163.45 ÷ 3 = 3432.45
        "899", // 5.50 × 163.45 = 898.975
        "none", // 4331 is no more than 5000 and 6000
        "4,331 why?",
        "at least +829 pays", // 5160 − 4331; its low, 4567, is more
        "at least +1,756 pays", // 6087 − 4331
        "at least −23 hangs on Gouache, lichen", // 4308 − 4331
      ],
    ],
    making: [
      "One payment EUR 24.00",
      "One kit at EUR 1 = JPY 163.45 of 30 Apr 2026, rounded JPY 3,923",
      "Postage of one kit EUR 14.00, at EUR 1 = JPY 163.45 of 30 Apr 2026, rounded JPY 2,288",
      "Value that customs counts the goods and the postage JPY 6,211", // 3923 + 2288
      "Duty 3.5 % of that value JPY 217", // 6211 × 0.035 = 217.385, as 6211 is above 6000
      "Tax 10 % of goods, postage and duty, JPY 6,428 JPY 643", // 6428 × 0.10 = 642.8, as 6211 is above 5000
      "Handling fee because duty or tax is due JPY 200",
      "One kit costs JPY 7,271",
    ],
    lines: [
      // 4.90 × 163.45 = 800.905; 2 × 801 = 1602
      [
        "1",
        "Gouache, moss",
        "1,602 2 at 801",
        "converted from EUR 4.90",
        "1,602 2 at 801",
        "list figure stands in",
        "all",
      ],
      // 62.50 × 163.45 ÷ 11.0250 = 926.59
      ["2", "Gouache, rust", "no price yet", "why?", "927", "shop, from SEK 62.50", "all"],
      ["3", "Gouache, lichen", "no price yet", "why?", "no price yet", "why?", "all"],
      ["4", "Colour pencil, sand", "no price yet", "why?", "no price yet", "why?", "all"],
      ["5", "Graphite pencil", "no price yet", "why?", "no price yet", "why?", "all"],
      ["6", "Liner, black", "no price yet", "why?", "no price yet", "why?", "all"],
      ["7", "Kneaded eraser", "no price yet", "why?", "no price yet", "why?", "all"],
      // 240 × 163.45 ÷ 11.0250 = 3558.10
      [
        "8",
        "Watercolour block, 24 × 32 cm",
        "3,558 2,965 to 4,151",
        "a guess",
        "3,558 2,965 to 4,151",
        "list figure stands in",
        "50 in 100",
      ],
      // 1602 + 3558; 1602 + 927 + 3558; 1602 + 927 + 1779
      ["", "Together", "at least 5,160", "", "at least 6,087", "", "at least 4,308"],
    ],
    // list 5160 and shop 6087 are above the goods, 3923 and 3432; with postage, 6211 is above both and 4331 below
    passing: [
      ["Month by month", block(), "not by the prices so far", block(), "not by the prices so far"],
      ["Three in a row", block(), block(), block(), block()],
    ],
    border: [
      // 3923 + 2288; 5160 − 6211; 6087 − 6211
      "Month by month would cost JPY 6,211: −1,051 by list price, −124 by shop price.",
      "No parcel of my own from Sweden is noted yet.",
    ],
  },
} as const;

function block(): "8, Watercolour block, 24 × 32 cm" {
  return "8, Watercolour block, 24 × 32 cm";
}

/** What the Prices page shows, lines without a price first, each with its number in the contents: list, how, shop, how. Each for one. */
export const priced = {
  Sweden: {
    lead: "Five of eight still need a price in Sweden.",
    rows: [
      ["3 Gouache, lichen tube, 15 ml", "still needed", "", "still needed", ""],
      ["4 Colour pencil, sand wax binder", "still needed", "", "still needed", ""],
      ["5 Graphite pencil 2B", "still needed", "", "still needed", ""],
      ["6 Liner, black 0.5 mm, pigment, waterproof", "still needed", "", "still needed", ""],
      ["7 Kneaded eraser", "still needed", "", "still needed", ""],
      ["2 Gouache, rust tube, 15 ml", "no list price", "", "62.50", "shop, 2 May"],
      [
        "1 Gouache, moss tube, 15 ml, each of two",
        "54.02",
        "list price here",
        "54.02",
        "list figure stands in",
      ],
      [
        "8 Watercolour block, 24 × 32 cm 300 gsm, 20 sheets",
        "240.00 200.00 to 280.00",
        "a guess",
        "240.00 200.00 to 280.00",
        "list figure stands in",
      ],
    ],
  },
  Japan: {
    lead: "Five of eight still need a price in Japan.",
    rows: [
      ["3 Gouache, lichen tube, 15 ml", "still needed", "", "still needed", ""],
      ["4 Colour pencil, sand wax binder", "still needed", "", "still needed", ""],
      ["5 Graphite pencil 2B", "still needed", "", "still needed", ""],
      ["6 Liner, black 0.5 mm, pigment, waterproof", "still needed", "", "still needed", ""],
      ["7 Kneaded eraser", "still needed", "", "still needed", ""],
      ["2 Gouache, rust tube, 15 ml", "no list price", "", "927", "converted"],
      ["1 Gouache, moss tube, 15 ml, each of two", "801", "converted", "801", "list figure stands in"],
      [
        "8 Watercolour block, 24 × 32 cm 300 gsm, 20 sheets",
        "3,558 2,965 to 4,151",
        "a guess",
        "3,558 2,965 to 4,151",
        "list figure stands in",
      ],
    ],
  },
} as const;
