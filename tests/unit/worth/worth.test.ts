import { describe, expect, expectTypeOf, it } from "vitest";
import type { Workbook } from "../../../src/engine/workbook/index.ts";
import {
  cardTotals,
  type Kit,
  type MarketWorth,
  parcelsFrom,
  passingOf,
  reportedMarkets,
  type TierWorth,
  valueKit,
  type WorthBook,
  withoutBorder,
  worthOf,
} from "../../../src/engine/worth/index.ts";
import { book, eur, guessed, jpy, kit, kwd, line, market, markets, rates, sek, tier } from "./book.ts";

/** The worth of a kit in one market; throws with the fault where there is one. */
function inMarket(only: Kit, id = "ie", more: Partial<WorthBook> = {}): MarketWorth {
  const outcome = worthOf(book(only, more), only, [id]);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  const [first] = outcome.value.markets;
  if (!first) throw new Error("no market");
  return first;
}
function oneTier(only: Kit, id = "ie", more: Partial<WorthBook> = {}): TierWorth {
  const [first] = inMarket(only, id, more).tiers;
  if (!first) throw new Error("no tier");
  return first;
}

it("a workbook is what worth needs", () => {
  expectTypeOf<Workbook>().toExtend<WorthBook>();
});

// Figures worked out by hand; the rules are the project's own (docs: what a kit is worth).
describe("contents", () => {
  it("a unit price is rounded, then multiplied; totals are sums of the printed lines", () => {
    const lines = [line("l1", eur("4.90"), { qty: 2 }), line("l2", eur("0.33"), { qty: 3 })];
    expect(inMarket(kit({ lines }), "se")).toMatchObject({
      currency: "SEK",
      lines: [
        // 4.90 × 11.0250 = 54.0225, 0.33 × 11.0250 = 3.63825
        { line: "l1", qty: 2, listEach: sek("54.02"), list: sek("108.04"), street: sek("108.04") },
        {
          line: "l2",
          qty: 3,
          listEach: sek("3.64"),
          list: sek("10.92"),
          listMethod: "converted",
          streetMethod: "list",
        },
      ],
      listTotal: sek("118.96"),
      listLow: sek("118.96"),
      listHigh: sek("118.96"),
      streetTotal: sek("118.96"),
      unpriced: [],
    });
  });
  it.each([
    { id: "jp", total: jpy("801") },
    { id: "ie", total: eur("4.90") },
    { id: "kw", total: kwd("1.647") },
  ])("in $id with its own minor unit: $total.amount", ({ id, total }) => {
    expect(inMarket(kit({ lines: [line("l1", eur("4.90"))] }), id).listTotal).toEqual(total);
  });
  it("what one would use: each street line × want, rounded, then summed", () => {
    const lines = [
      line("l1", eur("0.05"), { want: "0.5" }),
      line("l2", eur("0.05"), { want: "0.5" }),
      line("l3", eur("1"), { want: "0" }),
    ];
    expect(inMarket(kit({ lines })).wantedTotal).toEqual(eur("0.06"));
  });
  it("a line without a price is null and named; totals are over the others", () => {
    const shopOnly = line("l2", null, {
      evidence: [{ id: "e1", kind: "shop", price: eur("3"), market: "ie", date: "2026-04-30" }],
    });
    const lines = [line("l1", eur("5")), shopOnly, line("l3", null)];
    expect(inMarket(kit({ lines }))).toMatchObject({
      lines: [
        {},
        { listEach: null, list: null, listMethod: null, street: eur("3.00") },
        { list: null, street: null },
      ],
      listTotal: eur("5.00"),
      streetTotal: eur("8.00"),
      unpriced: ["l2", "l3"],
    });
  });
  it("a kit of nothing comes to nothing", () => {
    expect(inMarket(kit({ lines: null, tiers: null }), "jp")).toEqual({
      market: "jp",
      currency: "JPY",
      lines: [],
      listTotal: jpy("0"),
      listLow: jpy("0"),
      listHigh: jpy("0"),
      streetTotal: jpy("0"),
      streetLow: jpy("0"),
      streetHigh: jpy("0"),
      wantedTotal: jpy("0"),
      unpriced: [],
      tiers: [],
    });
  });
});

