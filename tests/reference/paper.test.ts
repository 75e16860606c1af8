import { describe, expect, it } from "vitest";
import published from "../../fixtures/reference/paper.json" with { type: "json" };
import { cutOf } from "../../src/engine/match/cut.ts";
import { sheetMm } from "../../src/engine/supply/index.ts";

// Source: ISO 216:2007 (A, B) and ISO 269 (C), all 33 sizes.
describe("ISO paper sizes", () => {
  const { mm } = published.iso216;
  const sizes = (["A", "B", "C"] as const).flatMap((series) =>
    mm[series].map((size, step) => ({ name: `${series}${step}`, size })),
  );
  it.each(sizes)("$name is $size mm", ({ name, size }) => {
    expect(sheetMm(name)).toEqual(size);
    expect(sheetMm(` ${name.toLowerCase()} `)).toEqual(size);
  });

  it("halves and drops the fraction: rounding the formula would make A1 595 wide", () => {
    expect(sheetMm("A1")).toEqual([594, 841]);
  });

  // ISO 216: each next size is the previous one cut in half, so k steps down give 2^k pieces.
  it.each([
    { piece: "A4", sheet: "A3", pieces: 2 },
    { piece: "A5", sheet: "A3", pieces: 4 },
    { piece: "A6", sheet: "A3", pieces: 8 },
    { piece: "A6", sheet: "A4", pieces: 4 },
    { piece: "B5", sheet: "B4", pieces: 2 },
  ])("$sheet yields $pieces × $piece", ({ piece, sheet, pieces }) => {
    const [small, large] = [sheetMm(piece), sheetMm(sheet)];
    expect(small && large && cutOf(small, large)?.pieces).toBe(pieces);
  });
});

// Source: ANSI/ASME Y14.1 and common trade sizes, 25.4 mm to the inch (1959 agreement).
describe("US paper sizes", () => {
  const names = Object.entries(published.us.mm).map(([name, size]) => ({ name, size }));
  it.each(names.filter(({ name }) => name !== "tabloidLedger"))("$name is $size mm", ({ name, size }) => {
    expect(sheetMm(name)).toEqual(size);
  });
  it.each(["tabloid", "Ledger", "US tabloid"])("%s is 11 × 17 inches", (name) => {
    expect(sheetMm(name)).toEqual(published.us.mm.tabloidLedger);
  });
});

describe("other ways to give a size", () => {
  it("takes millimetres as a pair or as text, either way round", () => {
    expect(sheetMm([297, 210])).toEqual([210, 297]);
    expect(sheetMm("297 × 210 mm")).toEqual([210, 297]);
    expect(sheetMm("180x240")).toEqual([180, 240]);
  });
  it.each(["A11", "D4", "big", "", "0 x 100", "constructor"])("does not guess at %j", (name) => {
    expect(sheetMm(name)).toBeNull();
  });
});
