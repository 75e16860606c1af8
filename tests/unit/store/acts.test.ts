import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  canonicalJson,
  readWorkbook,
  type Workbook,
  writeWorkbook,
} from "../../../src/engine/workbook/index.ts";
import * as acts from "../../../src/store/acts/index.ts";
import { type ActDraft, applyChanges, checkTouched, removedSince } from "../../../src/store/journal/index.ts";
import { prepare } from "../../../src/store/prepare.ts";
import { bookOf, draft, item, value } from "./books.ts";

const sample = readSample();

function readSample(): Workbook {
  const text = readFileSync(new URL("../../../fixtures/sample.understudy.json", import.meta.url), "utf8");
  const reading = readWorkbook(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults[0]));
  return reading.workbook;
}

/** The book after an act; the act must fit the format, leave no mention of what is gone, and be undoable. */
function doing(book: Workbook, { changes }: ActDraft): Workbook {
  const done = value(applyChanges(book, changes));
  expect(checkTouched(done.book, changes)).toEqual({ ok: true, value: null });
  const reading = readWorkbook(writeWorkbook(done.book));
  expect(reading.ok ? [] : reading.faults).toEqual([]);
  expect(value(applyChanges(done.book, done.inverse)).book).toStrictEqual(book);
  return done.book;
}

function first<T>(list: readonly T[] | null | undefined): T {
  const [one] = list ?? [];
  if (one === undefined) throw new Error("the sample lacks what this test needs");
  return one;
}

const kit = { id: "k1", maker: "Nordljus", period: "2026-04", title: "April light" };
const line = { ...item("moss"), id: "l1", qty: 2 };
const remake = { id: "rm", kit: "k1", started: "2026-05-02" };
const market = { id: "se", name: "Sweden", currency: "SEK" };
const shop = { id: "s1", name: "Hyllan", market: "se" };
const tier = { id: "t1", label: "Month by month", kits: 1, price: { amount: "24.00", currency: "EUR" } };
const evidence = { id: "e1", kind: "list" as const, price: { amount: "4.90", currency: "EUR" } };
const rates = { date: "2026-03-31", base: "EUR", quotes: { SEK: "11.0250" } };
const parcel = { id: "pa", from: "se", note: "" };
const kinship = { id: "ki", kind: "twin" as const };
const photo = { id: "ph", type: "image/jpeg" };
const request = { id: "rq", text: "April, please" };
const settled = { kind: "list" as const, market: null, price: { amount: "4.90", currency: "EUR" } };
const logged = { at: "00:10", text: "first wash" };

const full = bookOf({
  stash: [item("st-1", { owned: 2 }), item("st-2")],
  kits: [{ ...kit, tiers: [tier], lines: [{ ...line, evidence: [evidence], settled: [settled] }] }],
  remakes: [{ ...remake, picks: [{ line: "l1", uses: [{ stash: "st-1" }] }], log: [logged] }],
  markets: [market],
  shops: [shop],
  rates: [rates],
  parcels: [parcel],
  kinships: [kinship],
  photos: [photo],
  requests: [request],
});
const fullKit = first(full.kits);
const fullLine = first(fullKit.lines);
const fullRemake = first(full.remakes);
const stashItem = first(full.stash);

