import { describe, expect, it } from "vitest";
import type { RateTable } from "../../src/engine/money/index.ts";
import {
  emptyWorkbook,
  readWorkbook,
  type Workbook,
  writeWorkbook,
} from "../../src/engine/workbook/index.ts";
import {
  marketsLead,
  parcelCounts,
  parcelRows,
  pricesFound,
  shopRows,
} from "../../src/ui/markets/view/lists.ts";
import { marketId } from "../../src/ui/markets/view/names.ts";
import { readQuote, readRateDraft } from "../../src/ui/markets/view/new-rates.ts";
import { keptDays, rateText, readRateFile, tableOn } from "../../src/ui/markets/view/rate-file.ts";
import { currenciesInUse, kitNotices, oddRates, rateRows } from "../../src/ui/markets/view/rates.ts";
import { originsAfter, ruleText, ruleTexts, withRule } from "../../src/ui/markets/view/rules.ts";
import { formatter } from "../../src/ui/words/index.ts";
import { named, sampleBook } from "./sample.ts";

const format = formatter("en-GB");
const nb = "\u00a0";

describe("border rules in words", () => {
  const book = sampleBook();

  it("say from where, what, above what, and on what", () => {
    expect(ruleTexts(named(book.markets, "se"), book, format)).toEqual([
      "From Ireland: nothing is charged.",
      `From anywhere else: duty 3 % above SEK${nb}1,500.00, tax 25 %, a fee of SEK${nb}75.00 when either is due, counted on the goods and the postage.`,
    ]);
  });

  it("say nothing of what is left out", () => {
    expect(ruleText({}, book, format)).toBe("From anywhere else: nothing is charged.");
    expect(ruleText({ from: [], taxRate: "0.125" }, book, format)).toBe(
      "From no market yet: tax 12.5 %, counted on the goods.",
    );
  });

  it("change one field and keep the rest, unknown ones too", () => {
    const market = named(book.markets, "se");
    const next = withRule(market, 1, { dutyFreeUpTo: undefined, taxRate: "0.2" });
    expect(next[0]).toEqual(market.import?.[0]);
    expect(next[1]).toMatchObject({ taxRate: "0.2", dutyRate: "0.03", note: market.import?.[1]?.note });
    expect(next[1]).not.toHaveProperty("dutyFreeUpTo");
  });

  it("tick markets in the workbook's order", () => {
    const markets = book.markets ?? [];
    expect(originsAfter({ from: ["jp"] }, markets, "ie", true)).toEqual(["ie", "jp"]);
    expect(originsAfter({ from: ["jp"] }, markets, "jp", false)).toEqual([]);
    expect(originsAfter({ from: "any" }, markets, "jp", true)).toEqual(["jp"]);
  });
});

describe("rates", () => {
  it("show what is in use first, every digit as it was written", () => {
    const [newest] = rateRows(sampleBook(), format);
    expect(newest).toMatchObject({
      date: "30 Apr 2026",
      quotes: `JPY${nb}164.10, KWD${nb}0.35640, SEK${nb}11.0250`,
    });
  });

  it("count the rest", () => {
    const rates = [{ date: "2026-01-01", base: "EUR", quotes: { SEK: "11", USD: "1.1", CHF: "0.9" } }];
    expect(rateRows({ ...sampleBook(), rates }, format)[0]?.quotes).toBe(`SEK${nb}11, and 2 more`);
    expect(rateRows({ ...emptyWorkbook(), rates }, format)[0]?.quotes).toBe("3 currencies, none in use");
  });

  it("know every currency that anything is priced in", () => {
    expect(currenciesInUse(sampleBook())).toEqual(expect.arrayContaining(["EUR", "JPY", "KWD", "SEK"]));
    expect(currenciesInUse(emptyWorkbook())).toEqual([]);
  });

  it("notice a kit without rates, and one whose rates are more than a week old", () => {
    const book = sampleBook();
    // 30 Nov 2025 is 30 days after the table of 31 Oct: the sample leaves one out on purpose
    expect(kitNotices(book, format)).toEqual([
      "Lamp in the boathouse counts prices as of 30 Nov 2025, but the newest rates before that are of 31 Oct 2025.",
    ]);
    const bare = kitNotices({ ...book, rates: [] }, format);
    expect(bare).toHaveLength(book.kits?.length ?? 0);
    expect(bare[0]).toContain("no rates reach it for SEK");
  });

  it("notice an odd one with its day", () => {
    const rates = [
      { date: "2026-01-01", base: "EUR", quotes: { SEK: "11.0" } },
      { date: "2026-02-01", base: "EUR", quotes: { SEK: "110" } },
      { date: "2099-02-01", base: "EUR", quotes: { SEK: "110" } },
    ];
    const odd = oddRates({ ...sampleBook(), rates }, "2026-05-01", format);
    expect(odd).toHaveLength(2);
    expect(odd.join(" ")).toContain("1 Feb 2026: SEK 110 is far from 11");
    expect(odd.join(" ")).toContain("1 Feb 2099: 2099-02-01 is still to come");
  });
});

