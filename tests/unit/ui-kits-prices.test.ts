import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { EvidenceSchema, estimateLine, type Line, SettledSchema } from "../../src/engine/price/index.ts";
import { type Workbook, WorkbookSchema } from "../../src/engine/workbook/index.ts";
import type { Kit } from "../../src/engine/worth/index.ts";
import { evidenceOf, faultOfDraft, type PriceDraft, shopsOf } from "../../src/ui/kits/view/add-price.ts";
import { foundRows } from "../../src/ui/kits/view/found.ts";
import { choicesFor, settledFor, settledOf } from "../../src/ui/kits/view/go-with.ts";
import { precedentRows } from "../../src/ui/kits/view/precedents.ts";
import { nextWithout, pricesView, sumUpPrices } from "../../src/ui/kits/view/prices.ts";
import { formatter } from "../../src/ui/words/format.ts";

// Figures: the engine's own, checked against published conversions elsewhere. The words are the project's own.
const british = formatter("en-GB");
const sample: Workbook = WorkbookSchema.parse(
  JSON.parse(readFileSync("fixtures/sample.understudy.json", "utf8")),
);
const found = sample.kits?.find(({ id }) => id === "sp-2026-04");
if (!found) throw new Error("the sample has no kit of April 2026");
const kit: Kit = found;
const lineOf = (id: string): Line => {
  const line = kit.lines?.find((one) => one.id === id);
  if (!line) throw new Error(`the kit has no line ${id}`);
  return line;
};
const all = pricesView(sample, kit, british);
const [sweden, ireland] = all;

describe("a kit's prices", () => {
  it("are given for each market reported, with how each came about", () => {
    expect(all.map(({ market }) => market.name)).toEqual(["Sweden", "Ireland", "Japan"]);
    const moss = sweden?.rows[0];
    expect(moss?.list).toMatchObject({
      likely: { amount: "59.54", currency: "SEK" },
      how: "converted",
      range: null,
    });
    expect(moss?.list?.sentence).toMatch(
      /^List price in Ireland, EUR 5.40 on 8 Apr 2026, converted at 1 EUR/,
    );
    expect(moss?.shop).toMatchObject({ likely: { amount: "52.00", currency: "SEK" }, how: "shop, 20 Apr" });
  });

  it("say so where the list figure stands in, and print a range where there is one", () => {
    const brush = sweden?.rows[6];
    expect(brush?.list).toMatchObject({ how: "a guess", range: "45.00 to 70.00" });
    expect(brush?.shop?.how).toBe("list figure stands in");
  });

  it("are summed up in one sentence, and the other markets with it", () => {
    expect(sumUpPrices(all, "se")).toEqual({ lead: "All eight have a price in Sweden.", leadMore: "" });
    const lines = (kit.lines ?? []).map((line, at) => (at < 3 ? { ...line, evidence: [] } : line));
    const fewer = pricesView(sample, { ...kit, lines }, british);
    expect(sumUpPrices(fewer, "se")).toEqual({
      lead: "Three of eight still need a price in Sweden.",
      leadMore: "Elsewhere: three in Ireland and three in Japan.",
    });
    const one = pricesView(sample, { ...kit, lines: lines.slice(2) }, british);
    expect(sumUpPrices(one, "ie").lead).toBe("One of six still needs a price in Ireland.");
  });

  it("are not missed where a shop price is all there is, nor of what was made for the kit", () => {
    const shop = EvidenceSchema.parse({
      id: "e1",
      kind: "shop",
      market: "se",
      price: { amount: "60", currency: "SEK" },
      date: kit.valuedOn,
    });
    const lines = (kit.lines ?? []).map((line, at) => ({
      ...line,
      evidence: at === 0 ? [shop] : at < 3 ? [] : line.evidence,
      exclusive: at === 1,
    }));
    const own = pricesView(sample, { ...kit, lines }, british);
    expect(own[0]?.rows.slice(0, 3).map(({ without, needs }) => [without, needs])).toEqual([
      ["no list price", false],
      ["made for the kit", false],
      ["still needed", true],
    ]);
    const sum = sumUpPrices(own, "se");
    expect(sum.lead).toBe("One of seven still needs a price in Sweden.");
    expect(sum.leadMore).toMatch(/^One has a shop price only\. One was made for the kit and never sold\./);
    const sold = lines.map((line, at) => (at === 2 ? { ...line, evidence: [shop] } : line));
    expect(sumUpPrices(pricesView(sample, { ...kit, lines: sold }, british), "se").lead).toBe(
      "All seven have a price in Sweden.",
    );
  });

  it("put what still needs a price first, else in their own order", () => {
    const lines = (kit.lines ?? []).map((line) => (line.id === "l4" ? { ...line, evidence: [] } : line));
    const [first] = pricesView(sample, { ...kit, lines }, british);
    expect(first?.sorted.map(({ line }) => line.id)).toEqual([
      "l4",
      "l1",
      "l2",
      "l3",
      "l5",
      "l6",
      "l7",
      "l8",
    ]);
    expect(first?.sorted[0]?.without).toBe("still needed");
  });

  it("lead from a line to the next that nothing is known about, round the end, and past what was not sold", () => {
    const looked = EvidenceSchema.parse({ id: "e1", kind: "not-sold", market: "se" });
    const bare = new Map([
      ["l2", []],
      ["l4", [looked]],
      ["l6", []],
    ]);
    const lines = (kit.lines ?? []).map((line) => ({
      ...line,
      evidence: bare.get(line.id) ?? line.evidence,
    }));
    const rows = pricesView(sample, { ...kit, lines }, british)[0]?.rows ?? [];
    const after = (line: string | null) => nextWithout(rows, line)?.line.id ?? null;
    expect([null, "l1", "l2", "l6", "l8"].map(after)).toEqual(["l2", "l2", "l6", "l2", "l2"]);
    expect(nextWithout(sweden?.rows ?? [], "l1")).toBeNull();
  });

  it("name a missing rate once, and say that the figure waits for it", () => {
    const [first] = pricesView({ ...sample, rates: [] }, kit, british);
    expect(first?.rows[0]).toMatchObject({ list: null, without: "waits for a rate" });
    expect(new Set(first?.faults.map(({ problem }) => problem)).size).toBe(first?.faults.length);
    expect(first?.faults.length).toBeGreaterThan(0);
    expect(first && sumUpPrices([first], "se").lead).toBe(
      "Three of eight wait for an exchange rate in Sweden.",
    );
    expect(first?.sorted.slice(0, 3).map(({ waits }) => waits)).toEqual([true, true, true]);
  });

  it("tell what was looked for and not found", () => {
    const gone = [{ id: "e1", kind: "not-sold" as const, market: "se" }];
    const lines = [{ ...lineOf("l1"), evidence: gone }];
    expect(pricesView(sample, { ...kit, lines }, british)[0]?.rows[0]?.without).toBe("looked, not sold here");
  });
});

