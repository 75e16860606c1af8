import { describe, expect, it } from "vitest";
import {
  agesOf,
  convert,
  Decimal,
  difference,
  dividedBy,
  exact,
  findRate,
  formatMoney,
  isStale,
  multiple,
  plainMoney,
  plus,
  plusTax,
  printed,
  type RateTable,
  readReferenceRates,
  roundMinor,
  share,
  sumMoney,
  times,
} from "../../../src/engine/money/index.ts";

const money = (amount: string, currency = "EUR") => ({ amount, currency });

// Rounding rule: half away from zero, the project's own symmetric reading of Regulation 1103/97, Article 5.
describe("rounding to the minor unit", () => {
  it.each([
    ["JPY", "1.5", "2"],
    ["JPY", "1.49", "1"],
    ["JPY", "-1.5", "-2"],
    ["JPY", "-1.49", "-1"],
    ["EUR", "1.005", "1.01"],
    ["EUR", "1.0049", "1.00"],
    ["EUR", "1.0051", "1.01"],
    ["EUR", "-1.005", "-1.01"],
    ["EUR", "-1.0049", "-1.00"],
    ["KWD", "1.0005", "1.001"],
    ["KWD", "1.00049", "1.000"],
    ["KWD", "-1.0005", "-1.001"],
    ["EUR", "-0.004", "0.00"],
    ["EUR", "900719925474099.995", "900719925474100.00"],
  ])("%s %s is %s", (currency, amount, expected) => {
    expect(printed(exact(money(amount, currency))).amount).toBe(expected);
    expect(roundMinor(new Decimal(amount), currency).eq(expected)).toBe(true);
  });
});

describe("exact amounts", () => {
  it("a third, tripled, is whole again", () => {
    const third = dividedBy(exact(money("10")), 3);
    expect(printed(times(third, 3)).amount).toBe("10.00");
    expect(printed(times(third, "0.3015")).amount).toBe("1.01"); // 1.005 exactly, once multiplied out
  });
  it("adds over different divisors", () => {
    expect(printed(plus(dividedBy(exact(money("1")), 3), dividedBy(exact(money("1")), 6))).amount).toBe(
      "0.50",
    );
  });
  it("adds tax as a fraction of itself", () => {
    expect(printed(plusTax(exact(money("10.00")), "0.255")).amount).toBe("12.55");
    expect(printed(plusTax(exact(money("10.00")), null)).amount).toBe("10.00");
  });
  it("refuses to add two currencies or to divide by nought", () => {
    expect(() => plus(exact(money("1")), exact(money("1", "SEK")))).toThrow(RangeError);
    expect(() => dividedBy(exact(money("1")), 0)).toThrow(RangeError);
  });
  it("sums, differs and multiplies printed figures", () => {
    expect(sumMoney("KWD", [money("1.005", "KWD"), money("2.1", "KWD")])).toEqual(money("3.105", "KWD"));
    expect(sumMoney("JPY", [])).toEqual(money("0", "JPY"));
    expect(difference(money("1.00"), money("3.50"))).toEqual(money("-2.50"));
    expect(multiple(money("4.90"), 3)).toEqual(money("14.70"));
  });
});

const tables: readonly RateTable[] = [
  { date: "2026-04-30", base: "EUR", quotes: { SEK: "11.10" } },
  { date: "2026-03-31", base: "EUR", quotes: { SEK: "11.0250", JPY: "163.45" } },
  { date: "2026-03-31", base: "EUR", quotes: { SEK: "11.0300" } },
  { date: "2026-05-01", base: "EUR", quotes: { SEK: "99", JPY: "99" } },
];
const to = (amount: ReturnType<typeof money>, currency: string, on = "2026-04-30", rates = tables) =>
  convert(exact(amount), currency, { rates, on, place: "kits[0]" });