describe("what one kit costs", () => {
  const cost = (more: Parameters<typeof tier>[0], id = "ie", kitMore: Partial<Kit> = {}) => {
    const { goods, postage, kitCost } = oneTier(kit({ tiers: [tier(more)], ...kitMore }), id);
    return [goods.amount, postage.amount, kitCost.amount];
  };
  it.each([
    { why: "price and postage", tier: { postagePerKit: eur("5.50") }, is: ["24.00", "5.50", "29.50"] },
    {
      why: "price and fee less discount, shared by its kits",
      tier: { kits: 3, price: eur("66"), feeOnce: eur("4"), discount: eur("0.01") },
      is: ["23.33", "0.00", "23.33"],
    },
    {
      why: "postage is per kit already",
      tier: { kits: 12, price: eur("240"), postagePerKit: eur("5.50") },
      is: ["20.00", "5.50", "25.50"],
    },
    {
      why: "tax on both, each rounded",
      tier: { plusTax: "0.23", price: eur("19.99"), postagePerKit: eur("4.05") },
      is: ["24.59", "4.98", "29.57"],
    },
    {
      why: "tax on what the discount leaves",
      tier: { plusTax: "0.25", feeOnce: eur("2"), discount: eur("6") },
      is: ["25.00", "0.00", "25.00"],
    },
    {
      why: "a half is rounded away from nought",
      tier: { kits: 8, price: eur("1.00") },
      is: ["0.13", "0.00", "0.13"],
    },
    {
      why: "postage to this market",
      tier: { postagePerKit: eur("5.50"), postageTo: { ie: eur("14"), jp: eur("1") } },
      is: ["24.00", "14.00", "38.00"],
    },
    {
      why: "free postage to this market",
      tier: { postagePerKit: eur("5.50"), postageTo: { ie: eur("0") } },
      is: ["24.00", "0.00", "24.00"],
    },
    {
      why: "amounts in several currencies",
      tier: { feeOnce: sek("11.025"), discount: jpy("163.45") },
      is: ["24.00", "0.00", "24.00"],
    },
  ])("$why", ({ tier: more, is }) => {
    expect(cost(more)).toEqual(is);
  });
  it.each([
    { id: "se", is: ["264.60", "60.64", "325.24"] },
    { id: "jp", is: ["3923", "899", "4822"] },
    { id: "kw", is: ["8.068", "1.849", "9.917"] },
  ])("converted, then rounded once: $id", ({ id, is }) => {
    expect(cost({ postagePerKit: eur("5.50") }, id)).toEqual(is);
  });
  it("converts before it shares: EUR 10 for three kits is SEK 36.75 each", () => {
    expect(cost({ kits: 3, price: eur("10") }, "se")[0]).toBe("36.75");
  });
  it("nothing in money without a rate is nothing all the same", () => {
    expect(
      cost({
        discount: { amount: "0", currency: "NOK" },
        postagePerKit: { amount: "0.00", currency: "NOK" },
      }),
    ).toEqual(["24.00", "0.00", "24.00"]);
  });
  it("takes no postage from an object's own parts", () => {
    const only = kit({ tiers: [tier({ postageTo: {} })] });
    const odd = [market("constructor", "EUR")];
    expect(oneTier(only, "constructor", { markets: odd }).postage).toEqual(eur("0.00"));
  });
  it("a tier not offered in a market is left out there; one that names none is offered everywhere", () => {
    const tiers = [
      tier({ id: "t1", markets: ["se"] }),
      tier({ id: "t2" }),
      tier({ id: "t3", markets: ["ie", "se"] }),
    ];
    expect(inMarket(kit({ tiers })).tiers.map((row) => row.tier)).toEqual(["t2", "t3"]);
    expect(inMarket(kit({ tiers }), "se").tiers.map((row) => row.tier)).toEqual(["t1", "t2", "t3"]);
  });
});

describe("gains and ratios", () => {
  it("total less cost, total over cost, and how much of it pays", () => {
    const lines = [line("l1", eur("30"), { want: "0.5" })];
    expect(oneTier(kit({ lines, tiers: [tier()] }))).toMatchObject({
      listGain: eur("6.00"),
      streetGain: eur("6.00"),
      wantedGain: eur("-9.00"),
      listRatio: "1.25",
      streetRatio: "1.25",
      breakEvenShare: "0.80",
    });
  });
  it("list and street each by their own total; what pays is a share of the street's", () => {
    const shop = { id: "e2", kind: "shop" as const, price: eur("40"), market: "ie", date: "2026-04-30" };
    const lines = [line("l1", null, { evidence: [{ id: "e1", kind: "list", price: eur("48") }, shop] })];
    expect(oneTier(kit({ lines, tiers: [tier()] }))).toMatchObject({
      listGain: eur("24.00"),
      streetGain: eur("16.00"),
      wantedGain: eur("16.00"),
      listRatio: "2.00",
      streetRatio: "1.67",
      breakEvenShare: "0.60",
    });
  });
  it("are null over nought", () => {
    expect(oneTier(kit({ tiers: [tier({ price: eur("0") })] }))).toMatchObject({
      listRatio: null,
      streetRatio: null,
      breakEvenShare: null,
      listGain: eur("0.00"),
    });
  });
  it("a ratio is rounded half away from nought", () => {
    const lines = [line("l1", eur("8.04"))];
    expect(oneTier(kit({ lines, tiers: [tier({ price: eur("8") })] })).listRatio).toBe("1.01"); // 1.005
  });
});

