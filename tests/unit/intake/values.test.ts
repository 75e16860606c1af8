import { describe, expect, it } from "vitest";
import { isHex, readColourCell, readHexCell } from "../../../src/engine/intake/read/colour.ts";
import { readCount } from "../../../src/engine/intake/read/count.ts";
import { dayOrder, readDay } from "../../../src/engine/intake/read/day.ts";
import { isMoney, readMoney } from "../../../src/engine/intake/read/money.ts";
import { decimalSign, readFigure } from "../../../src/engine/intake/read/number.ts";
import { readGtin, readState, readTags } from "../../../src/engine/intake/read/words.ts";
import { wordsIn } from "../../../src/engine/intake/words/index.ts";

const words = wordsIn.en;

// How decimals are written: common practice, no source. The decimal signs: ISO 80000-1, 7.3.2 (comma or point).
describe("figures", () => {
  it.each([
    ["12", null, "12", false],
    ["39,50", null, "39.50", false],
    ["39.50", null, "39.50", false],
    ["1.234,50", null, "1234.50", false],
    ["1,234.50", null, "1234.50", false],
    ["1 234,50", null, "1234.50", false],
    ["1'234.50", null, "1234.50", false],
    ["1 234 567", null, "1234567", false],
    ["1.234.567", null, "1234567", false],
    ["1,234", null, "1234", true],
    ["1,234", ".", "1234", false],
    ["1,234", ",", "1.234", false],
    ["0,125", null, "0.125", false],
    ["007", null, "7", false],
  ] as const)("%s where the column's sign is %s is %s", (text, sign, expected, unsure) =>
    expect(readFigure(text, sign)).toEqual({ text: expected, unsure }),
  );
  it.each(["-3", "abc", "1,2,3", "1.2.3", "", "NaN", "1e400", "Infinity"])("%j is no figure", (text) =>
    expect(readFigure(text, null)).toBeNull(),
  );
  it.each([
    [0.1 + 0.2, "0.3"],
    [39.5, "39.5"],
    [12, "12"],
    [1e-9, "0"],
  ])("the number %d is %s, without a float's noise", (value, text) =>
    expect(readFigure(value, null)?.text).toBe(text),
  );
  it.each([Number.NaN, Number.POSITIVE_INFINITY, -1, 1e21])("the number %d is none", (value) =>
    expect(readFigure(value, null)).toBeNull(),
  );
  it("tells a column's sign by its first plain cell", () => {
    expect(decimalSign(["1,234", "12,5"])).toBe(",");
    expect(decimalSign(["1,234", "12.5"])).toBe(".");
    expect(decimalSign(["1,234.50"])).toBe(".");
    expect(decimalSign(["1,234", "7", null, 3])).toBeNull();
  });
});

describe("days", () => {
  const day = (text: string | number, order: "day" | "month" | null = null) =>
    readDay(text, order, "2026-05-01", words);
  // ISO 8601 for the first; the others as people write, common practice, no source.
  it.each([
    ["2024-11-02", "2024-11-02"],
    ["2024-11-02T10:15:00Z", "2024-11-02"],
    ["2024-11-02 10:15", "2024-11-02"],
    ["20241102", "2024-11-02"],
    ["2024/1/2", "2024-01-02"],
    ["2.11.2024", "2024-11-02"],
    ["2-11-2024", "2024-11-02"],
    ["25/12/2024", "2024-12-25"],
    ["2 November 2024", "2024-11-02"],
    ["den 2 maj 2024", "2024-05-02"],
    ["2 okt. 2024", "2024-10-02"],
    ["Nov 2, 2024", "2024-11-02"],
    ["2nd Mar 2024", "2024-03-02"],
  ])("%s is %s", (text, date) => expect(day(text, dayOrder([text]))).toEqual({ value: date, doubt: null }));
  it("is doubtful where day and month could change places", () => {
    expect(day("3/11/2024")).toEqual({ value: "2024-11-03", doubt: "read as 2024-11-03, the day first" });
    expect(day("3/11/2024", "month")).toEqual({ value: "2024-03-11", doubt: null });
    expect(dayOrder(["3/11/2024", "4/25/2024"])).toBe("month");
  });
  it("is doubtful with two figures for the year, as a spreadsheet's count, and when still to come", () => {
    expect(day("2.11.24").doubt).toBe("read as 2024-11-02");
    // 45598 is 2 November 2024 in the date system of ECMA-376, 18.17.4.1 (1900 base).
    expect(day(45598)).toEqual({ value: "2024-11-02", doubt: "read as 2024-11-02" });
    expect(day("2026-05-02").doubt).toBe("2026-05-02 is still to come");
  });
  it.each(["2024-02-30", "31.4.2024", "someday", "2024", "13/13/2024", 7])("%s is no day", (text) =>
    expect(day(text).value).toBeNull(),
  );
});

