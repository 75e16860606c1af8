import { describe, expect, it } from "vitest";
import { readAmount } from "../../../src/ui/parts/read/amount.ts";
import { formatter } from "../../../src/ui/words/format.ts";

// Ways of writing: the separators that CLDR gives for en, de, sv, fr, de-CH and es; the rest is common practice, no source.
describe("an amount in two-decimal money", () => {
  it.each([
    ["12.50", "12.50"],
    ["12,5", "12.5"],
    ["1 234,50", "1234.50"],
    ["1\u202f234,50", "1234.50"],
    ["1,234.50", "1234.50"],
    ["1.234,50", "1234.50"],
    ["1’234.50", "1234.50"],
    ["1.234.567", "1234567"],
    ["0,999", "0.999"],
    ["1234,567", "1234.567"],
    [".5", "0.5"],
    ["007.", "7"],
    ["0", "0"],
  ])("%s is read as %s", (written, value) => {
    expect(readAmount(written, 2)).toEqual({ kind: "value", value });
  });

  it.each(["1,234", "1.234"])("%s is asked about", (written) => {
    expect(readAmount(written, 2)).toEqual({ kind: "ask", values: ["1234", "1.234"] });
  });

  it.each(["abc", "-3", "12.50.1", "1,23,456.7", "4.9O", "12 kr", ".", ","])("%s is a fault", (written) => {
    expect(readAmount(written, 2).kind).toBe("fault");
  });

  it("names the letter that looks like a figure, and the fix", () => {
    const reading = readAmount("4.9O", 2);
    expect(reading.kind === "fault" && reading.fault).toContain("Write 4.90");
  });

  it("takes nothing for nothing", () => {
    expect(readAmount("  ", 2)).toEqual({ kind: "empty" });
  });
});

// Source: ISO 4217 gives the yen no minor unit, so "1,234" has one reading only.
it("does not ask about yen", () => {
  expect(readAmount("1,234", 0)).toEqual({ kind: "value", value: "1234" });
});

// Quality bar U14: 7 locales × 3 currencies, there and back.
describe.each(["en-GB", "de-DE", "sv-SE", "fr-FR", "de-CH", "ja-JP", "es-ES"])("in %s", (locale) => {
  const print = formatter(locale);
  it.each([
    { amount: "1234567.89", currency: "EUR", digits: 2 },
    { amount: "1234567", currency: "JPY", digits: 0 },
    { amount: "1234567.891", currency: "KWD", digits: 3 },
  ])("$currency is read back as printed", ({ amount, currency, digits }) => {
    expect(readAmount(print.amount({ amount, currency }), digits)).toEqual({ kind: "value", value: amount });
  });
});
