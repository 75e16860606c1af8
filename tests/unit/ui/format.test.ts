import { describe, expect, it } from "vitest";
import { formatter } from "../../../src/ui/words/format.ts";

const british = formatter("en-GB");

// Decimals: ISO 4217 (EUR 2, JPY 0, KWD 3). Order and signs: CLDR, as Intl has it.
describe("money", () => {
  it.each([
    { amount: "24", currency: "EUR", printed: "EUR\u00a024.00" },
    { amount: "5475", currency: "JPY", printed: "JPY\u00a05,475" },
    { amount: "3.25", currency: "KWD", printed: "KWD\u00a03.250" },
    { amount: "12345678901234567890.12", currency: "EUR", printed: "EUR\u00a012,345,678,901,234,567,890.12" },
  ])("$amount $currency is $printed", ({ amount, currency, printed }) => {
    expect(british.money({ amount, currency })).toBe(printed);
  });

  it("puts the currency where the reader's locale has it", () => {
    expect(formatter("sv-SE").money({ amount: "1234.5", currency: "SEK" })).toBe("1\u00a0234,50\u00a0SEK");
  });

  it("signs gains and losses with a true minus, and leaves nought bare", () => {
    const signed = (amount: string) => british.amount({ amount, currency: "SEK" }, "always");
    expect([signed("44.26"), signed("-56.39"), signed("0")]).toEqual(["+44.26", "\u221256.39", "0.00"]);
  });

  it("splits at the decimal mark", () => {
    expect(british.moneyPieces({ amount: "-1234.5", currency: "EUR" })).toEqual({
      before: "",
      whole: "\u2212EUR\u00a01,234",
      fraction: ".50",
      after: "",
    });
  });
});

// CLDR: where a locale puts a currency that is named by its code.
it.each([
  ["en-GB", "SEK\u00a011.0250"],
  ["sv-SE", "11,0250\u00a0SEK"],
  ["de-DE", "11,0250\u00a0SEK"],
  ["ja-JP", "SEK\u00a011.0250"],
])("prints a rate as %s writes money, with every digit as it was written", (locale, text) => {
  expect(formatter(locale).rate("SEK", "11.0250")).toBe(text);
});

describe("dates", () => {
  it("prints the day that was written, in any time zone", () => {
    expect(british.date("2026-05-02")).toBe("2 May 2026");
    expect(british.month("2026-04")).toBe("April 2026");
    expect(british.shortDate("2026-12-31")).toBe("31 Dec");
  });
});