describe("a file of rates", () => {
  // The layout of the published files: eurofxref.csv and eurofxref-hist.csv of the European Central Bank.
  const csv =
    "Date,USD,JPY,SEK,CYP,\n2026-05-04,1.0812,164.20,11.0310,N/A,\n2026-04-30,1.0799,164.10,11.0250,N/A,\n" +
    "2026-02-27,1.0750,168.70,10.9870,N/A,\n2026-02-26,1.0744,168.10,N/A,N/A,\n";
  const read = readRateFile(csv, "EUR", "eurofxref-hist.csv");
  const tables = read.ok ? read.tables : [];
  const book = sampleBook();

  it("is read with its source", () => {
    expect(tables).toHaveLength(4);
    expect(tables[3]).toEqual({
      date: "2026-02-26",
      base: "EUR",
      quotes: { USD: "1.0744", JPY: "168.10" },
      source: "eurofxref-hist.csv",
    });
  });

  it("keeps the newest day and those that kits need, newest first, each with its reason", () => {
    const days = keptDays(tables, { ...book, rates: [] }, [], format);
    expect(days.map(({ row }) => row.table.date)).toEqual(["2026-05-04", "2026-04-30", "2026-02-27"]);
    expect(days[0]?.why).toBe("the newest");
    expect(days[1]?.why).toBe("for Low light, ebb tide");
    expect(days[2]?.why).toBe("for Slow thaw and Harbour before rain");
  });

  it("leaves out a day that is no nearer to a kit's date than what is here", () => {
    const days = keptDays(tables, book, [], format); // the sample has 27 Feb, 31 Mar and 30 Apr 2026 itself
    expect(days.map(({ row }) => row.table.date)).toEqual(["2026-05-04"]);
  });

  it("takes the newest on or before a day asked for, and says when there is none", () => {
    expect(keptDays(tables, book, ["2026-05-03"], format)[1]?.why).toContain("asked for");
    expect(tableOn(tables, "2026-02-25")).toBeNull();
    expect(tableOn(tables, "2026-03-15")?.date).toBe("2026-02-27");
  });

  it("tells new days from the same and from those that would be replaced", () => {
    const own: readonly RateTable[] = [
      { date: "2026-05-04", base: "EUR", quotes: { SEK: "11.0310", USD: "1.0812", JPY: "164.20" } },
      { date: "2026-04-30", base: "EUR", quotes: { SEK: "11.0250" } },
      { date: "2026-02-27", base: "USD", quotes: { SEK: "10" } },
    ];
    const wished = ["2026-04-30", "2026-02-27"];
    const days = keptDays(tables, { ...book, rates: [...own] }, wished, format);
    expect(days.map(({ stands }) => stands)).toEqual(["same", "other", "new"]);
  });

  it("is refused with every fault at its line", () => {
    const bad = readRateFile("Date,USD\n2026-13-01,1.1\n2026-01-02,x\n", "EUR", "f");
    expect(bad.ok ? [] : bad.faults.map(({ place }) => place)).toEqual(["line 2", "line 3, USD"]);
    expect(readRateFile("Date,USD\n2026-01-02,N/A\n", "EUR", "f")).toMatchObject({
      ok: false,
      faults: [{ place: "file" }],
    });
  });

  it("is refused packed or too large", () => {
    const zip = new Uint8Array([0x50, 0x4b, 0x03, 0x04, 0xff, 0xfe]); // a zip's first bytes, then no UTF-8
    expect(rateText(zip.buffer)).toMatchObject({ ok: false, faults: [{ place: "file" }] });
    expect(rateText(new ArrayBuffer(20_000_001))).toMatchObject({ ok: false });
    expect(rateText(new TextEncoder().encode("\uFEFFDate").buffer)).toEqual({ text: "Date" });
  });
});