describe("the table that converts", () => {
  it.each([
    { from: "EUR", into: "SEK", on: "2026-04-30", date: "2026-04-30", why: "dated the very day" },
    { from: "EUR", into: "SEK", on: "2026-04-29", date: "2026-03-31", why: "the last one before" },
    { from: "JPY", into: "SEK", on: "2026-04-30", date: "2026-03-31", why: "the newest that has both" },
    { from: "EUR", into: "SEK", on: "2026-05-01", date: "2026-05-01", why: "never a later one" },
  ])("$from to $into on $on: $date, $why", ({ from, into, on, date }) => {
    expect(findRate(tables, { from, to: into }, on)?.date).toBe(date);
  });
  it("is the later in the file of two of one day", () => {
    expect(findRate(tables, { from: "EUR", to: "SEK" }, "2026-04-01")?.toQuote).toBe("11.0300");
  });
  it("goes through the base both ways, dividing rather than by an inverse rate", () => {
    const crossed = to(money("16345", "JPY"), "SEK", "2026-03-31");
    expect(crossed.ok && printed(crossed.value.amount)).toEqual(money("1102.50", "SEK"));
    const back = to(money("11.10", "SEK"), "EUR");
    expect(back.ok && printed(back.value.amount)).toEqual(money("1.00"));
  });
  it("needs no table for the same currency", () => {
    const same = to(money("5.405"), "EUR", "2026-04-30", []);
    expect(same.ok && [printed(same.value.amount).amount, same.value.rate]).toEqual(["5.41", null]);
  });
  it.each([
    {
      amount: money("1", "USD"),
      on: "2026-04-30",
      problem: "there is no exchange rate for USD on or before 2026-04-30",
    },
    {
      amount: money("1"),
      on: "2026-01-01",
      problem: "there is no exchange rate for EUR and SEK on or before 2026-01-01",
    },
  ])("never takes 1:1: $problem", ({ amount, on, problem }) => {
    expect(to(amount, "SEK", on)).toEqual({
      ok: false,
      fault: {
        place: "kits[0]",
        problem,
        remedy: `add a rate table dated on or before ${on} with SEK and ${amount.currency}`,
      },
    });
  });
  it("says so where no one table has both", () => {
    const apart = [
      { date: "2026-01-01", base: "EUR", quotes: { SEK: "11" } },
      { date: "2026-01-02", base: "EUR", quotes: { JPY: "160" } },
    ];
    const outcome = to(money("1", "JPY"), "SEK", "2026-04-30", apart);
    expect(outcome.ok ? "" : outcome.fault.problem).toBe(
      "no one rate table dated on or before 2026-04-30 has both JPY and SEK",
    );
  });
  it("takes no quote from an object's own parts", () => {
    expect(to(money("1", "constructor"), "SEK").ok).toBe(false);
  });
});

describe("how old rates are", () => {
  it.each([
    { date: "2026-04-23", stale: false },
    { date: "2026-04-22", stale: true },
    { date: "2026-04-30", stale: false },
  ])("a table of $date on 30 April is stale: $stale", ({ date, stale }) => {
    expect(isStale(date, "2026-04-30")).toBe(stale);
  });
  it("the oldest table used counts; none used, none to name", () => {
    const used = [
      findRate(tables, { from: "EUR", to: "SEK" }, "2026-04-30"),
      findRate(tables, { from: "JPY", to: "EUR" }, "2026-04-30"),
    ];
    expect(
      agesOf(
        used.flatMap((use) => use ?? []),
        "2026-04-30",
      ),
    ).toEqual({ ratesOf: "2026-03-31", staleRates: true });
    expect(agesOf([], "2026-04-30")).toEqual({ ratesOf: null, staleRates: false });
  });
});

