import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { LineSchema } from "../../src/engine/price/index.ts";
import { readLines, SupplySchema } from "../../src/engine/supply/index.ts";
import { type Workbook, WorkbookSchema } from "../../src/engine/workbook/index.ts";
import type { Kit, Tier } from "../../src/engine/worth/index.ts";
import { claimField, claimFields, toldOf } from "../../src/ui/kits/view/claims.ts";
import { valueAt } from "../../src/ui/kits/view/conflicts.ts";
import {
  askedOf,
  entryView,
  type Fix,
  knownNames,
  knownSources,
  lineOf,
  pieceAt,
  setField,
} from "../../src/ui/kits/view/entry.ts";
import {
  neighbours,
  percentText,
  readPercent,
  readWant,
  wantText,
} from "../../src/ui/kits/view/line-fields.ts";
import { contentsView } from "../../src/ui/kits/view/line-rows.ts";
import { pastedLine, pastedRow } from "../../src/ui/kits/view/pasted.ts";
import { currenciesOf, evidenceSaid } from "../../src/ui/kits/view/price-said.ts";
import { likelyCurrency, offeredAfter, tierRows } from "../../src/ui/kits/view/tiers.ts";
import { formatter } from "../../src/ui/words/format.ts";

// No outside source: the words and order of this page are the project's own. Names are invented.
const british = formatter("en-GB");
const sample: Workbook = WorkbookSchema.parse(
  JSON.parse(readFileSync("fixtures/sample.understudy.json", "utf8")),
);
const kitOf = (id: string): Kit => {
  const kit = sample.kits?.find((one) => one.id === id);
  if (!kit) throw new Error(`the sample has no ${id}`);
  return kit;
};
const lowLight = kitOf("sp-2026-04");
const view = contentsView(lowLight, british);
const row = (id: string) => view.rows.find(({ line }) => line.id === id);

describe("the lines of a kit", () => {
  it("are numbered, named, and told by their facts and by what I would use", () => {
    expect(row("l1")).toMatchObject({ number: 1, name: "Gouache, moss", facts: "tube, 15 ml, opaque" });
    expect(row("l3")?.facts).toBe("tube, 15 ml, opaque, would use 50 in 100");
    expect(row("l7")?.facts).toMatch(/would not use it$/);
  });

  it("say who says so, and what each one says where they differ", () => {
    expect(row("l1")?.told).toEqual({ text: "photo of the card", differs: false, note: null });
    expect(row("l6")?.told).toEqual({
      text: "photo of the card says 0.3, a post 0.35",
      differs: true,
      note: "Sources differ. Photo of the card: seen. A post: told.",
    });
    expect(row("l2")?.told.text).toBe("");
  });

  it("carry the maker's later corrections", () => {
    expect(row("l4")?.corrections).toEqual([
      "Corrected by the maker on 1 May 2026: The pencil is peat, not walnut as the first cards had it.",
    ]);
  });

  it("are summed up before any number", () => {
    expect(view.lead).toBe("There are eight things in it.");
    expect(view.leadMore).toBe("Sources differ on two of them.");
    expect(contentsView({ ...lowLight, lines: null }, british).lead).toBe("What was in it?");
  });

  it("call for a colour where a coloured thing has none", () => {
    const bare = [
      { id: "a", supply: { family: "marker" as const, name: "Marker" } },
      { id: "b", supply: { family: "paper" as const, name: "Pad" } },
    ];
    expect(contentsView({ ...lowLight, lines: bare }, british).leadMore).toBe("One has no colour yet.");
  });
});

describe("claims", () => {
  it("do not differ over an unreadable word", () => {
    const supply = { family: "marker" as const, name: "Marker" };
    const claims = [
      { field: "code", value: null, sure: "unreadable" as const, source: "the card" },
      { field: "code", value: "ab", sure: "told" as const, source: "a post" },
    ];
    expect(toldOf({ id: "l", supply, claims }).text).toBe("the card and a post");
  });

  it("are about fields said in words, whose present value can be looked up", () => {
    expect(claimField("traits.widthMm")).toBe("Width");
    expect(claimFields("liner").map(({ value }) => value)).toContain("traits.widthMm");
    const line = lowLight.lines?.find(({ id }) => id === "l6");
    expect(line && valueAt(line, "traits.widthMm")).toBe(0.3);
    expect(line && valueAt(line, "qty")).toBe(1);
    expect(line && valueAt(line, "constructor")).toBeUndefined();
  });
});

