import { describe, expect, it } from "vitest";
import { type Evidence, estimateLine, type Line } from "../../../src/engine/price/index.ts";
import type { SupplyOf } from "../../../src/engine/supply/index.ts";
import { bookOf, eur, found, jpy, kitOf, lineOf, sek } from "./book.ts";

/** The list estimate of a line with these prices found, in Sweden unless said otherwise. */
function listOf(evidence: readonly Evidence[], more: Partial<Line> = {}, market = "se") {
  const line = lineOf(evidence, more);
  const kit = kitOf([line]);
  return estimateLine(bookOf(kit), kit, line, market);
}
const listed = (evidence: readonly Evidence[], more: Partial<Line> = {}, market = "se") => {
  const { list } = listOf(evidence, more, market);
  return list && [list.method, list.likely.amount, list.low.amount, list.high.amount];
};

// The order of trust and every rule here are the project's own (docs: how a price is found).
describe("the list estimate goes with", () => {
  const here = found("list", { market: "se", price: sek("60") });
  const ireland = found("list", { market: "ie", date: "2026-04-20" });
  const card = found("card", { price: eur("6.00") });
  const guess = found("guess", { price: sek("50"), low: sek("40"), high: sek("65.5") });
  const large = found("list", { market: "se", price: sek("120"), pack: { ml: 30 } });
  const huge = found("list", { market: "se", price: sek("300"), pack: { ml: 60 } });

  it.each([
    { why: "this market's before another's", with: [ireland, here], is: ["list", "60.00", "60.00", "60.00"] },
    {
      why: "another's, converted",
      with: [guess, card, ireland],
      is: ["converted", "59.54", "59.54", "59.54"],
    },
    { why: "the card before a guess", with: [guess, card], is: ["card", "66.15", "66.15", "66.15"] },
    { why: "the card before another pack", with: [large, card], is: ["card", "66.15", "66.15", "66.15"] },
    { why: "another pack before a guess", with: [guess, large], is: ["scaled", "60.00", "60.00", "60.00"] },
    {
      why: "a pack however far before a guess",
      with: [guess, huge],
      is: ["scaled", "75.00", "75.00", "75.00"],
    },
    { why: "a guess with its range as typed", with: [guess], is: ["guess", "50.00", "40.00", "65.50"] },
    { why: "nothing, where nothing is known", with: [], is: null },
    { why: "nothing from a shop", with: [found("shop", { market: "se", date: "2026-04-30" })], is: null },
    {
      why: "nothing from looking in vain",
      with: [found("not-sold", { market: "se", price: null })],
      is: null,
    },
  ])("$why", ({ with: evidence, is }) => {
    expect(listed(evidence)).toEqual(is);
  });

  it("a price here in other money counts as here, converted", () => {
    expect(listed([found("list", { market: "se", price: eur("5.40") })])).toEqual([
      "list",
      "59.54",
      "59.54",
      "59.54",
    ]);
  });
  it("a price without a market is another's, also in the same currency", () => {
    expect(listed([found("list", { price: sek("61") })])?.slice(0, 2)).toEqual(["converted", "61.00"]);
  });
  it("a sender's other pack is scaled when no shop list has one", () => {
    const set = found("card", { price: sek("90"), pack: { count: 3 } });
    expect(listed([set])?.slice(0, 2)).toEqual(["scaled", "30.00"]);
    expect(listed([large, { ...set, date: "2026-04-01" }])?.slice(0, 2)).toEqual(["scaled", "60.00"]);
  });
});

describe("of several of one rank", () => {
  const at = (amount: string, date?: string) =>
    found("list", { market: "se", price: sek(amount), date: date ?? null });
  it.each([
    { why: "the newest", with: [at("3", "2026-04-02"), at("2", "2026-04-01"), at("1")], is: "3.00" },
    {
      why: "the later in the file on one day",
      with: [at("1", "2026-04-02"), at("2", "2026-04-02")],
      is: "2.00",
    },
    { why: "the later in the file of undated ones", with: [at("1"), at("2")], is: "2.00" },
    { why: "a dated one before one without a date", with: [at("1", "1999-01-01"), at("2")], is: "1.00" },
  ])("$why", ({ with: evidence, is }) => {
    expect(listed(evidence)?.[1]).toBe(is);
  });
});