// Each act on a book that has one of everything: what the history calls it, and what is then where.
describe("an act", () => {
  it.each<[string, ActDraft, object]>([
    ["Add Gouache, st-3 to the stash", acts.addStashItem(item("st-3")), { stash: [{}, {}, { id: "st-3" }] }],
    [
      "Add 2 items to the stash",
      acts.addStashItems([item("x"), item("y")]),
      { stash: [{}, {}, { id: "x" }, { id: "y" }] },
    ],
    [
      "Bring in 2 items from list.csv",
      acts.bringInItems([item("x"), item("y", { importKey: "k" })], "list.csv"),
      { stash: [{}, {}, { id: "x" }, { id: "y", importKey: "k" }] },
    ],
    [
      "Change the place of Gouache, st-1",
      acts.editStashItem(stashItem, ["place"], "blue tin"),
      { stash: [{ place: "blue tin" }, {}] },
    ],
    [
      "Change the name of Gouache, st-1",
      acts.editStashItem(stashItem, ["supply", "name"], "Moss"),
      { stash: [{ supply: { name: "Moss" } }, {}] },
    ],
    ["Take 1 piece of Gouache, st-1", acts.changeStock(stashItem, -1), { stash: [{ owned: 1 }, {}] }],
    [
      "Add 12 sheets of Gouache, st-1",
      acts.changeStock(stashItem, 12, "sheetsLeft"),
      { stash: [{ sheetsLeft: 12 }, {}] },
    ],
    [
      "Remove Gouache, st-1 from the stash",
      acts.removeStashItem(full, stashItem),
      { stash: [{ id: "st-2" }], remakes: [{ picks: [{ uses: [] }] }] },
    ],
    ["Remove 2 items from the stash", acts.removeStashItems(full, full.stash ?? []), { stash: [] }],
    [
      "Log the kit Nordljus 2026-05",
      acts.addKit({ id: "k2", maker: "Nordljus", period: "2026-05" }),
      { kits: [{}, { id: "k2" }] },
    ],
    [
      "Change the date of the prices of April light",
      acts.editKit(fullKit, ["valuedOn"], "2026-04-30"),
      { kits: [{ valuedOn: "2026-04-30" }] },
    ],
    ["Remove the kit April light and 1 remake", acts.removeKit(full, fullKit), { kits: [], remakes: [] }],
    [
      "Add the tier t2 to April light",
      acts.addTier(fullKit, { id: "t2", kits: 3, price: tier.price }),
      { kits: [{ tiers: [{}, { id: "t2" }] }] },
    ],
    [
      "Change the number of kits of the tier Month by month",
      acts.editTier(fullKit, tier, ["kits"], 3),
      { kits: [{ tiers: [{ kits: 3 }] }] },
    ],
    [
      "Remove the tier Month by month from April light",
      acts.removeTier(fullKit, tier),
      { kits: [{ tiers: [] }] },
    ],
    [
      "Add Gouache, ash to April light",
      acts.addLine(fullKit, item("ash"), fullLine),
      { kits: [{ lines: [{ id: "ash" }, {}] }] },
    ],
    [
      "Add Gouache, rust to April light",
      acts.addLine(fullKit, item("rust")),
      { kits: [{ lines: [{}, { id: "rust" }] }] },
    ],
    [
      "Add 2 lines to April light",
      acts.addLines(fullKit, [item("l2"), item("l3")]),
      { kits: [{ lines: [{}, { id: "l2" }, { id: "l3" }] }] },
    ],
    [
      "Change the share you would use of Gouache, moss",
      acts.editLine(fullKit, fullLine, ["want"], "0.5"),
      { kits: [{ lines: [{ want: "0.5" }] }] },
    ],
    [
      "Move Gouache, moss in April light",
      acts.moveLine(fullKit, fullLine, null),
      { kits: [{ lines: [{ id: "l1" }] }] },
    ],
    [
      "Add a price found for Gouache, moss",
      acts.addEvidence(fullKit, fullLine, { ...evidence, id: "e2" }),
      { kits: [{ lines: [{ evidence: [{}, { id: "e2" }] }] }] },
    ],
    [
      "Change the in stock of a price found for Gouache, moss",
      acts.editEvidence(fullKit, fullLine, evidence, ["inStock"], false),
      { kits: [{ lines: [{ evidence: [{ inStock: false }] }] }] },
    ],
    [
      "Remove a price found for Gouache, moss",
      acts.removeEvidence(fullKit, fullLine, evidence),
      { kits: [{ lines: [{ evidence: [] }] }] },
    ],
    [
      "Choose the price to go with for Gouache, moss",
      acts.settle(fullKit, fullLine, { kind: "list", reason: "the maker's own" }),
      { kits: [{ lines: [{ settled: [{ reason: "the maker's own" }] }] }] },
    ],
    [
      "Choose the price to go with for Gouache, moss",
      acts.settle(fullKit, fullLine, { kind: "list", market: "se" }),
      { kits: [{ lines: [{ settled: [{}, { market: "se" }] }] }] },
    ],
    [
      "Leave open the price to go with for Gouache, moss",
      acts.unsettle(fullKit, fullLine, { kind: "list" }),
      { kits: [{ lines: [{ settled: [] }] }] },
    ],
    [
      "Start a remake of April light",
      acts.startRemake({ ...remake, id: "rm2" }, fullKit),
      { remakes: [{}, { id: "rm2" }] },
    ],
    [
      "Change the finished of the remake",
      acts.editRemake(fullRemake, ["finished"], "2026-05-09"),
      { remakes: [{ finished: "2026-05-09" }] },
    ],
    ["Remove the remake of April light", acts.removeRemake(fullRemake, fullKit), { remakes: [] }],
    [
      "Choose what stands in for Gouache, moss",
      acts.setPick(fullRemake, fullLine, { uses: [{ stash: "st-2", share: "1" }], by: "person" }),
      { remakes: [{ picks: [{ line: "l1", by: "person" }] }] },
    ],
    [
      "Clear what stands in for Gouache, moss",
      acts.clearPick(fullRemake, fullLine),
      { remakes: [{ picks: [] }] },
    ],
    [
      "Give a verdict on Gouache, moss",
      acts.setVerdict(fullRemake, fullLine, { use: 4 }),
      { remakes: [{ verdicts: [{ line: "l1", use: 4 }] }] },
    ],
    [
      "Note something in the log",
      acts.addLogEntry(fullRemake, { text: "second wash" }),
      { remakes: [{ log: [{}, { text: "second wash" }] }] },
    ],
    ["Remove a note from the log", acts.removeLogEntry(fullRemake, logged), { remakes: [{ log: [] }] }],
    [
      "Add the market Japan",
      acts.addMarket({ id: "jp", name: "Japan", currency: "JPY" }, true),
      { home: { market: "jp" }, markets: [{}, { id: "jp" }] },
    ],
    [
      "Add the market Japan",
      acts.addMarket({ id: "jp", name: "Japan", currency: "JPY" }),
      { markets: [{}, { id: "jp" }] },
    ],
    [
      "Change the currency of Sweden",
      acts.editMarket(market, ["currency"], "EUR"),
      { markets: [{ currency: "EUR" }] },
    ],
    ["Remove the market Sweden", acts.removeMarket(full, market), { markets: [], shops: [] }],
    [
      "Add the shop Boden",
      acts.addShop({ id: "s2", name: "Boden", market: "se" }),
      { shops: [{}, { id: "s2" }] },
    ],
    ["Change the name of Hyllan", acts.editShop(shop, ["name"], "Hylla"), { shops: [{ name: "Hylla" }] }],
    ["Remove the shop Hyllan", acts.removeShop(full, shop), { shops: [] }],
    ["Add a parcel of your own", acts.addParcel({ id: "pb" }), { parcels: [{}, { id: "pb" }] }],
    [
      "Change the note of a parcel",
      acts.editParcel(parcel, ["note"], "late"),
      { parcels: [{ note: "late" }] },
    ],
    ["Remove a parcel", acts.removeParcel(parcel), { parcels: [] }],
    [
      "Add the rates of 31 Mar 2026",
      acts.addRates({ ...rates, source: "again" }),
      { rates: [{ source: "again" }] },
    ],
    [
      "Add the rates of 30 Apr 2026",
      acts.addRates({ ...rates, date: "2026-04-30" }),
      { rates: [{}, { date: "2026-04-30" }] },
    ],
    ["Remove the rates of 31 Mar 2026", acts.removeRates(rates), { rates: [] }],
    ["Name the workbook Marit's", acts.nameBook("Marit's"), { name: "Marit's" }],
    ["Change the market", acts.editHome(["market"], "se"), { home: { market: "se" } }],
    [
      "Change how much colour counts for marker",
      acts.setWeight("marker", "colour", 5),
      { weights: { marker: { colour: 5 } } },
    ],
    ["Link two products", acts.addKinships([{ id: "kj" }]), { kinships: [{}, { id: "kj" }] }],
    [
      "Link 2 pairs of products",
      acts.addKinships([{ id: "kj" }, { id: "kl" }]),
      { kinships: [{}, { id: "kj" }, { id: "kl" }] },
    ],
    [
      "Change the sure of a link of two products",
      acts.editKinship(kinship, ["sure"], "told"),
      { kinships: [{ sure: "told" }] },
    ],
    ["Unlink two products", acts.removeKinship(kinship), { kinships: [] }],
    ["Add a photo", acts.addPhoto({ id: "pi" }), { photos: [{}, { id: "pi" }] }],
    ["Remove a photo", acts.removePhoto(full, photo), { photos: [] }],
    ["Add a request", acts.addRequest({ id: "rr" }), { requests: [{}, { id: "rr" }] }],
    ["Change the by of a request", acts.editRequest(request, ["by"], "Ane"), { requests: [{ by: "Ane" }] }],
    ["Remove a request", acts.removeRequest(request), { requests: [] }],
  ])("is called “%s”, keeps the book a good one, and can be undone", (label, one, expected) => {
    expect(one.label).toBe(label);
    expect(doing(full, one)).toMatchObject(expected);
  });

  it("leaves a field out when it is set to undefined", () => {
    const book = doing(full, acts.editStashItem(stashItem, ["owned"], undefined));
    expect(book.stash?.[0]).toStrictEqual(item("st-1"));
  });

  it("calls a supply without a name by that", () => {
    const unnamed = { ...stashItem, supply: { family: "other" as const, name: "" } };
    expect(acts.addStashItem(unnamed).label).toBe("Add an unnamed supply to the stash");
  });

  it("does not take out more than there is", () => {
    const done = applyChanges(full, acts.changeStock(stashItem, -3).changes);
    expect(done).toEqual({
      ok: false,
      fault: { place: "st-1", problem: "there are only 2 left", remedy: "take out no more than there are" },
    });
  });

  it("counts sheets down from what the pad was sold with, and pieces from one", () => {
    const pad = { id: "pad", supply: { family: "paper" as const, name: "Block", traits: { sheets: 20 } } };
    const book = bookOf({ stash: [pad] });
    expect(doing(book, acts.changeStock(pad, -1, "sheetsLeft")).stash?.[0]).toMatchObject({ sheetsLeft: 19 });
    expect(doing(book, acts.changeStock(pad, 1)).stash?.[0]).toMatchObject({ owned: 2 });
  });
});