describe("a day's rates by hand", () => {
  it.each([
    ["11.0250", "11.0250"],
    ["11,0250", "11.0250"],
    ["1 234,5", "1234.5"],
    ["", null],
    ["0", null],
    ["-1", null],
    ["1,234", null],
    ["x", null],
  ])("reads %j as %j", (typed, value) => expect(readQuote(typed).value).toBe(value));

  const draft = {
    date: "2026-05-01",
    base: "EUR",
    quotes: new Map([
      ["SEK", "11,02"],
      ["JPY", ""],
    ]),
    source: " bank ",
  };

  it("makes a table that a workbook takes", () => {
    const read = readRateDraft(draft);
    expect(read).toEqual({
      ok: true,
      table: { date: "2026-05-01", base: "EUR", quotes: { SEK: "11.02" }, source: "bank" },
    });
    if (read.ok)
      expect(readWorkbook(writeWorkbook({ ...emptyWorkbook(), rates: [read.table] })).ok).toBe(true);
  });

  it("names the field at fault", () => {
    const faults = (change: object) => {
      const read = readRateDraft({ ...draft, ...change });
      return read.ok ? [] : [...read.faults.keys()];
    };
    expect(faults({ date: null })).toEqual(["date"]);
    expect(faults({ quotes: new Map([["SEK", "1,234"]]) })).toEqual(["SEK"]);
    expect(faults({ quotes: new Map() })).toEqual(["quotes"]);
    expect(faults({ date: null, quotes: new Map() })).toEqual(["date", "quotes"]);
    expect(faults({ quotes: new Map([["EUR", "1"]]) })).toEqual(["quotes"]);
  });
});

describe("the lists", () => {
  const book = sampleBook();

  it("print shops", () => {
    expect(shopRows(book, format)[0]).toMatchObject({
      market: "Sweden",
      postage: `SEK${nb}49.00`,
      free: `SEK${nb}500.00`,
      abroad: "Ireland",
    });
    expect(shopRows(book, format)[3]).toMatchObject({ free: "never", abroad: "only at home" });
  });

  it("print parcels newest first, and how often the border charged", () => {
    const rows = parcelRows(book, format);
    expect(rows[0]).toMatchObject({ date: "20 Feb 2026", way: "Ireland to Sweden", charged: "nothing" });
    expect(parcelCounts(book)).toEqual([
      "Japan: 2 of 3 parcels charged.",
      "Ireland: 0 of 2 parcels charged.",
    ]);
    expect(parcelRows({ ...book, parcels: [{ id: "x" }] }, format)[0]).toMatchObject({
      date: "not said",
      charged: "not written down",
    });
  });

  it("count the prices found in a shop or a market", () => {
    const all = (book.kits ?? [])
      .flatMap(({ lines }) => lines ?? [])
      .flatMap(({ evidence }) => evidence ?? []);
    expect(pricesFound(book, { market: "se" })).toBe(all.filter(({ market }) => market === "se").length);
    expect(pricesFound(book, { shop: "sh-lj" })).toBe(all.filter(({ shop }) => shop === "sh-lj").length);
    expect(pricesFound(book, { shop: "sh-lj" })).toBeGreaterThan(0);
  });

  it("sum up the page", () => {
    expect(marketsLead(book, format)).toEqual({
      lead: "Worth is counted for Sweden, Ireland and Japan.",
      more: "Rates reach to 30 Apr 2026. One kit lacks good rates.",
    });
    expect(marketsLead(emptyWorkbook(), format)).toEqual({
      lead: "No market yet: worth needs one to be counted for.",
      more: "There are no exchange rates yet.",
    });
  });
});

describe("a new market's id", () => {
  const markets: Workbook["markets"] = [{ id: "sweden", name: "Sweden", currency: "SEK" }];
  it.each([
    ["Sweden", "sweden-2"],
    ["Åland Islands", "aland-islands"],
    ["日本", "market"],
    ["__proto__", "proto"],
    ["a/b", "a-b"],
  ])("of %s is %s", (name, id) => expect(marketId(name, markets)).toBe(id));
});