describe("money", () => {
  const money = (text: string | number, home = "SEK", named: string | null = null) =>
    readMoney(text, { sign: null, home }, named, words);
  it.each([
    ["39,50", "39.50", "SEK"],
    ["39:-", "39", "SEK"],
    ["39,50 kr", "39.50", "SEK"],
    ["kr 39", "39", "SEK"],
    ["€12.50", "12.50", "EUR"],
    ["12,50 €", "12.50", "EUR"],
    ["EUR 5", "5", "EUR"],
    ["£3", "3", "GBP"],
    [39.5, "39.5", "SEK"],
    ["0", "0", "SEK"],
  ] as const)("%s is %s %s", (text, amount, currency) =>
    expect(money(text)).toEqual({ value: { amount, currency }, doubt: null }),
  );
  it("takes the row's own currency, and the home's where a sign is shared", () => {
    expect(money("5", "SEK", "JPY").value?.currency).toBe("JPY");
    expect(money("5 kr", "NOK")).toEqual({ value: { amount: "5", currency: "NOK" }, doubt: null });
    expect(money("$5", "CAD").value?.currency).toBe("CAD");
    expect(money("5 kr", "EUR").doubt).toBe("taken as SEK");
    expect(money("1,234").doubt).toBe("read as 1234");
  });
  it.each(["-5", "five", "5 apples", "free", "kr"])("%s is no money", (text) =>
    expect(money(text).value).toBeNull(),
  );
  it("knows money by its currency only", () => {
    expect(isMoney("5 kr")).toBe(true);
    expect(isMoney("5")).toBe(false);
    expect(isMoney("5 ml")).toBe(false);
  });
});

describe("colours", () => {
  it.each([
    ["#6B7D3A", "#6b7d3a"],
    ["6b7d3a", "#6b7d3a"],
    ["#abc", "#aabbcc"],
    ["rgb(107, 125, 58)", "#6b7d3a"],
    ["107,125,58", "#6b7d3a"],
  ])("%s is %s", (text, hex) => expect(readHexCell(text, words).value).toEqual({ hex, from: "typed" }));
  it("keeps Lab as Lab, under D65", () =>
    expect(readHexCell("lab(50 -12 30)", words).value).toEqual({
      lab: [50, -12, 30],
      white: "D65",
      from: "typed",
    }));
  it("gives back the noughts that a spreadsheet took, and says so", () =>
    expect(readHexCell(1234, words)).toEqual({
      value: { hex: "#001234", from: "typed" },
      doubt: "read as #001234",
    }));
  it("takes a word for what it brings to mind, which nobody typed", () =>
    expect(readColourCell("moss").value).toEqual({ name: "moss", hex: "#769958" }));
  it.each(["rgb(300,0,0)", "zzz", "#12345", "300"])("%s is no colour", (text) =>
    expect(readHexCell(text, words).value).toBeNull(),
  );
  it("a number of the maker's is no hex", () => {
    expect(isHex("123456")).toBe(false);
    expect(isHex("6b7d3a")).toBe(true);
  });
});

describe("counts, states, codes and tags", () => {
  it.each([
    ["2", 2],
    ["2 st", 2],
    ["x3", 3],
    ["3 pcs.", 3],
    ["1,000", 1000],
    [0, 0],
    [2.0, 2],
  ] as const)("%s are %d", (text, count) => expect(readCount(text, words).value).toBe(count));
  it.each(["1.5", "-1", "a few", "1000000", 1.5, Number.NaN])("%s is no count", (text) =>
    expect(readCount(text, words).value).toBeNull(),
  );
  it.each([
    ["Running low", "low"],
    ["uttorkad", "dried"],
    ["SLUT", "empty"],
    ["Ny", "ok"],
  ])("%s is %s", (text, state) => expect(readState(text, words).value).toBe(state));
  // Source: GS1, the example of the check digit calculation, 629104150021 -> 3.
  it("a GTIN with the right last digit is sure, with another it is doubtful", () => {
    expect(readGtin("6291041500213", words)).toEqual({ value: "6291041500213", doubt: null });
    expect(readGtin("6291041500214", words).doubt).toMatch(/last digit/);
    expect(readGtin("4.00639E+12", words).value).toBeNull();
  });
  it("tags have no # and no space around", () =>
    expect(readTags("#blue, warm ; ,#x")).toEqual(["blue", "warm", "x"]));
});