describe("the prices found for a line", () => {
  const rows = foundRows(sample, lineOf("l1"), all, british);

  it("are all there, the newest first", () => {
    expect(rows.map(({ evidence }) => evidence.date)).toEqual([
      "2026-04-22",
      "2026-04-20",
      "2026-04-20",
      "2026-04-19",
      "2026-04-08",
    ]);
  });

  it("are told in words", () => {
    expect(rows[0]).toMatchObject({
      kind: "shop price",
      price: "JPY\u00a0880",
      facts: "Kumohashi Gazai, Japan, 22 Apr 2026, 10 % tax to be added",
      why: ["In Japan: JPY\u00a0880, with 10 % tax comes to JPY\u00a0968."],
    });
    expect(rows.find(({ evidence }) => evidence.inStock === false)?.facts).toContain("not in stock");
    const packs = foundRows(sample, lineOf("l8"), all, british);
    expect(packs.map(({ kind }) => kind)).toContain("list price of another pack size");
    expect(packs[0]?.facts).toContain("20 sheets, 240 × 320 mm");
  });

  it("say what each comes to, market by market, at which rate", () => {
    const list = rows.find(({ evidence }) => evidence.kind === "list");
    expect(list?.why[0]).toBe(
      "In Sweden: EUR\u00a05.40, at 1 EUR = 11.0250 SEK, 30 Apr 2026 comes to SEK\u00a059.54.",
    );
  });

  it("say when no figure rests on one", () => {
    const stale = {
      id: "x",
      kind: "shop" as const,
      price: { amount: "1", currency: "SEK" },
      date: "2020-01-01",
      market: "se",
    };
    const line = { ...lineOf("l1"), evidence: [stale] };
    const view = pricesView(sample, { ...kit, lines: [line] }, british);
    expect(foundRows(sample, line, view, british)[0]?.why).toEqual(["No figure rests on it just now."]);
  });
});

