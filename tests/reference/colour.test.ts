import Color from "colorjs.io";
import { converter, differenceCiede2000, formatHex } from "culori";
import { describe, expect, it } from "vitest";
import sharma from "../../fixtures/reference/ciede2000-sharma.json" with { type: "json" };
import conversions from "../../fixtures/reference/colour-conversions.json" with { type: "json" };
import {
  deltaE2000,
  hexFromLab,
  type Lab,
  labFromHex,
  labOf,
  linearFromHex,
  oklabOf,
  xyzFromLinear,
} from "../../src/engine/colour/index.ts";
import fc from "../chance.ts";

const lab = ([l, a, b]: readonly number[]): Lab => ({ white: "D65", l: l ?? 0, a: a ?? 0, b: b ?? 0 });

// Source: Sharma, Wu & Dalal (2005), Color Research & Application 30(1), 21–30, table 1: all 34 pairs.
describe("CIEDE2000 gives the published figure to four decimals, either way round", () => {
  it.each(sharma.pairs)("pair $n is $deltaE00", ({ lab1, lab2, deltaE00 }) => {
    expect(Math.abs(deltaE2000(lab(lab1), lab(lab2)) - deltaE00)).toBeLessThanOrEqual(sharma.tolerance);
    expect(Math.abs(deltaE2000(lab(lab2), lab(lab1)) - deltaE00)).toBeLessThanOrEqual(sharma.tolerance);
  });
  it("has all 34", () => expect(sharma.pairs).toHaveLength(34));
});

describe("from hex text to a difference, the white is D65 the whole way", () => {
  it("#4269d0 and #a463f2 are 18.4365 apart (18.4366 with the standard's four-digit matrix; 20.9405 under D50)", () => {
    expect(deltaE2000(labFromHex("#4269d0"), labFromHex("#a463f2"))).toBeCloseTo(18.4365, 3);
  });
  // Source: the npm packages culori 4.0 and colorjs.io 0.7, as listed beside the published pairs.
  it.each(sharma.libraryGotcha.sRGBpairs)("$hex1 and $hex2", ({ hex1, hex2, deltaE00_labD65 }) => {
    expect(deltaE2000(labFromHex(hex1), labFromHex(hex2))).toBeCloseTo(deltaE00_labD65, 5);
  });
});

// Source: IEC 61966-2-1, CIE 15, Bradford; values from colorjs.io 0.7 and culori 4.0, which agree.
describe("conversions", () => {
  it.each(conversions.colours.table)("$name", (row) => {
    const close = (found: readonly number[], wanted: readonly number[], digits: number) =>
      found.forEach((value, i) => {
        expect(value).toBeCloseTo(wanted[i] ?? Number.NaN, digits);
      });
    const linear = linearFromHex(row.hex);
    close(linear, row.linearRGB, 5);
    close(xyzFromLinear(linear), row.xyzD65, 5);
    const { l, a, b } = labFromHex(row.hex);
    close([l, a, b], row.labD65, 3);
    const [x, y, z] = row.labD50;
    const adapted = labOf({ lab: [x ?? 0, y ?? 0, z ?? 0], white: "D50" });
    close([adapted?.l ?? 0, adapted?.a ?? 0, adapted?.b ?? 0], row.labD65, 2);
    expect(hexFromLab(labFromHex(row.hex))).toBe(row.hex);
  });

  // Source: B. Ottosson (2020), the published table of XYZ and Oklab pairs, by way of culori's Oklab.
  it("Oklab agrees with an independent library", () => {
    const oklch = converter("oklch");
    for (const { hex } of conversions.colours.table.filter((row) => row.name !== "black")) {
      const ours = oklabOf(labFromHex(hex));
      expect(ours.l).toBeCloseTo(oklch(hex)?.l ?? Number.NaN, 3);
      expect(ours.c).toBeCloseTo(oklch(hex)?.c ?? Number.NaN, 3);
    }
  });
});

describe("two independent libraries agree on any two colours", () => {
  const hex = fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, "0")}`);
  const culori = differenceCiede2000();

  it("culori 4, which takes Lab under D65", () => {
    fc.assert(
      fc.property(hex, hex, (first, second) => {
        expect(deltaE2000(labFromHex(first), labFromHex(second))).toBeCloseTo(culori(first, second), 6);
      }),
      { numRuns: 500 },
    );
  });

  it("colorjs.io 0.7, given our Lab figures as the space it computes in", () => {
    fc.assert(
      fc.property(hex, hex, (first, second) => {
        const [x, y] = [labFromHex(first), labFromHex(second)];
        const theirs = new Color("lab", [x.l, x.a, x.b]).deltaE(new Color("lab", [y.l, y.a, y.b]), "2000");
        expect(deltaE2000(x, y)).toBeCloseTo(theirs, 6);
      }),
      { numRuns: 500 },
    );
  });

  it("hex survives the way to Lab and back", () => {
    fc.assert(
      fc.property(hex, (text) => {
        expect(hexFromLab(labFromHex(text))).toBe(formatHex(text));
      }),
    );
  });
});
