import { describe, expect, it } from "vitest";
import published from "../../fixtures/reference/gtin.json" with { type: "json" };
import { gtin14, gtinCheckDigit, isGtin } from "../../src/engine/supply/index.ts";

// Source: GS1 General Specifications, standard check digit calculations; each example names its own page
// in fixtures/reference/gtin.json.
describe("GTIN check digits", () => {
  it.each(published.valid)("$code ($format) is right and is $gtin14 in full", ({ code, gtin14: full }) => {
    expect(isGtin(code)).toBe(true);
    expect(gtin14(code)).toBe(full);
  });
  it.each(published.invalid)("$code is refused: $why", ({ code }) => {
    expect(isGtin(code)).toBe(false);
  });
  it("works out the worked example of GS1 Hong Kong: 3", () => {
    expect(gtinCheckDigit(published.worked.code)).toBe(published.worked.check);
  });
  it("cannot see two digits swapped that differ by 5, as the standard warns", () => {
    expect(isGtin(published.undetectedExample.a)).toBe(true);
    expect(isGtin(published.undetectedExample.b)).toBe(true);
  });
  it("reads a number parted by spaces or hyphens, and takes a row of noughts for nothing", () => {
    expect(isGtin("6291 0415 0021 3")).toBe(true);
    expect(gtin14("0360-0024-1457")).toBe("00036000241457");
    expect(gtin14("00000000")).toBeNull();
    expect(gtin14(null)).toBeNull();
  });
});