describe("a typed line", () => {
  const typed = "block, 24 x 32 cm, 12 sheets, 300 gsm, medium";
  const read = entryView(typed, {}, []);

  it("is nothing while nothing is written", () => expect(entryView("  ", {}, [])).toBeNull());

  it("is laid out whole, piece by piece", () => {
    expect(read?.stretches.map(({ text }) => text).join("")).toBe(typed);
    expect(read?.stretches.flatMap(({ piece }) => piece?.reads ?? [])).toEqual(
      read?.pieces.map(({ reads }) => reads),
    );
    expect(read?.pieces).toHaveLength(5);
    expect(read?.notSaid).toBe("Not said, so left open: use, coating, acid-free.");
  });

  it("tells which piece the caret is in", () => {
    expect(pieceAt(read?.pieces ?? [], 0)?.field).toBe("traits.bound");
    expect(pieceAt(read?.pieces ?? [], typed.length)?.field).toBe("traits.surface");
  });

  it("asks about the piece in hand only where it leaves a choice", () => {
    const asked = (field: string | null) => read && askedOf(read, field);
    expect(asked("traits.surface")).toBe("traits.surface");
    expect(asked("traits.gsm")).toBe("traits.gsm");
    expect(asked("traits.opacity")).toBeNull(); // no such piece in the line
  });

  it("takes what is put right, for as long as the line says something of it", () => {
    const fix: Fix = { field: "traits.surface", path: ["traits", "surface"], value: "rough" };
    const fixed = entryView(typed, {}, [fix]);
    expect(fixed?.supply.traits?.surface).toBe("rough");
    expect(fixed?.pieces.at(-1)?.reads).toBe("surface: rough");
    const open = entryView(typed, {}, [{ ...fix, value: undefined }]);
    expect(open?.supply.traits).not.toHaveProperty("surface");
    expect(entryView("block A4", {}, [fix])?.supply.traits).not.toHaveProperty("surface");
  });

  it("asks for the colour of a name that none goes with, and forgets it with the name", () => {
    const unknown = entryView("colour pencil rowan", {}, []);
    expect(unknown && askedOf(unknown, null)).toBe("colour");
    const fix: Fix = {
      field: "colour",
      path: ["colour"],
      value: { name: "rowan", hex: "#b8322c", from: "typed" },
    };
    expect(entryView("colour pencil rowan", {}, [fix])?.supply.colour?.hex).toBe("#b8322c");
    expect(entryView("colour pencil heron", {}, [fix])?.supply.colour?.hex).toBeUndefined();
  });

  it("asks what a thing is that it could not tell, and takes the answer", () => {
    const fix: Fix = { field: "family", from: "other", family: "pastel" };
    expect(entryView("swallow thing", {}, [])?.asks).toBe("family");
    expect(entryView("swallow thing", {}, [fix])?.supply.family).toBe("pastel");
    expect(entryView("HB pencil", {}, [fix])?.supply.family).toBe("graphite");
  });

  it("becomes a line that the workbook takes, with who says so", () => {
    const line = read && lineOf("l9", read, { source: "photo of the card", sure: "seen" }, "2026-05-02");
    expect(LineSchema.safeParse(line).success).toBe(true);
    expect(line?.claims).toEqual([
      {
        field: "name",
        value: "Block, 24 × 32 cm",
        sure: "seen",
        source: "photo of the card",
        date: "2026-05-02",
      },
    ]);
    expect(read && lineOf("l9", read, null, "2026-05-02")).not.toHaveProperty("claims");
  });
});

it("sets one field of a supply, and leaves one out", () => {
  const supply = SupplySchema.parse({ family: "ink", name: "Ink", traits: { ml: 30 } });
  expect(setField(supply, ["traits", "base"], "dye")).toEqual({
    family: "ink",
    name: "Ink",
    traits: { ml: 30, base: "dye" },
  });
  expect(setField(supply, ["traits", "ml"], undefined).traits).toEqual({});
  expect(setField(supply, [], { ...supply, name: "Sepia" }).name).toBe("Sepia");
});

it("looks out for the makers, lines and sources that the workbook knows", () => {
  expect(knownNames(sample).makers).toContain("Kvitlyng");
  expect(knownSources(sample, "sp-2026-04")[0]).toBe("photo of the card");
});

it("shows a pasted list as it was understood, and as it was put right", () => {
  const lines = readLines("- 2 gouache tubes moss 15 ml 4,90 €\n- brass sharpener\n\n").map(
    ({ text }, place) => pastedLine(text, place),
  );
  const rows = lines.flatMap((line) => pastedRow(line, {}, british) ?? []);
  expect(rows.map(({ line, facts }) => [line.text, facts])).toEqual([
    ["2 gouache tubes moss 15 ml 4,90 €", "2 of them, tube, 15 ml"],
    ["brass sharpener", ""],
  ]);
  expect(rows[1]?.view.kept).toBe("Kept in the name as it stands: brass.");
  expect(rows[0]?.view.price).toEqual({ amount: "4.90", sign: "€" });
  const [first] = lines;
  if (!first) throw new Error("no line");
  const kept = pastedRow({ ...first, keepsPrice: false }, {}, british);
  expect(kept?.view.price).toBeNull();
  expect(kept?.view.supply.name).toContain("4,90 €");
  const path = ["traits", "form"];
  const fixes = [{ field: "traits.form", path, value: "pot" }];
  expect(pastedRow({ ...first, fixes }, {}, british)?.facts).toBe("2 of them, pot, 15 ml");
  expect(pastedRow({ ...first, text: " " }, {}, british)).toBeNull();
});

