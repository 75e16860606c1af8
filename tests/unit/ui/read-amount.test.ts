import { describe, expect, it } from "vitest";
import { currencyNamed, readAmount, readMoney } from "../../../src/ui/parts/read/amount.ts";
import type { Reading } from "../../../src/ui/parts/read/reading.ts";
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

// What stands beside an amount: codes of ISO 4217 and the signs that CLDR gives; "49:-" and "12:50" are Swedish
// habit, common practice, no source.
describe("money with its currency beside it", () => {
  const read = (written: string) => readMoney(written, "SEK", 2, ["en", "sv"]);

  it.each([
    ["49 kr", "49"],
    ["49 kr.", "49"],
    ["SEK 49", "49"],
    ["1 234,50 kr", "1234.50"],
    ["kr 12.50", "12.50"],
    ["49:-", "49"],
    ["49,-", "49"],
    ["12:50", "12.50"],
    ["12,50", "12.50"],
    ["１２．５０", "12.50"],
  ])("%s is %s kronor", (written, value) => {
    expect(read(written)).toEqual({ kind: "value", value });
  });

  it.each(["€ 4,50", "49 EUR", "12 krona", "kr", "-3 kr", "4.9O kr"])("%s is a fault", (written) => {
    expect(read(written).kind).toBe("fault");
  });

  it("asks as it does without", () => {
    expect(read("1,234 kr")).toEqual({ kind: "ask", values: ["1234", "1.234"] });
    expect(readMoney("¥1,234", "JPY", 0, ["en"])).toEqual({ kind: "value", value: "1234" });
    expect(readMoney("1,234円", "JPY", 0, ["ja"])).toEqual({ kind: "fault", fault: expect.any(String) });
  });
});

// Quality bar U14: 7 locales × 3 currencies (ISO 4217: SEK 2, JPY 0, KWD 3 decimals), there and back. The printer is
// Intl with CLDR's data; an amount that may be read in two ways is asked about, and its own value is among the two.
describe.each(["en-GB", "sv-SE", "de-DE", "ja-JP", "fr-FR", "pl-PL", "pt-BR", "de-CH", "es-ES"])(
  "in %s",
  (locale) => {
    const print = formatter(locale);
    const currencies = [
      { currency: "SEK", digits: 2 },
      { currency: "JPY", digits: 0 },
      { currency: "KWD", digits: 3 },
    ];
    const back = (reading: Reading, amount: string) => {
      const same = (text: string) => Number(text) === Number(amount);
      if (reading.kind === "value") return same(reading.value);
      return reading.kind === "ask" && reading.values.filter(same).length === 1;
    };

    it.each(currencies)(
      "$currency is read back as printed, bare and with its code",
      ({ currency, digits }) => {
        for (const whole of ["0", "7", "12", "999", "1000", "1234", "98765", "1234567"]) {
          const amount = digits === 0 ? whole : `${whole}.${"125".slice(0, digits)}`;
          const money = { amount, currency };
          expect(back(readMoney(print.amount(money), currency, digits, [locale]), amount)).toBe(true);
          expect(back(readMoney(print.money(money), currency, digits, [locale]), amount)).toBe(true);
        }
      },
    );

    it.each(currencies)("$currency of a million and more leaves no doubt", ({ currency, digits }) => {
      const amount = digits === 0 ? "1234567" : `1234567.${"891".slice(0, digits)}`;
      expect(readAmount(print.amount({ amount, currency }), digits)).toEqual({
        kind: "value",
        value: amount,
      });
    });

    it("a number that is no money is read back, or asked about", () => {
      for (const number of ["0.3", "0.35", "12.5", "228.6", "300", "1200", "1234.567"]) {
        expect(back(readAmount(print.number(number, 3), 3), number), print.number(number, 3)).toBe(true);
      }
    });

    it("asks about nothing that has two decimals, or none", () => {
      for (const { currency, digits } of currencies.filter((each) => each.digits < 3)) {
        const amount = digits === 0 ? "1234" : "1234.50";
        expect(readAmount(print.amount({ amount, currency }), digits)).toEqual({
          kind: "value",
          value: amount,
        });
      }
    });
  },
);

describe("a currency beside an amount", () => {
  const all = ["SEK", "EUR", "GBP", "CHF", "JPY"];
  it.each([
    ["5,40 €", "EUR"],
    ["€5.40", "EUR"],
    ["£ 1", "GBP"],
    ["CHF 12.50", "CHF"],
    ["12 chf", "CHF"],
    ["49 kr", null],
    ["$5", null],
    ["5", null],
    ["5 zł", null],
  ])("%s is %s", (written, code) => expect(currencyNamed(written, all)).toBe(code));
});
