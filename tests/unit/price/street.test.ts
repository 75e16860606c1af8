import { describe, expect, it } from "vitest";
import {
  type Evidence,
  estimateKit,
  estimateLine,
  type Line,
  pricesOf,
} from "../../../src/engine/price/index.ts";
import { bookOf, eur, found, jpy, kitOf, lineOf, sek } from "./book.ts";

const shop = (amount: string, more: Partial<Evidence> = {}) =>
  found("shop", { price: sek(amount), shop: "s1", date: "2026-04-20", ...more });

function estimate(evidence: readonly Evidence[], more: Partial<Line> = {}, market = "se") {
  const line = lineOf(evidence, more);
  const kit = kitOf([line]);
  return estimateLine(bookOf(kit), kit, line, market);
}
const street = (evidence: readonly Evidence[], more: Partial<Line> = {}, market = "se") => {
  const found = estimate(evidence, more, market).street;
  return found && [found.method, found.likely.amount];
};

// The rules are the project's own (docs: how a price is found).
describe("the street estimate goes with", () => {
  const list = found("list", { market: "se", price: sek("60") });
  it.each([
    { why: "the lowest here", with: [shop("50"), shop("49", { shop: "s2" }), list], is: ["shop", "49.00"] },
    {
      why: "a dearer one here before a cheaper abroad",
      with: [shop("50"), shop("1", { shop: "s3" })],
      is: ["shop", "50.00"],
    },
    {
      why: "the lowest abroad, converted",
      with: [
        shop("4", { shop: "s3", price: eur("4") }),
        shop("60", { market: "jp", shop: null, price: jpy("540") }),
      ],
      is: ["converted", "36.42"],
    },
    { why: "the list price where no shop has it", with: [list], is: ["list", "60.00"] },
    { why: "nothing where nothing is known", with: [found("not-sold", { price: null })], is: null },
    {
      why: "a market of its own before the shop's",
      with: [shop("50", { market: "ie" })],
      is: ["converted", "50.00"],
    },
    {
      why: "a price of no market and no shop as another's",
      with: [shop("50", { shop: null })],
      is: ["converted", "50.00"],
    },
    {
      why: "no shop price of another pack",
      with: [shop("5", { pack: { count: 12 } }), list],
      is: ["list", "60.00"],
    },
    {
      why: "one of the line's own millilitres",
      with: [shop("50", { pack: { ml: 15 } }), list],
      is: ["shop", "50.00"],
    },
    { why: "nothing undated", with: [shop("5", { date: null }), list], is: ["list", "60.00"] },
    {
      why: "a price with its tax, lowest after tax",
      with: [shop("45", { plusTax: "0.25" }), shop("50", { shop: "s2" })],
      is: ["shop", "50.00"],
    },
    { why: "the reduced price", with: [shop("40", { reducedFrom: sek("60") })], is: ["shop", "40.00"] },
  ])("$why", ({ with: evidence, is }) => {
    expect(street(evidence)).toEqual(is);
  });

  // 30 April 2026 less 90 days is 30 January; plus 90 days is 29 July (counted by calendar).
  it.each([
    { date: "2026-01-30", counts: true },
    { date: "2026-01-29", counts: false },
    { date: "2026-07-29", counts: true },
    { date: "2026-07-30", counts: false },
  ])("a price of $date counts: $counts", ({ date, counts }) => {
    expect(street([shop("50", { date })])?.[0]).toBe(counts ? "shop" : undefined);
  });

  it.each([
    {
      why: "the newest of a shop, though dearer",
      with: [shop("55", { date: "2026-04-21" }), shop("50")],
      is: ["shop", "55.00"],
    },
    { why: "the later in the file on one day", with: [shop("50"), shop("55")], is: ["shop", "55.00"] },
    {
      why: "not an older one of a shop that is out of it now",
      with: [shop("50"), shop("40", { date: "2026-04-21", inStock: false })],
      is: null,
    },
    {
      why: "nor of one where it was looked for in vain since",
      with: [shop("50"), found("not-sold", { shop: "s1", price: null, date: "2026-04-21" })],
      is: null,
    },
    {
      why: "another shop's all the same",
      with: [shop("40", { inStock: false }), shop("50", { shop: "s2" })],
      is: ["shop", "50.00"],
    },
    {
      why: "a newer word on another pack leaves it be",
      with: [shop("50"), shop("300", { date: "2026-04-25", pack: { count: 6 } })],
      is: ["shop", "50.00"],
    },
    {
      why: "prices without a shop each stand alone",
      with: [
        shop("50", { shop: null, market: "se" }),
        shop("45", { shop: null, market: "se", date: "2026-04-01" }),
      ],
      is: ["shop", "45.00"],
    },
    {
      why: "a word out of the 90 days says nothing",
      with: [shop("50"), shop("40", { date: "2026-12-01", inStock: false })],
      is: ["shop", "50.00"],
    },
  ])("per shop: $why", ({ with: evidence, is }) => {
    expect(street(evidence)).toEqual(is);
  });

  it.each([
    { why: "a price", settled: { kind: "street" as const, price: sek("33") }, is: ["settled", "33.00"] },
    { why: "a method", settled: { kind: "street" as const, method: "list" }, is: ["list", "60.00"] },
    { why: "abroad", settled: { kind: "street" as const, method: "converted" }, is: ["converted", "44.10"] },
    {
      why: "not one of the list's",
      settled: { kind: "street" as const, method: "card" },
      is: ["shop", "50.00"],
    },
  ])("settled by hand: $why", ({ settled, is }) => {
    const evidence = [shop("50"), shop("4", { shop: "s3", price: eur("4") }), list];
    expect(street(evidence, { settled: [settled] })).toEqual(is);
  });
  it("the list standing in keeps its range and is marked", () => {
    const found1 = estimate([found("guess", { price: sek("50"), low: sek("40"), high: sek("60") })]).street;
    expect(found1).toMatchObject({ method: "list", low: sek("40.00"), high: sek("60.00") });
    expect(found1?.sentence).toBe(
      "No shop price, so the list price stands in: a guess, SEK 50.00, between SEK 40.00 and SEK 60.00.",
    );
  });
  it("says where, when and how", () => {
    expect(estimate([shop("40", { reducedFrom: sek("60") })]).street?.sentence).toBe(
      "Lowest shop price here at Fjordpapper, SEK 40.00 on 20 Apr 2026, reduced from SEK 60.00.",
    );
    expect(estimate([shop("4", { shop: "s3", price: eur("4") })]).street?.sentence).toBe(
      "Lowest shop price in Ireland at Harbour Paints, EUR 4.00 on 20 Apr 2026, converted at 1 EUR = 11.0250 SEK of 31 Mar 2026.",
    );
  });
  it("a line made for the kit still takes what the card says", () => {
    const card = found("card", { price: sek("70") });
    expect(street([card], { exclusive: true })).toEqual(["list", "70.00"]);
  });
  it("keeps the answer that a thing is not sold here", () => {
    const { notSold } = estimate([
      found("not-sold", { id: "n1", market: "se" }),
      found("not-sold", { id: "n2", market: "jp" }),
    ]);
    expect(notSold.map(({ id }) => id)).toEqual(["n1"]);
  });
});