describe("what is done to a price", () => {
  it("tax is added first", () => {
    expect(listed([found("list", { market: "se", price: sek("48"), plusTax: "0.25" })])?.[1]).toBe("60.00");
  });
  it("rounds once, after tax and conversion, at an exact half away from nought", () => {
    // 0.40 × 1.25 × 11.0250 = 5.5125; in yen 0.50 × 163.45 = 81.725
    const evidence = [found("list", { market: "ie", price: eur("0.40"), plusTax: "0.25" })];
    expect(listed(evidence)?.[1]).toBe("5.51");
    expect(listed(evidence, {}, "jp")?.[1]).toBe("82");
    expect(listed([found("list", { market: "se", price: sek("1.005") })])?.[1]).toBe("1.01");
  });
  it("goes through the base between two others: JPY 540 is SEK 36.42", () => {
    // 540 × 11.0250 ÷ 163.45 = 36.4239…, worked out by hand
    expect(listed([found("list", { market: "jp", price: jpy("540") })])?.[1]).toBe("36.42");
  });
  it("uses the rates of the day the kit is valued on, not of the day of the price", () => {
    expect(listed([found("list", { market: "ie", date: "2026-06-30" })])?.[1]).toBe("59.54");
  });
});

// Areas: ISO 216 (A4 is half of A3 by millimetres: 297 × 210 against 420 × 297).
describe("packs", () => {
  const paper = (traits: SupplyOf<"paper">["traits"]): Partial<Line> => ({
    supply: { family: "paper", name: "Layout pad", traits },
  });
  const price = (pack: Evidence["pack"]) => [
    found("list", { market: "se", price: sek("120"), pack: pack ?? null }),
  ];
  it.each([
    { pack: null, line: {}, is: ["list", "120.00"], why: "left out: the same as the line" },
    { pack: {}, line: {}, is: ["list", "120.00"], why: "empty: the same as the line" },
    {
      pack: { count: 1 },
      line: { qty: 2 },
      is: ["list", "120.00"],
      why: "one piece, whatever the line's qty",
    },
    { pack: { count: 12 }, line: {}, is: ["scaled", "10.00"], why: "a dozen" },
    { pack: { ml: 15 }, line: {}, is: ["list", "120.00"], why: "the line's own millilitres" },
    { pack: { ml: 7.5 }, line: {}, is: ["scaled", "240.00"], why: "half of them" },
    { pack: { ml: 5, count: 6 }, line: {}, is: ["scaled", "60.00"], why: "six small tubes" },
    {
      pack: { sheets: 20, size: "A4" },
      line: paper({ sheets: 40, size: "a4" }),
      is: ["scaled", "240.00"],
      why: "half the sheets",
    },
    {
      pack: { sheets: 40, size: "A3" },
      line: paper({ sheets: 40, size: "A4" }),
      is: ["scaled", "60.00"],
      why: "sheets of twice the area",
    },
    {
      pack: { sheets: 40, size: "A4" },
      line: paper({ sheets: 40, size: [210, 297] }),
      is: ["list", "120.00"],
      why: "the same sheets in millimetres",
    },
    {
      pack: { sheets: 40 },
      line: paper({ sheets: 40 }),
      is: ["list", "120.00"],
      why: "sheets alone where no size is known",
    },
    {
      pack: { sheets: 10, size: "A4" },
      line: paper({ size: "A4" }),
      is: ["scaled", "12.00"],
      why: "a loose sheet is one",
    },
    {
      pack: { sheets: 10, size: "A4" },
      line: paper({ size: "A4", bound: "pad" }),
      is: undefined,
      why: "a pad of unknown sheets cannot be compared",
    },
    {
      pack: { sheets: 10, size: "A4" },
      line: paper({ sheets: 10 }),
      is: undefined,
      why: "nor paper of unknown size",
    },
    {
      pack: { ml: 15 },
      line: { supply: { family: "eraser" as const, name: "Eraser" } },
      is: undefined,
      why: "nor millilitres of an eraser",
    },
    {
      pack: { sheets: 2, size: "letter" },
      line: paper({ sheets: 1, size: [215.9, 279.4] }),
      is: ["scaled", "60.00"],
      why: "US letter in millimetres",
    },
  ])("$why", ({ pack, line, is }) => {
    expect(listed(price(pack), line)?.slice(0, 2)).toEqual(is);
  });
});

