import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import heldOut from "../../../fixtures/reading/held-out.json" with { type: "json" };
import lookedAt from "../../../fixtures/reading/looked-at.json" with { type: "json" };
import { languages } from "../../../src/engine/record/index.ts";
import { type KnownNames, readLine } from "../../../src/engine/supply/index.ts";
import { type Judged, precision, recall, scoreOf } from "./reading-score.ts";

// The lines are invented and were judged by hand, each before the reader had seen it: common practice, no source.
// `heldOut` is every third of them: what the reader gets wrong there was never looked at while it was improved.
const sets = { "looked at": lookedAt, "held out": heldOut } satisfies Record<
  string,
  Record<(typeof languages)[number], readonly Judged[]>
>;
const all = Object.entries(sets).flatMap(([name, set]) =>
  languages.map((language) => ({ name, language, judged: set[language] as readonly Judged[] })),
);
const least = 0.95;

const inHundred = (share: number): string => `${(share * 100).toFixed(1)} %`;
const named = { en: "English", sv: "Swedish" };

describe("how much of a written line is read right", () => {
  it("is measured on two hundred lines or more, half of them in each language, a third held out", () => {
    const count = (lists: readonly (readonly unknown[])[]) =>
      lists.reduce((sum, { length }) => sum + length, 0);
    const lines = count(all.map(({ judged }) => judged));
    expect(lines).toBeGreaterThanOrEqual(200);
    for (const language of languages)
      expect(count([lookedAt[language], heldOut[language]])).toBeGreaterThan(lines * 0.49);
    expect(count([heldOut.en, heldOut.sv])).toBeGreaterThan(lines * 0.32);
  });

  it("has no line twice", () => {
    const lines = all.flatMap(({ judged }) => judged.map(({ line }) => line));
    expect(new Set(lines).size).toBe(lines.length);
  });

  it.each(all)("at least 95 of 100 parts, $name, $language", ({ judged, language }) => {
    const score = scoreOf(judged, language);
    expect(recall(score), score.missed.join("\n")).toBeGreaterThanOrEqual(least);
    expect(precision(score), score.wrong.join("\n")).toBeGreaterThanOrEqual(least);
  });

  it("is told truly in docs/reading.md", () => {
    const told = readFileSync("docs/reading.md", "utf8");
    for (const { name, language, judged } of all) {
      const score = scoreOf(judged, language);
      const row = [
        `${name}, ${named[language]}`,
        score.lines,
        score.both + score.missed.length,
        inHundred(recall(score)),
        inHundred(precision(score)),
      ];
      expect(told).toContain(`| ${row.join(" | ")} |`);
    }
  });

  it("sees a wrong reading: a judge who says otherwise lowers the figures", () => {
    const [first] = lookedAt.en as readonly Judged[];
    expect(first).toBeDefined();
    if (!first) return;
    const right = scoreOf([first], "en");
    const wrong = scoreOf([{ ...first, colour: "rust", qty: 7 }], "en");
    expect(right).toMatchObject({ missed: [], wrong: [] });
    expect(wrong.missed).toHaveLength(2);
    expect(wrong.wrong).toHaveLength(2);
  });
});

describe("prices in a line", () => {
  const priced: KnownNames = { prices: true };
  it.each([
    ["fineliner 0.5 mm sepia 4,90 €", { amount: "4.90", sign: "€" }],
    ["€4.90 fineliner", { amount: "4.90", sign: "€" }],
    ["kneaded eraser £1.20", { amount: "1.20", sign: "£" }],
    ["gouache 69:-", { amount: "69", sign: "kr" }],
    ["gouache 69 kr", { amount: "69", sign: "kr" }],
    ["pad 1 250,50 SEK", { amount: "1250.50", sign: "SEK" }],
    ["pad 1.250,50 €", { amount: "1250.50", sign: "€" }],
    ["brush pen ¥550", { amount: "550", sign: "¥" }],
  ])("%s", (line, price) => {
    const read = readLine(line, priced);
    expect(read.price).toEqual(price);
    expect(read.supply.name).not.toMatch(/[€£¥]|kr|SEK|69|4[.,]90/);
    expect(read.pieces.filter(({ field }) => field === "price")).toHaveLength(1);
  });

  it.each([
    ["of two nobody knows which one counts", "gouache 4,90 € (was 6,90 €)"],
    ["a point before three digits may part thousands or not", "pad 1,500 €"],
  ])("stay in the name where unsure: %s", (_, line) => {
    const read = readLine(line, priced);
    expect(read.price).toBeNull();
    expect(read.leftover.length).toBeGreaterThan(0);
  });

  it("stay in the name where nobody asked for them", () => {
    const read = readLine("gouache moss 4,90 €");
    expect(read.price).toBeNull();
    expect(read.leftover).toEqual(["4,90 €"]);
  });
});

describe("slips of the pen and joined words", () => {
  it.each([
    ["gouashe tube moss", "en", { family: "paint", traits: { medium: "gouache", form: "tube" } }],
    ["alcohl marker teal", "en", { family: "marker", traits: { base: "alcohol" } }],
    ["charcaol stick", "en", { family: "graphite", traits: { core: "charcoal", form: "stick" } }],
    ["fineilner 0,3 svart", "sv", { family: "liner", traits: { widthMm: 0.3 } }],
    ["schellacktusch 30 ml", "sv", { family: "ink", traits: { base: "shellac", ml: 30 } }],
  ] as const)("%s", (line, language, supply) => {
    const read = readLine(line, {}, language);
    expect(read.supply).toMatchObject(supply);
    for (const { start, end, text } of read.pieces) expect(line.slice(start, end)).toBe(text);
  });

  it("leaves words of their own and makers' names alone", () => {
    expect(readLine("eraser from the market").leftover).toEqual(["from the market"]);
    expect(readLine("eraser, Pencell").leftover).toEqual(["Pencell"]);
  });
});