describe("a price to add", () => {
  const none = { amount: null, currency: "SEK" };
  const draft: PriceDraft = {
    kind: "shop",
    price: { amount: "52", currency: "SEK" },
    low: none,
    high: none,
    market: "se",
    shop: "sh-lj",
    date: "2026-04-20",
    source: " ",
    inStock: true,
    plusTax: "",
    pack: {},
  };
  const supply = lineOf("l1").supply;

  it("needs its amount, unless it was not sold at all", () => {
    expect(faultOfDraft(draft, supply)).toBeNull();
    expect(faultOfDraft({ ...draft, price: none }, supply)?.field).toBe("price");
    expect(faultOfDraft({ ...draft, kind: "not-sold", price: none }, supply)).toBeNull();
  });

  it("of another pack needs to say how much that held", () => {
    const pack = { ...draft, kind: "shop-pack" } as const;
    expect(faultOfDraft(pack, supply)?.field).toBe("pack");
    expect(faultOfDraft({ ...pack, pack: { ml: 30 } }, supply)).toBeNull();
    expect(faultOfDraft({ ...pack, pack: { ml: 30 } }, lineOf("l5").supply)?.field).toBe("pack");
    expect(faultOfDraft({ ...pack, pack: { count: 3 } }, lineOf("l5").supply)).toBeNull();
  });

  it("as a guess runs from low to high", () => {
    const guess = { ...draft, kind: "guess", low: { amount: "60", currency: "SEK" } } as const;
    expect(faultOfDraft({ ...guess, high: { amount: "50", currency: "SEK" } }, supply)?.field).toBe("range");
    expect(faultOfDraft({ ...guess, high: { amount: "70", currency: "SEK" } }, supply)).toBeNull();
  });

  it("keeps only what was said, in the workbook's own terms", () => {
    expect(evidenceOf("e9", draft, "sh-lj")).toEqual({
      id: "e9",
      kind: "shop",
      price: { amount: "52", currency: "SEK" },
      market: "se",
      shop: "sh-lj",
      date: "2026-04-20",
    });
    expect(evidenceOf("e9", { ...draft, kind: "not-sold" }, null)).toEqual({
      id: "e9",
      kind: "not-sold",
      market: "se",
      date: "2026-04-20",
    });
    for (const kind of ["shop", "list", "shop-pack", "list-pack", "card", "guess", "not-sold"] as const) {
      expect(EvidenceSchema.safeParse(evidenceOf("e9", { ...draft, kind }, "sh-lj")).success, kind).toBe(
        true,
      );
    }
  });

  it("moves the engine's figure", () => {
    const cheaper = evidenceOf(
      "e9",
      { ...draft, price: { amount: "40", currency: "SEK" }, shop: "sh-ta" },
      "sh-ta",
    );
    const line = { ...lineOf("l1"), evidence: [...(lineOf("l1").evidence ?? []), cheaper] };
    expect(estimateLine(sample, kit, line, "se").street?.likely.amount).toBe("40.00");
  });

  it("is from a shop of its market", () => {
    const shops = shopsOf(sample.shops ?? [], "ie");
    expect(shops.length).toBeGreaterThan(0);
    expect(shops.every(({ market }) => market === "ie")).toBe(true);
  });
});

describe("going with another figure", () => {
  const options = sweden?.rows[0]?.estimate.streetOptions ?? [];

  it("offers every way that applies, the first of them, and one's own", () => {
    expect(choicesFor(options, "street", british).map(({ value }) => value)).toEqual([
      "",
      "shop",
      "converted",
      "list",
      "own",
    ]);
    expect(choicesFor([], "list", british).map(({ value }) => value)).toEqual(["own"]);
  });

  const price = { amount: "60", currency: "SEK" };
  it("settles a way or a figure, with its reason, as the workbook takes it", () => {
    const own = settledOf({ kind: "list", market: null, picked: "own", price, reason: " asked " });
    expect(own).toEqual({ kind: "list", market: null, price, reason: "asked" });
    const way = settledOf({ kind: "street", market: "se", picked: "converted", price, reason: "" });
    expect(way).toEqual({ kind: "street", market: "se", method: "converted" });
    expect([own, way].every((one) => SettledSchema.safeParse(one).success)).toBe(true);
    expect(settledOf({ kind: "list", market: "se", picked: "", price, reason: "" })).toBeNull();
  });

  it("finds a market's own choice before one for all, and the later of two", () => {
    const settled = [
      { kind: "list" as const, market: "se", method: "card" },
      { kind: "list" as const, method: "guess" },
      { market: "se", method: "list" },
    ];
    const line = { ...lineOf("l1"), settled };
    expect(settledFor(line, "list", "se")?.method).toBe("list");
    expect(settledFor(line, "list", "jp")?.method).toBe("guess");
    expect(settledFor(line, "street", "se")).toBeNull();
  });

  it("is what the engine then goes with", () => {
    const settled = [
      settledOf({ kind: "street", market: "se", picked: "converted", price, reason: "" }) ?? {},
    ];
    const line = { ...lineOf("l1"), settled };
    expect(estimateLine(sample, kit, line, "se").street?.method).toBe("converted");
  });
});

describe("what earlier cards said", () => {
  const rows = precedentRows(sample, kit, lineOf("l1"), "se", british);

  it("is offered from earlier kits, gouache for gouache first", () => {
    expect(rows[0]).toMatchObject({ name: "Gouache, snow shadow", kit: "Snow that stays", isIn: false });
    expect(rows[0]?.price?.currency).toBe("SEK");
  });

  it("tells what is counted in already", () => {
    const evidence = [{ id: "e9", kind: "precedent" as const, line: rows[0]?.reference }];
    const again = precedentRows(sample, kit, { ...lineOf("l1"), evidence }, "se", british);
    expect(again.filter(({ isIn }) => isIn).map(({ reference }) => reference)).toEqual([rows[0]?.reference]);
  });
});

it("has the same lines in each market", () => {
  expect(ireland?.rows.map(({ line }) => line.id)).toEqual(sweden?.rows.map(({ line }) => line.id));
});
