import { describe, expect, it } from "vitest";
import { families, type Supply, SupplySchema, traitsByFamily } from "../../src/engine/supply/index.ts";
import { asFamily } from "../../src/ui/supply-form/view/change-family.ts";
import { hexOf, readColour, withHex, withName } from "../../src/ui/supply-form/view/colour-field.ts";
import { readNumber, readSize, readTexts } from "../../src/ui/supply-form/view/read-trait.ts";
import { traitFields } from "../../src/ui/supply-form/view/trait-fields.ts";

// No outside source for the form itself: its fields must be those of the workbook's schemas.
describe.each(families)("the form of %s", (family) => {
  it("has one field for each trait of the schema", () => {
    expect(traitFields(family).map(({ trait }) => trait)).toEqual(Object.keys(traitsByFamily[family]));
  });

  it("offers only words that the schema takes", () => {
    for (const { trait, input } of traitFields(family)) {
      if (input.kind !== "word") continue;
      for (const { value } of input.options) {
        const supply = { family, name: "x", traits: { [trait]: value } };
        expect(SupplySchema.safeParse(supply).success, `${trait}: ${value}`).toBe(true);
      }
    }
  });

  it("tells counts from measures", () => {
    for (const { trait, input } of traitFields(family)) {
      if (input.kind !== "number") continue;
      const half = SupplySchema.safeParse({ family, name: "x", traits: { [trait]: 1.5 } });
      expect(input.whole, trait).toBe(!half.success);
    }
  });
});

// ISO 216 (A4) and the inch of 25.4 mm; ways of writing are common practice, no source.
describe("a paper size", () => {
  it.each([
    ["A4", "A4"],
    ["240 × 320 mm", [240, 320]],
    ["24 x 32 cm", [240, 320]],
    ["9 x 12 in", [228.6, 304.8]],
    ["29,7*42 cm", [297, 420]],
    ["100x150", [100, 150]],
  ])("%s", (text, value) => expect(readSize(text)).toEqual({ ok: true, value }));

  it.each(["A", "big", "0 x 10", "10 x"])("%s is a fault", (text) => expect(readSize(text).ok).toBe(false));
  it("may be left open", () => expect(readSize(" ")).toEqual({ ok: true, value: undefined }));
});

describe("a number", () => {
  it.each([
    ["0,3", false, 0.3],
    ["12.5", false, 12.5],
    ["20", true, 20],
  ])("%s", (text, whole, value) => expect(readNumber(text, whole)).toEqual({ ok: true, value }));

  it.each([
    ["0", false],
    ["wide", false],
    ["1,234", false], // two readings: not guessed
    ["2.5", true],
  ])("%s is a fault", (text, whole) => expect(readNumber(text, whole).ok).toBe(false));
});

it("parts a list at its commas, nothing twice", () => {
  expect(readTexts("PB29, PW6,, PB29")).toEqual({ ok: true, value: ["PB29", "PW6"] });
  expect(readTexts(" , ")).toEqual({ ok: true, value: undefined });
});

describe("a colour", () => {
  it("is read as hex, long or short", () => {
    expect(readColour("6b7d3a")).toEqual({ ok: true, value: "#6b7d3a" });
    expect(readColour("#fff")).toEqual({ ok: true, value: "#ffffff" });
    expect(readColour("moss").ok).toBe(false);
  });

  it("loses its measured Lab when another hex is typed, and keeps its name", () => {
    const lab: [number, number, number] = [50, -12, 30];
    const measured = {
      name: "moss",
      lab,
      white: "D65",
      from: "measured",
      spread: 0.4,
      certainty: 0.9,
    } as const;
    expect(withHex(measured, "#112233")).toEqual({ name: "moss", hex: "#112233", from: "typed" });
    expect(hexOf(withHex(measured, "#112233"))).toBe("#112233");
  });

  it("is left out when nothing of it is left", () => {
    expect(withHex({ hex: "#112233", from: "typed" }, undefined)).toBeUndefined();
    expect(withName({ name: "moss" }, undefined)).toBeUndefined();
  });
});

describe("another family", () => {
  const liner: Supply = {
    family: "liner",
    name: "Liner, black",
    maker: "Sorrelby",
    colour: { name: "black" },
    traits: { base: "gel", widthMm: 0.3, waterproof: true },
  };

  it("keeps name, maker, colour, and the measures that both know", () => {
    expect(asFamily(liner, "ink")).toEqual({
      family: "ink",
      name: "Liner, black",
      maker: "Sorrelby",
      colour: { name: "black" },
      traits: { waterproof: true },
    });
    expect(asFamily(liner, "brush").traits).toEqual({ widthMm: 0.3 });
  });

  it.each(families)("gives a supply that the schema takes: %s", (family) => {
    expect(SupplySchema.safeParse(asFamily(liner, family)).success).toBe(true);
  });
});