describe("what a person settled", () => {
  const evidence = [
    found("list", { market: "se", price: sek("60") }),
    found("card", { price: sek("70") }),
    found("guess", { price: sek("50"), low: sek("40") }),
  ];
  const settled = (...all: NonNullable<Line["settled"]>) => ({ settled: all });
  it.each([
    { why: "a price", as: settled({ kind: "list", price: sek("55.555") }), is: ["settled", "55.56"] },
    {
      why: "a price in other money",
      as: settled({ kind: "list", price: eur("4") }),
      is: ["settled", "44.10"],
    },
    {
      why: "this market's before one for all",
      as: settled({ kind: "list", market: "se", price: sek("1") }, { kind: "list", price: sek("2") }),
      is: ["settled", "1.00"],
    },
    {
      why: "none for another market",
      as: settled({ kind: "list", market: "ie", price: sek("1") }),
      is: ["list", "60.00"],
    },
    {
      why: "the later of two",
      as: settled({ kind: "list", price: sek("1") }, { kind: "list", price: sek("2") }),
      is: ["settled", "2.00"],
    },
    {
      why: "a method, under its own name",
      as: settled({ kind: "list", method: "card" }),
      is: ["card", "70.00"],
    },
    {
      why: "no method that does not apply",
      as: settled({ kind: "list", method: "scaled" }),
      is: ["list", "60.00"],
    },
    { why: "no method nobody knows", as: settled({ kind: "list", method: "stars" }), is: ["list", "60.00"] },
    {
      why: "an unknown method here, so the one for all",
      as: settled({ kind: "list", market: "se", method: "stars" }, { kind: "list", price: sek("2") }),
      is: ["settled", "2.00"],
    },
    {
      why: "nothing settled for the street",
      as: settled({ kind: "street", price: sek("1") }),
      is: ["list", "60.00"],
    },
  ])("$why", ({ as, is }) => {
    expect(listed(evidence, as)?.slice(0, 2)).toEqual(is);
  });
  it("keeps a chosen guess's range, and says who chose", () => {
    const { list } = listOf(evidence, settled({ kind: "list", method: "guess", reason: "The list is old." }));
    expect(list).toMatchObject({
      low: sek("40.00"),
      high: sek("50.00"),
      trace: { chosen: true, reason: "The list is old." },
    });
    expect(list?.sentence).toBe(
      "A guess, SEK 50.00, between SEK 40.00 and SEK 50.00; chosen by hand because: The list is old.",
    );
  });
});

describe("every way that applies is shown", () => {
  it("in order, with its figure, and what was gone with first", () => {
    const { listOptions } = listOf(
      [
        found("guess", { price: sek("50") }),
        found("card", { price: sek("70") }),
        found("list", { market: "se", price: sek("60") }),
        found("list", { market: "ie", pack: { ml: 30 } }),
        found("list", { market: "jp", price: jpy("540") }),
      ],
      { settled: [{ kind: "list", price: sek("65") }] },
    );
    expect(listOptions.map(({ method, likely }) => [method, likely.amount])).toEqual([
      ["settled", "65.00"],
      ["list", "60.00"],
      ["converted", "36.42"],
      ["card", "70.00"],
      ["scaled", "29.77"],
      ["guess", "50.00"],
    ]);
  });
});

describe("how it came about, in one sentence", () => {
  const say = (evidence: readonly Evidence[], more: Partial<Line> = {}) =>
    listOf(evidence, more).list?.sentence;
  it.each([
    [
      found("list", { market: "se", date: "2026-04-20" }),
      "List price here, EUR 5.40 on 20 Apr 2026, converted at 1 EUR = 11.0250 SEK of 31 Mar 2026.",
    ],
    [
      found("list", { market: "ie", plusTax: "0.23" }),
      "List price in Ireland, EUR 5.40, with 23 % tax added, converted at 1 EUR = 11.0250 SEK of 31 Mar 2026.",
    ],
    [
      found("list", { price: jpy("540") }),
      "List price elsewhere, JPY 540, converted at 1 EUR = 163.45 JPY = 11.0250 SEK of 31 Mar 2026.",
    ],
    [
      found("card", { price: sek("60"), date: "2026-04-12" }),
      "The kit's own card says SEK 60.00 on 12 Apr 2026.",
    ],
    [
      found("list", { market: "se", price: sek("120"), pack: { ml: 30 } }),
      "From another pack here, SEK 120.00, in proportion for 15 of its 30 ml; small packs usually cost more.",
    ],
    [
      found("guess", { price: sek("50"), low: sek("40"), high: sek("60") }),
      "A guess, SEK 50.00, between SEK 40.00 and SEK 60.00.",
    ],
  ])("%o", (evidence, sentence) => {
    expect(say([evidence])).toBe(sentence);
  });
  it("a settled price with its reason", () => {
    const settled = [
      { kind: "list" as const, market: "se", price: sek("55"), reason: "Seen in two catalogues." },
    ];
    expect(say([], { settled })).toBe(
      "The price gone with here, SEK 55.00, because: Seen in two catalogues.",
    );
  });
  it("and as data, step by step", () => {
    const { list } = listOf([
      found("list", { id: "e-x", market: "ie", plusTax: "0.25", pack: { ml: 30 }, source: "catalogue" }),
    ]);
    expect(list?.trace).toEqual({
      chosen: false,
      reason: null,
      sources: [
        {
          evidence: "e-x",
          of: "k1/l1",
          quoted: eur("5.40"),
          date: null,
          market: "ie",
          shop: null,
          source: "catalogue",
          plusTax: "0.25",
          pack: { unit: "ml", line: "15", pack: "30", exponent: 1 },
          rate: {
            date: "2026-03-31",
            base: "EUR",
            from: "EUR",
            to: "SEK",
            fromQuote: "1",
            toQuote: "11.0250",
          },
          comesTo: sek("37.21"), // 5.40 × 1.25 ÷ 2 × 11.0250 = 37.209…
        },
      ],
    });
  });
});
