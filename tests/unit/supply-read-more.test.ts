import { converter } from "culori";
import { describe, expect, it } from "vitest";
import rough from "../../fixtures/rough-lines.json" with { type: "json" };
import swedish from "../../fixtures/swedish-lines.json" with { type: "json" };
import { hexOfWord, isGuessedColour, readLine, readLines } from "../../src/engine/supply/index.ts";
import { pigmentWords } from "../../src/engine/supply/read/pigment-words.ts";
import { swedishColours } from "../../src/engine/supply/read/words/sv-colours.ts";

// The lines are invented, as sloppy as people write, and their right readings were looked over one by one: common
// practice, no source. Inches are 25.4 mm, sheets are those of ISO 216.
describe("what people write without care", () => {
  it("is enough to tell: 150 lines and more, of every family", () => {
    expect(rough.length).toBeGreaterThanOrEqual(150);
    expect(new Set(rough.map(({ supply }) => supply.family)).size).toBe(12);
  });

  it.each(rough)("$line", ({ line, qty, supply, leftover }) => {
    const reading = readLine(line);
    expect(reading.qty).toBe(qty);
    expect(reading.supply).toEqual(supply);
    expect(reading.leftover).toEqual(leftover);
  });
});

describe("Swedish lines", () => {
  it("are of every family", () => {
    expect(new Set(swedish.map(({ supply }) => supply.family)).size).toBe(12);
  });

  it.each(swedish)("$line", ({ line, qty, supply, pieces, leftover, notSaid }) => {
    const reading = readLine(line, {}, "sv");
    expect(reading.qty).toBe(qty);
    expect(reading.supply).toEqual(supply);
    expect(reading.pieces.map(({ text, field, reads }) => [text, field, reads])).toEqual(pieces);
    expect(reading.leftover).toEqual(leftover);
    expect(reading.notSaid).toEqual(notSaid);
  });
});

const factsOf = (line: string, language: "en" | "sv") => {
  const { qty, supply, leftover } = readLine(line, {}, language);
  return { qty, family: supply.family, traits: supply.traits, colour: supply.colour, leftover };
};

// Words that mean one thing in Swedish and another, or none, in English.
const clashing = /\btub\b|\b(?:en|ett|i|par|till|med|bred)\b|^(?:ett )?par /i;

describe("both languages at once", () => {
  it.each(swedish.filter(({ line }) => !clashing.test(line)))("English page: $line", ({ line }) => {
    expect(factsOf(line, "en")).toEqual(factsOf(line, "sv"));
  });

  it.each(rough.filter(({ line }) => !clashing.test(line)))("Swedish page: $line", ({ line }) => {
    expect(factsOf(line, "sv")).toEqual(factsOf(line, "en"));
  });

  it("takes a word that clashes as the page's own language means it", () => {
    expect(factsOf("tub gouache", "sv").traits).toEqual({ medium: "gouache", form: "tube" });
    expect(factsOf("gouache in a tub", "en").traits).toEqual({ medium: "gouache", form: "pot" });
    expect(factsOf("en plein air pad", "en")).toMatchObject({ qty: 1, leftover: ["en plein air"] });
  });
});