describe("whether it pays", () => {
  const spread = [
    guessed("l1", ["4", "5", "6"]),
    guessed("l2", ["10", "12", "14"]),
    guessed("l3", ["5", "6", "7"], 2),
  ];
  // low 24, likely 29, high 34; both l2 and l3 have a range of 4
  const verdict = (price: string, lines: Kit["lines"] = spread) => {
    const row = oneTier(kit({ lines: lines ?? null, tiers: [tier({ price: eur(price) })] }));
    return [row.listVerdict, row.listHangsOn, row.streetVerdict, row.streetHangsOn];
  };
  it.each([
    { price: "23.99", is: ["ahead", null, "ahead", null], why: "even the low total beats the cost" },
    {
      price: "24.00",
      is: ["hangs", "l2", "hangs", "l2"],
      why: "equal is not greater; the first of the widest",
    },
    { price: "33.99", is: ["hangs", "l2", "hangs", "l2"], why: "the high total still beats it" },
    { price: "34.00", is: ["behind", null, "behind", null], why: "even the high total does not" },
  ])("at EUR $price: $why", ({ price, is }) => {
    expect(verdict(price)).toEqual(is);
  });
  it("a line without a price keeps it open, and it hangs on the first of those", () => {
    const lines = [...spread, line("l4", null), line("l5", null)];
    expect(verdict("99", lines)).toEqual(["hangs", "l4", "hangs", "l4"]);
    expect(verdict("23.99", lines)).toEqual(["ahead", null, "ahead", null]);
  });
  it("each side looks at its own prices", () => {
    const shop = line("l1", null, {
      evidence: [{ id: "e1", kind: "shop", price: eur("3"), market: "ie", date: "2026-04-30" }],
    });
    expect(verdict("99", [shop])).toEqual(["hangs", "l1", "behind", null]);
  });
  it("nothing against a cost is behind", () => {
    expect(verdict("1", [])).toEqual(["behind", null, "behind", null]);
  });
});

describe("the report", () => {
  const only = kit({ lines: [line("l1", eur("5"))], tiers: [tier()] });
  it("names the oldest table used and whether it is stale", () => {
    const older = [...rates, { date: "2026-04-22", base: "EUR", quotes: { NOK: "11.5", SEK: "11" } }];
    const krone = kit({ lines: [line("l1", { amount: "23", currency: "NOK" }), line("l2", eur("1"))] });
    const outcome = worthOf(book(krone, { rates: older }), krone, ["se", "ie"]);
    expect(outcome).toMatchObject({ ok: true, value: { ratesOf: "2026-04-22", staleRates: true } });
    expect(worthOf(book(only), only, ["se"])).toMatchObject({
      value: { ratesOf: "2026-04-30", staleRates: false },
    });
    expect(worthOf(book(only), only, ["ie"])).toMatchObject({ value: { ratesOf: null, staleRates: false } });
  });
  it("keeps the file's order of markets", () => {
    const outcome = worthOf(book(only), only, ["jp", "se"]);
    expect(outcome.ok && outcome.value.markets.map((row) => row.market)).toEqual(["se", "jp"]);
  });
  it("has exactly the fields of the command line", () => {
    const outcome = worthOf(book(only), only, ["se"]);
    const value = outcome.ok ? outcome.value : null;
    expect(Object.keys(value ?? {})).toEqual(["kit", "valuedOn", "ratesOf", "staleRates", "markets"]);
    const row = value?.markets[0];
    expect(Object.keys(row ?? {})).toEqual(
      "market currency lines listTotal listLow listHigh streetTotal streetLow streetHigh wantedTotal unpriced tiers".split(
        " ",
      ),
    );
    expect(Object.keys(row?.lines[0] ?? {}).toSorted()).toEqual(
      "line list listEach listMethod qty street streetEach streetMethod".split(" "),
    );
    expect(Object.keys(row?.tiers[0] ?? {}).toSorted()).toEqual(
      (
        "breakEvenShare duty goods handling kitCost kits listGain listHangsOn listRatio listVerdict postage " +
        "streetGain streetHangsOn streetRatio streetVerdict tax tier wantedGain"
      ).split(" "),
    );
  });
  it("lists every missing rate at once, each with its place", () => {
    const nok = (amount: string) => ({ amount, currency: "NOK" });
    const lacking = kit({
      lines: [line("l1", nok("5")), line("l2", eur("5"))],
      tiers: [tier({ price: nok("20") }), tier({ id: "t2", postageTo: { se: nok("2") } })],
    });
    const outcome = worthOf(book(lacking), lacking, ["se", "ie"]);
    expect(outcome.ok ? [] : outcome.faults.map(({ place, remedy }) => [place, remedy.slice(-11)])).toEqual([
      ["kits[0].lines[0].evidence[0]", "SEK and NOK"],
      ["kits[0].tiers[0].price", "SEK and NOK"],
      ["kits[0].tiers[1].postageTo.se", "SEK and NOK"],
    ]);
  });
  it("needs the day that counts, and markets that exist", () => {
    const undated = kit({ valuedOn: null });
    expect(worthOf(book(undated), undated, ["se"])).toMatchObject({
      ok: false,
      fault: { place: "kits[0].valuedOn" },
    });
    expect(worthOf(book(only), only, ["no", "na"])).toMatchObject({
      ok: false,
      faults: [{ place: "markets" }, { place: "markets" }],
    });
  });
  it("is for the markets reported, else home, else all", () => {
    expect(reportedMarkets({ markets, home: { market: "se", reportMarkets: ["jp", "ie"] } })).toEqual([
      "jp",
      "ie",
    ]);
    expect(reportedMarkets({ markets, home: { market: "se", reportMarkets: [] } })).toEqual(["se"]);
    expect(reportedMarkets({ markets })).toEqual(["se", "ie", "jp", "kw"]);
  });
  it("keeps what stands behind each figure", () => {
    const priced = kit({
      lines: [line("l1", eur("5"))],
      tiers: [tier({ feeOnce: sek("20"), plusTax: "0.25", kits: 2 })],
    });
    const outcome = valueKit(book(priced), priced, ["se"]);
    expect(outcome.ok && outcome.value.whys[0]?.tiers[0]?.cost).toMatchObject({
      goods: [
        { what: "price", quoted: eur("24.00"), rate: { date: "2026-04-30", toQuote: "11.0250" } },
        { what: "feeOnce", quoted: sek("20"), rate: null },
      ],
      plusTax: "0.25",
      kits: 2,
      border: { rule: null },
    });
    expect(outcome.ok && outcome.value.whys[0]?.lines[0]?.estimate.list?.sentence).toMatch(
      /^List price elsewhere, EUR 5\.00/,
    );
  });
});

