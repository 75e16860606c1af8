import { describe, expect, it } from "vitest";
import published from "../../fixtures/reference/currency.json" with { type: "json" };
import {
  convert,
  currencyCodes,
  dividedBy,
  type Exact,
  exact,
  findRate,
  isCurrency,
  minorDigits,
  printed,
  quotient,
  type RateTable,
  readReferenceRates,
  share,
} from "../../src/engine/money/index.ts";
import { divide, multiply, rational, rounded } from "./rational.ts";

const euro: RateTable = { date: "1999-01-01", base: "EUR", quotes: published.euroConversion.rates };

function converted(amount: Exact, to: string, rates: readonly RateTable[], on: string): Exact {
  const outcome = convert(amount, to, { rates, on, place: "here" });
  if (!outcome.ok) throw new Error(outcome.fault.problem);
  return outcome.value.amount;
}

// Source: ISO 4217:2015 List One, publication date 2024-06-25, as carried in the fixture.
describe("minor units of ISO 4217", () => {
  const { minorUnits, differences } = published.iso4217;
  it.each(Object.entries(minorUnits).filter(([digits]) => digits !== "notApplicable"))(
    "%s decimals: each code of the list",
    (digits, codes) => {
      expect(codes.map((code) => [code, minorDigits(code)])).toEqual(
        codes.map((code) => [code, Number(digits)]),
      );
    },
  );
  it("knows no other codes, and none without a minor unit", () => {
    const listed = Object.entries(minorUnits).flatMap(([digits, codes]) =>
      digits === "notApplicable" ? [] : codes,
    );
    expect(currencyCodes).toEqual(listed.toSorted());
    expect(minorUnits.notApplicable.filter(isCurrency)).toEqual([]);
  });
  it.each(differences)("$code has $iso decimals, whatever Intl says", ({ code, iso }) => {
    expect(minorDigits(code)).toBe(iso);
  });
});

// Source: Council Regulation (EC) No 1103/97, Articles 4 and 5; rates of Regulation (EC) No 2866/98; each row's own.
describe("conversion by Regulation 1103/97", () => {
  it.each(published.euroConversion.examples.rows)(
    "$amount $from is $expected $to (intermediate: $intermediateDecimals)",
    ({ amount, from, to, intermediateDecimals, decimals, expected }) => {
      const start = exact({ amount, currency: from });
      const through =
        intermediateDecimals === null
          ? start
          : exact({
              amount: quotient(converted(start, "EUR", [euro], "1999-01-01"))
                .toDecimalPlaces(intermediateDecimals)
                .toFixed(),
              currency: "EUR",
            });
      const end = converted(through, to, [euro], "1999-01-01");
      expect(quotient(end).toDecimalPlaces(decimals).toFixed(decimals)).toBe(expected);
    },
  );
  it.each(published.euroConversion.halfWay.examples)(
    "EUR $euro is charged as $cents",
    ({ euro: amount, cents }) => {
      expect(printed(exact({ amount, currency: "EUR" })).amount).toBe(cents);
    },
  );
});

const ecb = published.ecbReferenceRates;
const columnsOfRows = ecb.columns as string[]; // the fixture's list of the codes that head `rows`
const tables: readonly RateTable[] = (ecb.rows as string[][]).map(([date = "", ...quotes]) => ({
  date,
  base: "EUR",
  quotes: Object.fromEntries(
    quotes.map((quote, at) => [columnsOfRows[at + (columnsOfRows.length - quotes.length)] ?? "", quote]),
  ),
}));

// Source: European Central Bank reference rates, carried in the fixture; results computed with three other libraries.
describe("cross rates of a published table", () => {
  it.each(ecb.crossRateExamples.rows)("$amount $from of $rateDate is $result $to", (row) => {
    const outcome = converted(
      exact({ amount: row.amount, currency: row.from }),
      row.to,
      tables,
      row.rateDate,
    );
    expect(printed(outcome)).toEqual({ amount: row.result, currency: row.to });
  });

  it("agrees with whole-number fractions over every pair of a day", () => {
    const day = tables.find(({ date }) => date === "2025-03-31");
    const given = Object.entries(day?.quotes ?? {}).map(([code, quote]) => [code, quote ?? ""] as const);
    const quotes = new Map([["EUR", "1"], ...given]);
    for (const [from, fromQuote] of quotes) {
      for (const [to, toQuote] of quotes) {
        const ours = printed(
          converted(exact({ amount: "1234.56", currency: from }), to, tables, "2025-03-31"),
        );
        const theirs = divide(multiply(rational("1234.56"), rational(toQuote)), rational(fromQuote));
        expect(ours.amount).toBe(rounded(theirs, minorDigits(to)));
      }
    }
    expect(quotes.size).toBeGreaterThan(15);
  });
});

// Source: layout of eurofxref-hist.csv as described in the fixture.
describe("a central bank's rate file as published", () => {
  const read = readReferenceRates([ecb.header, ...ecb.edgeRows].join("\n"));
  const got = read.ok ? read.value : [];
  const dated = (date: string) => got.find((table) => table.date === date);

  it("gives a table per row, digit by digit", () => {
    expect(got).toHaveLength(ecb.edgeRows.length);
    expect(dated("2026-04-13")?.quotes).toMatchObject({
      USD: "1.1684",
      JPY: "186.75",
      SEK: "10.892",
      ZAR: "19.3849",
    });
    expect(dated("2018-01-02")?.quotes.THB).toBe("39.115");
  });
  it("leaves out what was not quoted, and retired currencies", () => {
    expect(Object.keys(dated("2026-01-02")?.quotes ?? {})).not.toContain("BGN");
    expect(dated("2025-12-31")?.quotes.BGN).toBe("1.9558");
    expect(Object.keys(dated("1999-01-04")?.quotes ?? {}).filter((code) => !isCurrency(code))).toEqual([]);
    expect(dated("2015-01-16")?.quotes).not.toHaveProperty("ISK");
  });
  it("uses the last earlier table on a day without one (26 December)", () => {
    expect(findRate(got, { from: "EUR", to: "SEK" }, "2025-12-26")).toMatchObject({
      date: "2025-12-24",
      toQuote: "10.8055",
    });
  });
});

// Source: Balinski & Young (1982), Fair Representation; electowiki, "Hamilton method" (1790 census); each row's own.
describe("largest remainder", () => {
  it.each(published.largestRemainder.examples)("$id", ({ total, weights, result }) => {
    const shares = share({ amount: String(total), currency: "JPY" }, Object.values(weights));
    expect(shares.map(({ amount }) => Number(amount))).toEqual(Object.values(result));
  });
  it("keeps thirds of a payment together", () => {
    const third = dividedBy(exact({ amount: "100", currency: "EUR" }), 3);
    expect(printed(third).amount).toBe("33.33");
    expect(share({ amount: "100.00", currency: "EUR" }, [1, 1, 1]).map(({ amount }) => amount)).toEqual([
      "33.34",
      "33.33",
      "33.33",
    ]);
  });
});