describe("sharing out", () => {
  it.each([
    { total: money("0.05"), weights: [1, 1], shares: ["0.03", "0.02"] },
    { total: money("10", "JPY"), weights: ["0.5", "0.3", "0.21"], shares: ["5", "3", "2"] },
    { total: money("0.005", "KWD"), weights: [3, 7], shares: ["0.002", "0.003"] },
    { total: money("-0.05"), weights: [1, 1], shares: ["-0.03", "-0.02"] },
    { total: money("0.00"), weights: [1, 2], shares: ["0.00", "0.00"] },
  ])("$total.amount $total.currency by $weights", ({ total, weights, shares }) => {
    expect(share(total, weights).map(({ amount }) => amount)).toEqual(shares);
  });
  it("refuses what cannot be shared", () => {
    expect(() => share(money("1.005"), [1])).toThrow(RangeError);
    expect(() => share(money("1.00"), [0, 0])).toThrow(RangeError);
    expect(() => share(money("1.00"), [-1, 2])).toThrow(RangeError);
    expect(() => share(money("1.00"), [])).toThrow(RangeError);
  });
});

describe("money for people", () => {
  it.each([
    [money("1234.5"), "en-IE", "€1,234.50"],
    [money("1234.5", "JPY"), "en-IE", "JP¥1,235"],
    [money("4", "KWD"), "en-IE", "KWD\u00a04.000"],
    // Intl alone would print no decimals for the forint; ISO 4217 gives it two.
    [money("4", "HUF"), "en-IE", "HUF\u00a04.00"],
    [money("-5.5", "SEK"), "sv-SE", "\u22125,50\u00a0kr"],
    [money("900719925474099.91"), "en-IE", "€900,719,925,474,099.91"],
  ])("%o in %s is %s", (amount, locale, text) => {
    expect(formatMoney(amount, locale)).toBe(text);
  });
  it("in plain words has at least the minor unit, and more only as given", () => {
    expect(plainMoney(money("5.4"))).toBe("EUR 5.40");
    expect(plainMoney(money("5.405"))).toBe("EUR 5.405");
    expect(plainMoney(money("540", "JPY"))).toBe("JPY 540");
  });
});

describe("reading a rate file", () => {
  it("reads a daily file too, with a long date and spaces", () => {
    const read = readReferenceRates(
      "\uFEFFDate, USD, JPY, SEK, \r\n30 April 2026, 1.1684, 186.75, 10.892, \r\n",
    );
    expect(read).toEqual({
      ok: true,
      value: [
        {
          date: "2026-04-30",
          base: "EUR",
          quotes: { USD: "1.1684", JPY: "186.75", SEK: "10.892" },
          source: "Reference rates of a central bank",
        },
      ],
    });
  });
  it("takes another base and source, and passes over the base's own column", () => {
    const read = readReferenceRates("Date,SEK,EUR\n2026-04-30,1,0.09", { base: "SEK", source: "Own bank" });
    expect(read.ok && read.value[0]).toMatchObject({
      base: "SEK",
      quotes: { EUR: "0.09" },
      source: "Own bank",
    });
    expect(read.ok && Object.keys(read.value[0]?.quotes ?? {})).toEqual(["EUR"]);
  });
  it("lists every fault with its line and column", () => {
    const read = readReferenceRates("Date,USD,SEK\n2026-02-30,1,2\n2026-04-30,zero,0.0\n2026-05-01,1.1,11");
    expect(read.ok ? [] : read.faults.map(({ place, problem }) => [place, problem])).toEqual([
      ["line 2", '"2026-02-30" is no date'],
      ["line 3, USD", '"zero" is no rate'],
      ["line 3, SEK", '"0.0" is no rate'],
    ]);
  });
  it.each([
    ["", "line 1"],
    ["Day,USD\n2026-04-30,1", "line 1"],
    ["Date,moss,fern\n2026-04-30,1,2", "line 1"],
    ["Date,USD,USD\n2026-04-30,1,2", "line 1"],
  ])("refuses %j", (text, place) => {
    const read = readReferenceRates(text);
    expect(read.ok ? null : read.fault.place).toBe(place);
  });
});
