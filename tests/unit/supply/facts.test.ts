import { describe, expect, it } from "vitest";
import { factsOf, type Supply } from "../../../src/engine/supply/index.ts";

// The words are the trade's: common practice, no source.
describe("factsOf", () => {
  it.each([
    [
      {
        family: "paint",
        name: "Gouache, moss",
        traits: { medium: "gouache", form: "tube", ml: 15, opacity: "semi" },
      },
      "tube, 15 ml, semi-opaque",
    ],
    [
      { family: "paint", name: "Moss", traits: { medium: "gouache", pigments: ["PG7", "PY42"] } },
      "gouache, PG7 and PY42",
    ],
    [
      {
        family: "marker",
        name: "Teal",
        traits: { base: "water-dye", tips: ["chisel", "fine"], refillable: true },
      },
      "water-based dye, chisel and fine tip, refillable",
    ],
    [
      {
        family: "liner",
        name: "Liner, black",
        traits: { widthMm: 0.3, base: "pigment", tip: "fibre", waterproof: true },
      },
      "0.3 mm, pigment, fibre tip, waterproof",
    ],
    [
      {
        family: "graphite",
        name: "Graphite pencil",
        traits: { grade: "4B", core: "graphite", form: "pencil" },
      },
      "4B",
    ],
    [{ family: "colour-pencil", name: "Peat", traits: { binder: "oil" } }, "oil binder"],
    [{ family: "ink", name: "Walnut", traits: { base: "shellac", ml: 30 } }, "shellac, 30 ml"],
    [{ family: "pastel", name: "Oyster", traits: { kind: "soft" } }, "soft"],
    [
      { family: "brush", name: "Flat brush", traits: { shape: "flat", widthMm: 10, hair: "synthetic" } },
      "10 mm, synthetic",
    ],
    [{ family: "eraser", name: "Kneaded eraser", traits: { kind: "kneaded" } }, ""],
    [
      {
        family: "paper",
        name: "Pad",
        traits: { size: "A4", gsm: 120, use: "cartridge", coated: "one", sheets: 1 },
      },
      "A4, 120 gsm, cartridge paper, coated on one side, 1 sheet",
    ],
    [
      {
        family: "paper",
        name: "Watercolour block, 24 × 32 cm",
        traits: { size: [240, 320], gsm: 300, use: "watercolour" },
      },
      "300 gsm",
    ],
    [{ family: "paper", name: "Block", traits: { size: [240, 320] } }, "240 × 320 mm"],
    [{ family: "tool", name: "Ruler", traits: { kind: "ruler" } }, ""],
    [{ family: "other", name: "Pin" }, ""],
    [{ family: "paint", name: "Moss", traits: null }, ""],
  ] satisfies [Supply, string][])("%j", (supply, facts) => expect(factsOf(supply).join(", ")).toBe(facts));

  it("writes numbers as the reader does", () => {
    const swedish = (value: number) => value.toLocaleString("sv-SE");
    expect(factsOf({ family: "liner", name: "Liner", traits: { widthMm: 0.3 } }, swedish)).toEqual([
      "0,3 mm",
    ]);
  });
});
