import { expect, it } from "vitest";
import { currenciesOfSign, isCurrency } from "../../../src/engine/money/index.ts";

// Source: Unicode CLDR by way of Intl, which writes each currency with its narrow sign.

const signs = ["€", "£", "¥", "₩", "₹", "zł", "kč", "kr", "$"];

it.each(signs)("%s is written for each currency that it may stand for", (sign) => {
  const codes = currenciesOfSign(sign);
  expect(codes.length).toBeGreaterThan(0);
  for (const currency of codes) {
    expect(isCurrency(currency)).toBe(true);
    const parts = new Intl.NumberFormat("en", {
      style: "currency",
      currency,
      currencyDisplay: "narrowSymbol",
    }).formatToParts(1);
    expect(parts.find(({ type }) => type === "currency")?.value.toLowerCase(), currency).toBe(sign);
  }
});

it("takes no notice of case and a dot, and knows no other words", () => {
  expect(currenciesOfSign(" Kr. ")).toEqual(currenciesOfSign("kr"));
  expect(["", "tubes", "EUR"].flatMap(currenciesOfSign)).toEqual([]);
});