describe("a price in a line", () => {
  const book = (home: string, ...currencies: readonly string[]): Workbook => ({
    format: "understudy-workbook",
    version: 1,
    home: { market: home },
    markets: currencies.map((currency) => ({ id: currency.toLowerCase(), name: currency, currency })),
  });
  it("is in the currency of one's own markets where its sign has several, home first", () => {
    const crowns = { amount: "49", sign: "kr" };
    expect(currenciesOf(crowns, book("nok", "SEK", "NOK"))[0]).toBe("NOK");
    expect(currenciesOf(crowns, book("eur", "EUR", "DKK"))[0]).toBe("DKK");
    expect(currenciesOf({ amount: "4", sign: "€" }, book("sek", "SEK"))).toEqual(["EUR"]);
    expect(currenciesOf({ amount: "4", sign: "CHF" }, book("sek", "SEK"))).toEqual(["CHF"]);
  });
  it("becomes a price found, of the only market with its currency", () => {
    const euros = { amount: "4.90", currency: "EUR" };
    const day = "2026-05-02";
    expect(evidenceSaid("e1", euros, "shop", "a post", day, book("eur", "EUR"))).toEqual({
      id: "e1",
      kind: "shop",
      price: euros,
      market: "eur",
      date: day,
      source: "a post",
    });
    expect(evidenceSaid("e1", euros, "card", null, day, book("eur", "EUR"))).not.toHaveProperty("market");
    const two = { ...book("a"), markets: ["a", "b"].map((id) => ({ id, name: id, currency: "EUR" })) };
    expect(evidenceSaid("e1", euros, "list", null, day, two)).not.toHaveProperty("market");
  });
});

describe("a share I would use", () => {
  it.each([
    ["50", "0.5"],
    ["12,5 %", "0.125"],
    ["100", "1"],
    ["0", "0"],
  ])("%s in 100 is %s", (text, value) => expect(readWant(text)).toEqual({ ok: true, value }));
  it.each(["101", "half", "-5"])("%s is a fault", (text) => expect(readWant(text).ok).toBe(false));
  it("is all of it where nothing is said", () => {
    expect(wantText(null)).toBe("100");
    expect(wantText("0.125")).toBe("12.5");
    expect(wantText("0.125", formatter("sv-SE"))).toBe("12,5");
    expect(readWant("")).toEqual({ ok: true, value: undefined });
  });
});

it("reads a tax in hundredths and prints it back", () => {
  expect(readPercent("25 %")).toEqual({ ok: true, value: "0.25" });
  expect(percentText("0.25")).toBe("25");
  expect(percentText("0")).toBe("");
});

it("knows where a line can move to", () => {
  const lines = ["a", "b", "c"].map((id) => ({ id }));
  expect(neighbours(lines, "a")).toMatchObject({ isFirst: true, isLast: false, afterNext: { id: "c" } });
  expect(neighbours(lines, "b")).toMatchObject({ before: { id: "a" }, afterNext: null });
  expect(neighbours(lines, "c")).toMatchObject({ isLast: true, before: { id: "b" } });
});

describe("tiers", () => {
  it("are printed with where they are offered", () => {
    const rows = tierRows(lowLight, sample, british);
    expect(rows.map(({ name, kits, price, where }) => [name, kits, price, where])).toEqual([
      ["Month by month", "1", "EUR\u00a024.00", "everywhere"],
      ["Season of three", "3", "EUR\u00a066.00", "everywhere"],
      ["Year of twelve", "12", "EUR\u00a0234.00", "Sweden, Ireland and Japan"],
    ]);
  });

  it("are likely in the currency of the last one, of the origin, of home", () => {
    expect(likelyCurrency(lowLight, sample)).toBe("EUR");
    expect(likelyCurrency({ ...lowLight, tiers: [], shipsFrom: "jp" }, sample)).toBe("JPY");
    expect(likelyCurrency({ ...lowLight, tiers: [], shipsFrom: null }, sample)).toBe("SEK");
  });

  it("offered in all markets need not name them", () => {
    const markets = [{ id: "se" }, { id: "ie" }];
    const tier: Tier = { id: "t", kits: 1, price: { amount: "1", currency: "EUR" } };
    expect(offeredAfter(tier, markets, "ie", false)).toEqual(["se"]);
    expect(offeredAfter({ ...tier, markets: ["se"] }, markets, "ie", true)).toBeUndefined();
    expect(offeredAfter({ ...tier, markets: ["se"] }, markets, "se", false)).toEqual([]);
  });
});
