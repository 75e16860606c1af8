import { describe, expect, it } from "vitest";
import { foldText, gradeRank, grades, type Supply, sameProduct } from "../../../src/engine/supply/index.ts";

const moss: Supply = {
  family: "paint",
  name: "Gouache, moss",
  maker: "Nordlys",
  line: "Fjell",
  code: "F 12",
  colour: { name: "moss", hex: "#6b7d3a" },
  traits: { medium: "gouache", ml: 15 },
};

// The rule is the workbook's own ("Same product").
describe("the same product", () => {
  it.each<{ why: string; other: Partial<Supply> }>([
    { why: "same maker, line and code, whatever else differs", other: { name: "Moss", traits: { ml: 37 } } },
    { why: "case, accents and spacing folded", other: { maker: " NÓRDLYS", line: "fjell ", code: "f12" } },
    { why: "no code here, all else the same", other: { code: null } },
    {
      why: "no code, a null trait more",
      other: { code: "", traits: { ml: 15, medium: "gouache", form: null } },
    },
    {
      why: "no code, another hex of the same name",
      other: { code: null, colour: { name: "Moss", hex: "#000000" } },
    },
  ])("$why", ({ other }) => {
    const changed = { ...moss, ...other } as Supply; // the family stays paint in every row
    expect(sameProduct(moss, changed)).toBe(true);
    expect(sameProduct(changed, moss)).toBe(true);
  });

  it.each<{ why: string; other: Partial<Supply> }>([
    { why: "another code", other: { code: "F13" } },
    { why: "another line", other: { line: "Fjord" } },
    { why: "another maker", other: { maker: "Sorlys" } },
    { why: "no code, another name", other: { code: null, name: "Gouache, fern" } },
    { why: "no code, another colour name", other: { code: null, colour: { name: "fern" } } },
    { why: "no code, another amount", other: { code: null, traits: { medium: "gouache", ml: 37 } } },
    { why: "no code and no maker", other: { code: null, maker: null } },
  ])("is not: $why", ({ other }) => {
    expect(sameProduct(moss, { ...moss, ...other } as Supply)).toBe(false); // the family stays paint
  });

  it("is told by the GTIN alone, in 12 or 13 digits", () => {
    const bare: Supply = { family: "paint", name: "x", gtin: "036000241457" };
    expect(sameProduct({ ...moss, gtin: "0036000241457" }, bare)).toBe(true);
    expect(sameProduct({ ...moss, gtin: "8904000210037" }, bare)).toBe(false);
  });

  it("is not made by a code alone where nobody knows the maker or the line", () => {
    const [one, other]: Supply[] = [
      { family: "marker", name: "Red marker", code: "12" },
      { family: "marker", name: "Green marker", code: "12" },
    ];
    expect(one && other && sameProduct(one, other)).toBe(false);
    expect(one && sameProduct(one, { ...one })).toBe(true);
  });

  it("is made by the same name, colour name and traits where nothing else is known", () => {
    const pencil: Supply = { family: "graphite", name: "Pencil", traits: { grade: "HB" } };
    expect(sameProduct(pencil, { family: "graphite", name: "pencil", traits: { grade: "HB" } })).toBe(true);
    expect(sameProduct(pencil, { family: "graphite", name: "pencil", traits: { grade: "2B" } })).toBe(false);
  });

  it("goes by the colour's name, not by its swatch: to the letter of the format", () => {
    const tube = (hex: string, name?: string): Supply => ({
      family: "paint",
      name: "Tube",
      colour: { hex, name },
    });
    expect(sameProduct(tube("#c81e1e"), tube("#1e1ec8"))).toBe(true);
    expect(sameProduct(tube("#c81e1e", "red"), tube("#1e1ec8", "blue"))).toBe(false);
  });

  it("knows a paper size by name and by millimetres, and tips in any order", () => {
    const pad: Supply = { family: "paper", name: "Pad", traits: { size: "A4" } };
    expect(sameProduct(pad, { family: "paper", name: "Pad", traits: { size: [297, 210] } })).toBe(true);
    const pen: Supply = { family: "marker", name: "Pen", traits: { tips: ["brush", "fine"] } };
    expect(sameProduct(pen, { family: "marker", name: "Pen", traits: { tips: ["fine", "brush"] } })).toBe(
      true,
    );
  });
});

describe("folding", () => {
  it.each([
    { text: "  Bjørk \u00a0Grön ", folded: "bjorkgron" },
    { text: "STRASSE", folded: foldText("Straße") },
    { text: "Ａ４", folded: "a4" },
  ])("$text becomes $folded", ({ text, folded }) => {
    expect(foldText(text)).toBe(folded);
  });
  it("leaves the marks that make another letter of a kana", () => {
    expect(foldText("が")).not.toBe(foldText("か"));
  });
});

// Source: the common European trade scale as read in three public pages; its ranks there: HB 10, 2B 12,
// F 9, H 8 counted from 9H as 1. Ours starts one step harder, at 10H as 0.
describe("pencil grades", () => {
  it.each([
    { grade: "H", rank: 9 },
    { grade: "F", rank: 10 },
    { grade: "HB", rank: 11 },
    { grade: "2B", rank: 13 },
  ])("$grade is at $rank", ({ grade, rank }) => {
    expect(gradeRank(grade)).toBe(rank);
  });
  it("runs from 10H to 10B without a hole", () => {
    expect(grades.map(gradeRank)).toEqual([...Array(22).keys()]);
    expect(gradeRank("11B")).toBeNull();
  });
});
