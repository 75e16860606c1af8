import { describe, expect, it } from "vitest";
import { type ImportRule, worthOf } from "../../../src/engine/worth/index.ts";
import { book, eur, kit, market, sek, tier } from "./book.ts";

type At = Readonly<{ price: string; postage?: string; from?: string | null; kits?: number }>;

/** Duty, tax and handling in Sweden, SEK throughout. */
function charges(rules: readonly ImportRule[], { price, postage = "0", from = "jp", kits = 1 }: At) {
  const only = kit({
    shipsFrom: from,
    tiers: [tier({ kits, price: sek(price), postagePerKit: sek(postage) })],
  });
  const markets = [market("se", "SEK", rules), market("ie", "EUR"), market("jp", "JPY")];
  const outcome = worthOf(book(only, { markets }), only, ["se"]);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  const row = outcome.value.markets[0]?.tiers[0];
  return row && [row.duty.amount, row.tax.amount, row.handling.amount, row.kitCost.amount];
}

// Rules are the project's own; figures worked out by hand.
describe("which rule of a border fits", () => {
  const named: ImportRule = { from: ["ie", "jp"], taxRate: "0.1" };
  const any: ImportRule = { from: "any", taxRate: "0.2" };
  it.each([
    { why: "the one that names the origin, though later", rules: [any, named], from: "jp", tax: "10.00" },
    { why: "else the one for any", rules: [{ ...named, from: ["ie"] }, any], from: "jp", tax: "20.00" },
    { why: "else none", rules: [{ ...named, from: ["ie"] }], from: "jp", tax: "0.00" },
    { why: "none at home", rules: [any], from: "se", tax: "0.00" },
    { why: "none where nobody knows where it ships from", rules: [any], from: null, tax: "0.00" },
    { why: "the first of two for any", rules: [any, { ...any, taxRate: "0.9" }], from: "jp", tax: "20.00" },
  ])("$why", ({ rules, from, tax }) => {
    expect(charges(rules, { price: "100", from })?.[1]).toBe(tax);
  });
});

describe("what the border charges", () => {
  const rule: ImportRule = {
    from: "any",
    dutyRate: "0.05",
    taxRate: "0.25",
    dutyFreeUpTo: sek("1500"),
    taxFreeUpTo: sek("200"),
    handlingFee: sek("75.00"),
    valueBasis: "goods",
  };
  it.each([
    {
      why: "nothing up to and including the threshold",
      at: { price: "200", postage: "50" },
      is: ["0.00", "0.00", "0.00", "250.00"],
    },
    {
      why: "tax on goods and postage just above it",
      at: { price: "200.01", postage: "50" },
      is: ["0.00", "62.50", "75.00", "387.51"],
    },
    {
      why: "no duty up to and including its own",
      at: { price: "1500", postage: "0" },
      is: ["0.00", "375.00", "75.00", "1950.00"],
    },
    {
      why: "duty just above, and tax on top of it",
      at: { price: "1500.01", postage: "0" },
      is: ["75.00", "393.75", "75.00", "2043.76"],
    },
    {
      why: "the share of one kit counts, not the whole payment",
      at: { price: "600", kits: 3 },
      is: ["0.00", "0.00", "0.00", "200.00"],
    },
  ])("$why", ({ at, is }) => {
    expect(charges([rule], at)).toEqual(is);
  });
  it("postage counts towards the thresholds and the duty where the rule says so", () => {
    const both: ImportRule = { ...rule, valueBasis: "goods-and-postage" };
    expect(charges([both], { price: "200", postage: "0" })).toEqual(["0.00", "0.00", "0.00", "200.00"]);
    expect(charges([both], { price: "150", postage: "50.01" })).toEqual(["0.00", "50.00", "75.00", "325.01"]);
    expect(charges([both], { price: "1500", postage: "100" })).toEqual([
      "80.00",
      "420.00",
      "75.00",
      "2175.00",
    ]);
  });
  it("without thresholds the first unit is charged; without rates nothing is, nor a fee", () => {
    expect(charges([{ from: "any", taxRate: "0.25", handlingFee: sek("75") }], { price: "0.02" })).toEqual([
      "0.00",
      "0.01",
      "75.00",
      "75.03",
    ]);
    expect(charges([{ from: "any", taxRate: "0.25", handlingFee: sek("75") }], { price: "0.01" })).toEqual([
      "0.00",
      "0.00",
      "0.00",
      "0.01",
    ]);
    expect(charges([{ from: "any", handlingFee: sek("75") }], { price: "100" })).toEqual([
      "0.00",
      "0.00",
      "0.00",
      "100.00",
    ]);
  });
  it("a duty alone brings the fee", () => {
    expect(charges([{ from: "any", dutyRate: "0.1", handlingFee: sek("75") }], { price: "100" })).toEqual([
      "10.00",
      "0.00",
      "75.00",
      "185.00",
    ]);
  });
  it("a rule in other money is converted, or its missing rate is a fault", () => {
    const foreign: ImportRule = {
      from: "any",
      taxRate: "0.25",
      taxFreeUpTo: eur("10"),
      handlingFee: eur("2"),
    };
    expect(charges([foreign], { price: "110.25" })).toEqual(["0.00", "0.00", "0.00", "110.25"]);
    expect(charges([foreign], { price: "110.26" })).toEqual(["0.00", "27.57", "22.05", "159.88"]);
    const nok: ImportRule = { from: "any", taxFreeUpTo: { amount: "1", currency: "NOK" } };
    expect(() => charges([foreign, { ...nok, from: ["jp"] }], { price: "1" })).toThrow(
      /markets\[0\]\.import\[1\]/,
    );
  });
});