describe("a colour guessed from its name", () => {
  const colourOf = (line: string) => readLine(line).supply.colour;

  it("says so by having no source, and a typed one does not", () => {
    expect(colourOf("gouache burnt sienna")).toEqual({ name: "burnt sienna", hex: "#8a3f24" });
    expect(isGuessedColour(colourOf("gouache burnt sienna"))).toBe(true);
    expect(isGuessedColour(colourOf("gouache burnt sienna #8a3f24"))).toBe(false);
    expect(isGuessedColour({ name: "burnt sienna", hex: "#8a3f25" })).toBe(false);
    expect(isGuessedColour({ name: "burnt sienna", lab: [40, 30, 30], white: "D65" })).toBe(false);
    expect(isGuessedColour(null)).toBe(false);
  });

  const words = pigmentWords
    .trim()
    .split(/,\s+/)
    .map((entry) => entry.split(/\s+/)[0]?.replaceAll("_", " ") ?? "");

  // Judge: culori's OKLCH. The bands are wide: that a green is green, no more. Red lead and caput mortuum name metals.
  const oklch = converter("oklch");
  const bands = [
    { end: " green", from: 95, to: 195 },
    { end: " blue", from: 205, to: 290 },
    { end: " yellow", from: 70, to: 112 },
    { end: " red", from: 3, to: 50 },
    { end: " violet", from: 280, to: 335 },
    { end: " ochre", from: 25, to: 95 },
  ];
  it.each(bands)("is of its hue: every$end", ({ end, from, to }) => {
    const named = words.filter((word) => word.endsWith(end));
    expect(named.length).toBeGreaterThan(2);
    for (const word of named) {
      const hue = oklch(hexOfWord(word) ?? "")?.h ?? Number.NaN;
      expect(hue, word).toBeGreaterThan(from);
      expect(hue, word).toBeLessThan(to);
    }
  });

  it("is light for a white and dark for a black", () => {
    const lightness = (word: string) => oklch(hexOfWord(word) ?? "")?.l ?? Number.NaN;
    for (const word of words.filter((each) => each.endsWith(" white")))
      expect(lightness(word)).toBeGreaterThan(0.93);
    for (const word of words.filter((each) => each.endsWith(" black")))
      expect(lightness(word)).toBeLessThan(0.33);
  });

  it("is known for every Swedish word by its English one", () => {
    for (const [word, english] of swedishColours) {
      expect(hexOfWord(english.replaceAll("_", " ")), `${word}: ${english}`).not.toBeNull();
      expect(hexOfWord(word.replaceAll("_", " "))).toBe(hexOfWord(english.replaceAll("_", " ")));
    }
  });
});

// A ream of watercolour paper is 500 sheets of 22 by 30 inches, a pound 453.59237 g (1959): 140 lb come to 298 g/m².
// Pads print the round figure. Common practice, no source.
it.each([90, 140, 300])("%i lb of watercolour paper are what its ream weighs, to a hundredth", (pounds) => {
  const gsm = (pounds * 453.59237) / (500 * 0.5588 * 0.762);
  const { supply } = readLine(`watercolour pad A4 ${pounds} lb`);
  const read = supply.family === "paper" ? supply.traits?.gsm : null;
  expect(Math.abs((read ?? 0) / gsm - 1)).toBeLessThan(0.01);
});

it("leaves pounds of other papers alone, and those that gainsay the grams", () => {
  expect(readLine("mixed media pad A4 98 lb").leftover).toEqual(["98 lb"]);
  expect(readLine("watercolour pad A4 140 lb, 200 gsm").leftover).toEqual(["140 lb"]);
});

it("counts a piece's place in the line as it was written, bullet and all", () => {
  const line = "  🎨 2. 2 gouache tubes";
  const places = readLine(line).pieces.map(({ start, end, text }) => [line.slice(start, end), text]);
  expect(places).toEqual([
    ["2", "2"],
    ["gouache", "gouache"],
    ["tubes", "tubes"],
  ]);
});

it("reads a list pasted from a page in either language", () => {
  const list = "☐ 2 tuber gouache mossgrön\t15 ml\r\n✅ 4B pencil\n—\n1️⃣ suddgummi\n② A5 sketchbook";
  expect(readLines(list, {}, "sv").map(({ qty, supply }) => [qty, supply.name])).toEqual([
    [2, "Gouache, mossgrön"],
    [1, "Blyertspenna"],
    [1, "Suddgummi"],
    [1, "Skissbok, A5"],
  ]);
});

it.each(["0.5 sheets", "99999999999999999999 sheets", "paper 9007199254740993 sheets"])(
  "%s are no sheets, and stay in the name",
  (line) => expect(readLine(line).supply.traits ?? {}).not.toHaveProperty("sheets"),
);