describe("what is missing", () => {
  const krone = (kind: Evidence["kind"]) =>
    found(kind, { market: "ie", price: { amount: "4", currency: "NOK" }, date: "2026-04-20" });
  const noRate = (index: number) => ({
    place: `kits[0].lines[${index}].evidence[0]`,
    problem: "there is no exchange rate for NOK on or before 2026-04-30",
    remedy: "add a rate table dated on or before 2026-04-30 with SEK and NOK",
  });
  it("a rate that the figure needs is a fault, each once, all of them", () => {
    const kit = kitOf([
      lineOf([krone("list")]),
      lineOf([krone("shop")], { id: "l2" }),
      lineOf([], { id: "l3" }),
    ]);
    const outcome = estimateKit(bookOf(kit), kit, "se");
    expect(outcome.ok ? [] : outcome.faults).toEqual([noRate(0), noRate(1)]);
    const { list, faults } = estimateLine(bookOf(kit), kit, kit.lines?.[0] ?? lineOf([]), "se");
    expect([list, faults]).toEqual([null, [noRate(0)]]);
  });
  it("a rate that only a way not taken needs is none", () => {
    const { list, faults, listOptions } = estimate([
      found("list", { market: "se", price: sek("60") }),
      krone("list"),
    ]);
    expect([list?.likely.amount, faults]).toEqual(["60.00", []]);
    expect(listOptions.map(({ method }) => method)).toEqual(["list"]);
  });
  it("a settled price has its own place", () => {
    const settled = [{ kind: "list" as const, price: { amount: "4", currency: "NOK" } }];
    expect(estimate([], { settled }).faults[0]?.place).toBe("kits[0].lines[0].settled[0].price");
  });
  it("the day that counts is required, also where there are no lines", () => {
    const kit = kitOf([], { id: "k2", valuedOn: null });
    const outcome = pricesOf(bookOf(kitOf([]), kit), kit, "se");
    expect(outcome.ok ? null : outcome.fault.place).toBe("kits[1].valuedOn");
  });
  it("so is a market of the workbook", () => {
    const kit = kitOf([]);
    expect(pricesOf(bookOf(kit), kit, "no").ok).toBe(false);
  });
});

describe("what the command line prints", () => {
  it("has each line's quantity and estimates without the trace", () => {
    const kit = kitOf([lineOf([shop("49")], { qty: 2 }), lineOf([], { id: "l2" })]);
    const estimate = {
      likely: sek("49.00"),
      low: sek("49.00"),
      high: sek("49.00"),
      method: "shop",
      sentence: "Lowest shop price here at Fjordpapper, SEK 49.00 on 20 Apr 2026.",
    };
    expect(pricesOf(bookOf(kit), kit, "se")).toEqual({
      ok: true,
      value: {
        lines: [
          { line: "l1", qty: 2, list: null, street: estimate },
          { line: "l2", qty: 1, list: null, street: null },
        ],
      },
    });
  });
});
