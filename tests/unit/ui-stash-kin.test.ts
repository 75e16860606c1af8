import { describe, expect, it } from "vitest";
import { KinshipSchema } from "../../src/engine/supply/index.ts";
import { emptyDraft, faultsOf, kinshipsOf, linksIn } from "../../src/ui/stash/kin/view/draft.ts";
import { readPairs } from "../../src/ui/stash/kin/view/pairs.ts";
import { kinOf, kinRows } from "../../src/ui/stash/kin/view/rows.ts";
import { offersIn } from "../../src/ui/supply-form/view/offers.ts";
import { kinWords } from "../../src/ui/words/kin.ts";
import { sampleBook } from "./sample.ts";

// No outside source: what is shown of links is the project's own.

const a = { maker: "Fjällbrand", line: "Älv", code: "" };
const b = { maker: "Kvist", line: "Ström", code: "" };
const lines = { ...emptyDraft(null), a, b };
const counted = (made: readonly unknown[]) => `ki-${made.length + 1}`;

describe("readPairs", () => {
  it.each([
    ["12\t340", ["12", "340"]],
    ["12 = 340", ["12", "340"]],
    ["12 → 340", ["12", "340"]],
    ["moss green; sea green", ["moss green", "sea green"]],
    ["moss green - sea green", ["moss green", "sea green"]],
    ["B-12  W-340", ["B-12", "W-340"]],
    ["12, 340", ["12", "340"]],
    ["12 340", ["12", "340"]],
  ])("%s", (line, pair) => {
    expect(readPairs(line)).toEqual({ pairs: [pair], odd: [] });
  });
  it("says which lines are no pairs, and takes each pair once", () => {
    expect(readPairs("12 = 340\r\n\n12 = 340\nmoss\n1 2 3\n4 = 5 = 6")).toEqual({
      pairs: [["12", "340"]],
      odd: ["moss", "1 2 3", "4 = 5 = 6"],
    });
  });
});

describe("a link being written", () => {
  it("asks for both sides, and that they are two", () => {
    expect(faultsOf(emptyDraft(null))).toEqual({ a: kinWords.sideMissing, b: kinWords.sideMissing });
    expect(faultsOf({ ...lines, b: { ...a, maker: "FJALLBRAND" } })).toEqual({ b: kinWords.itself });
    expect(faultsOf(lines)).toEqual({});
  });
  it("comes to one link of two lines, paired by number or by name", () => {
    expect(kinshipsOf({ ...lines, pairing: "name", sure: "told", source: " a letter " }, counted)).toEqual([
      {
        id: "ki-1",
        kind: "twin",
        a: { maker: "Fjällbrand", line: "Älv" },
        b: { maker: "Kvist", line: "Ström" },
        by: "name",
        sure: "told",
        source: "a letter",
      },
    ]);
  });
  it("comes to a link for each pair of a list, which the workbook takes", () => {
    const draft = { ...lines, pairing: "pairs" as const, pairs: "12 = 340\n13 = 350" };
    const made = kinshipsOf(draft, counted);
    expect(linksIn(draft)).toBe(2);
    expect(made.map(({ id, a: one, b: other }) => [id, one?.code, other?.code])).toEqual([
      ["ki-1", "12", "340"],
      ["ki-2", "13", "350"],
    ]);
    for (const kinship of made) expect(KinshipSchema.safeParse(kinship).success).toBe(true);
  });
  it("says which lines of a list are no pairs, and that there are none", () => {
    expect(faultsOf({ ...lines, pairing: "pairs", pairs: "moss" })).toEqual({
      pairs: kinWords.odd(["moss"]),
    });
    expect(faultsOf({ ...lines, pairing: "pairs" })).toEqual({ pairs: kinWords.pairsMissing });
  });
  it("begins with the thing it was asked for from", () => {
    expect(emptyDraft({ family: "paint", name: "moss", maker: "Kvist", code: "9" }).a).toEqual({
      maker: "Kvist",
      line: "",
      code: "9",
    });
  });
});

const sample = sampleBook();

describe("links as they are listed", () => {
  const { kinships, stash } = sample;
  it("names both sides, with how many of each are here", () => {
    const [first] = kinRows(kinships ?? [], stash ?? []);
    expect(first?.one).toEqual({ name: "Kvitlyng, Strand gouache", mine: "10 of mine" });
    expect(first?.other).toEqual({ name: "Ljusgränd, Studio gouache", mine: "7 of mine" });
    expect(first?.how).toBe("the same under two labels, number for number");
    expect(first?.sure).toBe("told by somebody");
  });
  it("is said of a thing from its own side", () => {
    expect(
      kinOf({ family: "marker", name: "surf", maker: "Nagisato", line: "Niju", code: "srf" }, kinships ?? []),
    ).toEqual([
      "Nagisato, Fudeashi, no. srf: the same colour in another body or size",
      "Nagisato, Niju refill, no. srf: one refills the other",
    ]);
  });
  it("offers the lines of the maker that is written", () => {
    const { makers, linesOf } = offersIn(sample);
    expect(makers).toContain("Tvärnö");
    expect(linesOf("Kvitlyng")).toEqual(["Strand gouache", "Strand watercolour"]);
    expect(linesOf("").length).toBeGreaterThan(linesOf("Kvitlyng").length);
  });
});

describe("what is likely of a supply", () => {
  const supply = { family: "paint" as const, name: "new", maker: "Kvitlyng", line: "Strand gouache" };
  const { likely } = offersIn(sample);
  it("is what the others of its line mostly are", () => {
    const mine = (sample.stash ?? []).filter(({ supply: one }) => one.line === "Strand gouache");
    const mls = mine.map(({ supply: { traits } }) => (traits as { ml?: number } | null | undefined)?.ml);
    const found = likely(supply, "ml");
    expect(found?.value).toBe(mls.toSorted()[Math.floor(mls.length / 2)]);
    expect(found?.count).toBeGreaterThanOrEqual(2);
  });
  it("is open where maker or line is, where few agree, and for another family", () => {
    expect(likely({ ...supply, line: null }, "ml")).toBeNull();
    expect(likely({ ...supply, family: "ink" }, "ml")).toBeNull();
    const of = (mls: readonly number[]) =>
      offersIn({
        format: "understudy-workbook",
        version: 1,
        stash: mls.map((ml, at) => ({ id: `st-${at}`, supply: { ...supply, traits: { ml } } })),
      }).likely(supply, "ml");
    expect([of([14, 15]), of([14, 14, 15, 15])]).toEqual([null, null]);
    expect(of([14, 14, 15])).toEqual({ value: 14, count: 2 });
  });
});