describe("beside it", () => {
  const card = (id: string, list: string, claim: string | null, qty = 1) =>
    line(id, null, {
      qty,
      evidence: [
        { id: "e1", kind: "list", price: eur(list) },
        ...(claim ? [{ id: "e2", kind: "card" as const, price: eur(claim) }] : []),
      ],
    });
  const only = kit({
    lines: [card("l1", "20", "25"), card("l2", "4", null), card("l3", "3", "4", 2), line("l4", null)],
    tiers: [tier({ postagePerKit: eur("2") })],
    shipsFrom: "jp",
  });
  it("the line at which the running total passes the price, and with postage", () => {
    const worth = inMarket(only);
    const [row] = worth.tiers;
    expect(row && passingOf(worth.lines, row)).toEqual({
      list: { price: "l3", withPostage: "l3" }, // 24 is not more than 24
      street: { price: "l3", withPostage: "l3" },
    });
    expect(row && passingOf(worth.lines.slice(0, 2), row).list).toEqual({ price: null, withPostage: null });
  });
  it("what the sender says against what was found, over the lines the card prices", () => {
    const outcome = valueKit(book(only), only, ["ie"]);
    expect(outcome.ok && cardTotals("EUR", outcome.value.whys[0]?.lines ?? [])).toEqual({
      card: eur("33.00"),
      found: eur("26.00"),
      lines: 2,
      without: ["l2", "l4"],
    });
  });
  it("the same without what the border charges", () => {
    const taxed = [market("ie", "EUR", [{ from: "any", taxRate: "0.5", handlingFee: eur("3") }])];
    const row = oneTier(only, "ie", { markets: taxed });
    expect([row.kitCost, row.tax, row.handling, row.listGain]).toEqual([
      eur("42.00"),
      eur("13.00"),
      eur("3.00"),
      eur("-12.00"),
    ]);
    expect(withoutBorder(row)).toEqual({
      kitCost: eur("26.00"),
      listGain: eur("4.00"),
      streetGain: eur("4.00"),
      wantedGain: eur("4.00"),
    });
  });
  it("how many of my own parcels from there were charged", () => {
    const parcels = [
      { id: "p1", from: "jp", to: "ie", charged: eur("4") },
      { id: "p2", from: "jp", charged: eur("0.00") },
      { id: "p3", from: "jp", to: "ie" },
      { id: "p4", from: "jp", to: "se", charged: eur("4") },
      { id: "p5", from: "se", to: "ie", charged: eur("4") },
    ];
    expect(parcelsFrom(book(only, { parcels }), "jp", "ie")).toEqual({ parcels: 3, charged: 1, unknown: 1 });
  });
});
