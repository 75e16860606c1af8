import { describe, expect, it } from "vitest";
import { factsOf, type Supply, valueWord } from "../../../src/engine/supply/index.ts";

const comma = (value: number) => String(value).replace(".", ",");
const facts = (supply: Supply) => factsOf(supply, comma, "sv").join(", ");

// The words are the trade's: common practice, no source.
describe("factsOf in Swedish", () => {
  it.each([
    [
      {
        family: "paint",
        name: "Mossgrön",
        traits: { medium: "gouache", form: "tube", ml: 15, opacity: "semi" },
      },
      "gouache, tub, 15 ml, halvtäckande",
    ],
    [
      { family: "paint", name: "Moss", traits: { medium: "watercolour", pigments: ["PG7", "PY42"] } },
      "akvarell, PG7 och PY42",
    ],
    [
      {
        family: "marker",
        name: "Teal",
        traits: { base: "alcohol", tips: ["chisel", "fine"], refillable: true },
      },
      "spritbaserad, kilformad spets och fin spets, påfyllningsbar",
    ],
    [
      {
        family: "liner",
        name: "Svart",
        traits: { widthMm: 0.3, base: "pigment", tip: "fibre", waterproof: true },
      },
      "0,3 mm, pigment, fiberspets, vattenfast",
    ],
    [
      { family: "graphite", name: "Nordtall", traits: { grade: "4B", core: "charcoal", form: "stick" } },
      "4B, kol, stav",
    ],
    [{ family: "colour-pencil", name: "Peat", traits: { binder: "oil" } }, "oljebaserad"],
    [{ family: "ink", name: "Walnut", traits: { base: "shellac", ml: 30 } }, "schellack, 30 ml"],
    [{ family: "pastel", name: "Oyster", traits: { kind: "soft" } }, "mjuk"],
    [
      {
        family: "brush",
        name: "Pensel 8",
        traits: { shape: "round", widthMm: 8, hair: "synthetic", waterReservoir: true },
      },
      "rund, 8 mm, syntet, med vattenbehållare",
    ],
    [{ family: "eraser", name: "Sudd", traits: { kind: "kneaded" } }, "knådbart"],
    [
      {
        family: "paper",
        name: "Pad",
        traits: { size: "A4", gsm: 120, surface: "rough", use: "cartridge", coated: "one", sheets: 2 },
      },
      "A4, 120 g/m², grov yta, ritpapper, bestruket på ena sidan, 2 ark",
    ],
    [
      {
        family: "paper",
        name: "Vitt",
        traits: { size: [235, 300], use: "marker", coated: "both", sheets: 1 },
      },
      "235 × 300 mm, papper för märkpennor, bestruket på båda sidorna, 1 ark",
    ],
    [{ family: "tool", name: "Grå", traits: { kind: "blender" } }, "estomp"],
    [{ family: "other", name: "Nål" }, ""],
  ] satisfies [Supply, string][])("%j", (supply, said) => expect(facts(supply)).toBe(said));
});

describe("what a name says already", () => {
  it.each([
    // In Swedish,
    [
      {
        family: "paint",
        name: "Täckande gouachetub, mossgrön 15 ml",
        traits: { medium: "gouache", form: "tube", ml: 15, opacity: "opaque" },
      },
      "",
    ],
    [
      {
        family: "paper",
        name: "Akvarellblock 24 × 32 cm, 20 ark",
        traits: { size: [240, 320], use: "watercolour", sheets: 20, gsm: 300 },
      },
      "300 g/m²",
    ],
    [{ family: "brush", name: "Vattenpensel", traits: { waterReservoir: true } }, ""],
    [{ family: "liner", name: "Fineliner 0,3 mm", traits: { widthMm: 0.3 } }, ""],
    // or in English, where the Swedish word is another:
    [
      {
        family: "paint",
        name: "Opaque watercolour pan, moss 2.5 ml",
        traits: { medium: "watercolour", form: "pan", ml: 2.5, opacity: "opaque" },
      },
      "",
    ],
    [
      { family: "paper", name: "Layout pad, 20 sheets", traits: { use: "layout", sheets: 20, gsm: 70 } },
      "70 g/m²",
    ],
    [
      { family: "marker", name: "Refillable alcohol marker", traits: { base: "alcohol", refillable: true } },
      "",
    ],
    [{ family: "liner", name: "Liner 0.3 mm", traits: { widthMm: 0.3 } }, ""],
  ] satisfies [Supply, string][])("is left out: %j", (supply, said) => expect(facts(supply)).toBe(said));

  it("does not count in English when it is Swedish, so that English stays as it was", () => {
    const supply: Supply = { family: "paint", name: "Täckande vit", traits: { opacity: "opaque" } };
    expect(factsOf(supply)).toEqual(["opaque"]);
    expect(facts(supply)).toBe("");
  });
});

it("valueWord says a value by its trait, and gives back what it does not know", () => {
  expect(valueWord("paint", "form", "stick", "sv")).toBe("krita");
  expect(valueWord("graphite", "form", "stick", "sv")).toBe("stav");
  expect(valueWord("paint", "opacity", "semi")).toBe("semi-opaque");
  expect(valueWord("paint", "form", "half-pan")).toBe("half-pan");
  expect(valueWord("paint", "constructor", "toString", "sv")).toBe("toString");
});