describe("removing, in the sample,", () => {
  const all = [
    ...(sample.stash ?? []).map((one) => ({ what: one.id, remove: acts.removeStashItem(sample, one) })),
    ...(sample.kits ?? []).map((one) => ({ what: one.id, remove: acts.removeKit(sample, one) })),
    ...(sample.markets ?? []).map((one) => ({ what: one.id, remove: acts.removeMarket(sample, one) })),
    ...(sample.shops ?? []).map((one) => ({ what: one.id, remove: acts.removeShop(sample, one) })),
    ...(sample.photos ?? []).map((one) => ({ what: one.id, remove: acts.removePhoto(sample, one) })),
    ...(sample.kits ?? []).flatMap((one) =>
      (one.lines ?? []).map((each) => ({
        what: `${one.id}/${each.id}`,
        remove: acts.removeLine(sample, one, each),
      })),
    ),
  ];

  it("anything leaves a book that a restore would take, and can be undone", () => {
    expect(all.length).toBeGreaterThan(60);
    for (const { remove } of all) doing(sample, remove);
  });

  it("all of it leaves only what the person added", () => {
    const mine = doing(sample, acts.addStashItem(item("my-own")));
    const left = doing(mine, acts.removeSample(mine, sample));
    expect(canonicalJson(left)).toBe(
      canonicalJson({
        ...Object.fromEntries(
          Object.entries(sample).map(([name, was]) => [name, Array.isArray(was) ? [] : null]),
        ),
        format: sample.format,
        version: 1,
        stash: [item("my-own")],
      }),
    );
  });

  it("what is gone already is said when the act is done", () => {
    const line = item("none");
    expect(applyChanges(full, acts.removeLine(full, { ...kit, id: "none" }, line).changes)).toMatchObject({
      ok: false,
    });
  });
});

describe("mentions of what is removed", () => {
  const [se, ie] = [market, { id: "ie", name: "Ireland", currency: "EUR" }];
  const book = bookOf({
    home: { market: "ie", reportMarkets: ["se", "ie"] },
    markets: [
      {
        ...se,
        import: [
          { from: ["ie"], taxRate: "0" },
          { from: "any", taxRate: "0.25" },
          { from: [] },
          { from: ["se", "ie"] },
        ],
      },
      ie,
    ],
    shops: [
      { ...shop, postageTo: { ie: { amount: "1", currency: "SEK" } } },
      { id: "s2", name: "Boden", market: "ie" },
    ],
    parcels: [{ id: "pa", from: "ie", to: "se" }],
    stash: [item("st-1", { twinOf: ["st-2"], fromKit: "k2", photos: ["ph"] }), item("st-2")],
    photos: [photo, { id: "pi" }],
    kits: [
      {
        ...kit,
        spokenMarket: "ie",
        shipsFrom: "se",
        errata: [{ lines: ["l1", "l2"], text: "" }],
        tiers: [{ ...tier, markets: ["se", "ie"], postageTo: { ie: { amount: "1", currency: "EUR" } } }],
        lines: [
          {
            ...item("l1"),
            evidence: [
              { id: "a", kind: "precedent", line: "k2/l1" },
              { id: "b", kind: "precedent", line: "k2/l1", price: { amount: "1", currency: "EUR" } },
              { id: "c", kind: "shop", market: "ie", shop: "s2", price: { amount: "1", currency: "EUR" } },
              { id: "d", kind: "shop", shop: "s2", price: { amount: "1", currency: "EUR" } },
            ],
            settled: [{ kind: "list", market: "ie" }, { kind: "list" }],
          },
          item("l2"),
        ],
      },
      { id: "k2", maker: "m", period: "2025-01", lines: [item("l1")] },
    ],
    remakes: [
      {
        ...remake,
        picks: [
          { line: "l1", uses: [{ stash: "st-2" }, { stash: "st-1" }] },
          { line: "l2", uses: [] },
          { uses: null },
        ],
        essentials: [{ stash: "st-2", role: "sketch" }],
        shownOnly: [{ stash: "st-2" }],
        verdicts: [{ line: "l2", use: 1 }, { text: "all in all" }],
        entries: [{ by: "Ane", picks: [{ line: "l2", uses: [{ stash: "hers" }] }] }],
        photos: ["ph", "pi"],
      },
    ],
    requests: [
      { id: "rq", kit: "k1" },
      { id: "rr", kit: "k2" },
    ],
  });
  const [theKit, other] = book.kits ?? [];

  it("go with a market, its shops and its prices", () => {
    const left = doing(book, acts.removeMarket(book, ie));
    expect(left.home).toStrictEqual({ reportMarkets: ["se"] });
    expect(left.markets).toStrictEqual([
      { ...se, import: [{ from: "any", taxRate: "0.25" }, { from: [] }, { from: ["se"] }] },
    ]);
    expect(left.shops).toStrictEqual([{ ...shop, postageTo: {} }]);
    expect(left.parcels).toStrictEqual([{ id: "pa", to: "se" }]);
    const [kept] = left.kits ?? [];
    expect(kept?.spokenMarket).toBeUndefined();
    expect(kept?.tiers?.[0]).toMatchObject({ markets: ["se"], postageTo: {} });
    expect(kept?.lines?.[0]?.evidence?.map(({ id, shop }) => [id, shop])).toEqual([
      ["a", undefined],
      ["b", undefined],
      ["d", undefined],
    ]);
    expect(kept?.lines?.[0]?.settled).toStrictEqual([{ kind: "list" }]);
  });

  it("go with a stash item and a photo", () => {
    const [one, two] = book.stash ?? [];
    if (!one || !two) throw new Error("no stash");
    const left = doing(book, acts.removeStashItem(book, two));
    expect(left.stash).toStrictEqual([item("st-1", { twinOf: [], fromKit: "k2", photos: ["ph"] })]);
    expect(left.remakes?.[0]).toMatchObject({
      picks: [{ uses: [{ stash: "st-1" }] }, {}, {}],
      essentials: [],
      shownOnly: [],
    });
    const bare = doing(left, acts.removePhoto(left, photo));
    expect([bare.stash?.[0]?.photos, bare.remakes?.[0]?.photos]).toEqual([[], ["pi"]]);
  });

  it("go with a line, and with a kit", () => {
    if (!theKit || !other) throw new Error("no kits");
    const left = doing(book, acts.removeLine(book, theKit, item("l2")));
    expect(left.kits?.[0]?.errata).toStrictEqual([{ lines: ["l1"], text: "" }]);
    expect(left.remakes?.[0]).toMatchObject({
      picks: [{ line: "l1" }, { uses: null }],
      verdicts: [{ text: "all in all" }],
      entries: [{ by: "Ane", picks: [] }],
    });
    const bare = doing(left, acts.removeKit(left, other));
    expect(bare.kits?.[0]?.lines?.[0]?.evidence?.map(({ id, line }) => [id, line])).toEqual([
      ["b", undefined],
      ["c", undefined],
      ["d", undefined],
    ]);
    expect(bare.requests).toStrictEqual([{ id: "rq", kit: "k1" }, { id: "rr" }]);
    expect(bare.stash?.[0]?.fromKit).toBeUndefined();
  });

  it("are left out when something removed is brought back without them", () => {
    const place = { device: "dev", counter: 0, revision: 0 };
    const [one, two] = book.stash ?? [];
    if (!one || !two) throw new Error("no stash");
    const first = value(
      prepare(book, draft(acts.removeStashItem(book, one).changes, { at: "2026-05-01T00:00:00Z" }), place),
    );
    const second = value(
      prepare(
        first.book,
        draft(acts.removeStashItem(first.book, two).changes, { at: "2026-05-03T00:00:00Z" }),
        { ...place, counter: 1 },
      ),
    );
    const stands = (_: string, id: string) => id === "st-9";
    const removed = removedSince([first.act, second.act], "2026-04-03", stands);
    expect(removed.map(({ id, act }) => [id, act])).toEqual([
      ["st-2", "dev:2"],
      ["st-1", "dev:1"],
    ]);
    expect(removedSince([first.act, second.act], "2026-05-02", stands).map(({ id }) => id)).toEqual(["st-2"]);
    expect(removedSince([first.act, first.act], "2026-04-03", (_, id) => id === "st-1")).toEqual([]);
    const item1 = removed.find(({ id }) => id === "st-1");
    if (!item1) throw new Error("not found");
    expect(doing(second.book, acts.bringBack(second.book, item1)).stash).toStrictEqual([
      item("st-1", { twinOf: [], fromKit: "k2", photos: ["ph"] }),
    ]);
  });
});
