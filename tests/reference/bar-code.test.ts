import { describe, expect, it } from "vitest";
import drawn from "../../fixtures/reference/bar-codes.json" with { type: "json" };
import published from "../../fixtures/reference/gtin.json" with { type: "json" };
import { gtinCheckDigit } from "../../src/engine/supply/index.ts";
import { readBarCode } from "../../src/workers/bar-code/read.ts";
import fc from "../chance.ts";
import { drawnCode, modulesOf, type Taken } from "../unit/workers/drawn-code.ts";

const whole = (body: string) => body + gtinCheckDigit(body);
const straight: Taken = { width: 300, height: 40, module: 2.4 };
const full = (code: string) => (code.length === 12 ? `0${code}` : code);

describe("bar codes drawn after the standard", () => {
  // Source: npm jsbarcode 3.12.3, another program that draws them (fixtures/reference/bar-codes.json).
  it.each(drawn.codes)(
    "are drawn as another program draws them, and read: $kind $code",
    ({ code, modules }) => {
      expect(modulesOf(code)).toBe(modules);
      expect(readBarCode(drawnCode(code, straight))).toBe(full(code));
    },
  );

  it("reads the published examples of 8, 12 and 13 digits", () => {
    const codes = published.valid
      .map(({ code }) => code.replaceAll(/\D/g, ""))
      .filter(({ length }) => length < 14);
    expect(codes.length).toBeGreaterThan(3);
    for (const code of codes) expect(readBarCode(drawnCode(code, straight))).toBe(full(code));
  });

  it("reads every first digit, and so every order of the number sets", () => {
    for (let first = 0; first < 10; first += 1) {
      const code = whole(`${first}01234567896`.slice(0, 12));
      expect(readBarCode(drawnCode(code, straight))).toBe(code);
    }
  });

  it("reads any number", () => {
    const digits = (count: number) => fc.stringMatching(new RegExp(`^[1-9]\\d{${count - 1}}$`));
    fc.assert(
      fc.property(fc.oneof(digits(12), digits(7)), (body) => {
        expect(readBarCode(drawnCode(whole(body), straight))).toBe(whole(body));
      }),
      { numRuns: 25 },
    );
  });

  const code = whole("200123456789");
  const photo: Taken = { width: 420, height: 320, module: 2.5 };
  it.each<[string, Partial<Taken>]>([
    ["upside down", { degrees: 180 }],
    ["on its side", { degrees: 90 }],
    ["on its other side", { degrees: 270 }],
    ["askew", { degrees: 17 }],
    ["cornerwise", { degrees: 47 }],
    ["seen from the side", { tilt: 0.35, degrees: 5 }],
    ["half in shadow", { shadow: 0.7 }],
    ["printed with too much ink", { spread: 0.4 }],
    ["a little out of focus", { blur: 1.2 }],
    ["in poor light", { noise: 25, blur: 0.6 }],
    ["small", { module: 1.6, blur: 0.4 }],
    ["all of it at once", { degrees: 12, tilt: 0.2, shadow: 0.5, spread: 0.15, blur: 0.8, noise: 12 }],
  ])("reads one that is %s", (_, how) =>
    expect(readBarCode(drawnCode(code, { ...photo, ...how }))).toBe(code),
  );

  it("says nothing of a code with a wrong check digit, with a bar too many, or of none", () => {
    const wrong = `${code.slice(0, -1)}${(Number(code.at(-1)) + 1) % 10}`;
    expect(readBarCode(drawnCode(wrong, photo))).toBeNull();
    expect(readBarCode(drawnCode(code, { ...photo, module: 7 }))).toBeNull(); // cut off at both ends
    const stripes = Uint8ClampedArray.from({ length: 480 * 360 }, (_, at) => (at % 5 < 2 ? 20 : 230));
    expect(readBarCode({ data: stripes, width: 480, height: 360 })).toBeNull();
    expect(readBarCode({ data: new Uint8ClampedArray(100), width: 10, height: 10 })).toBeNull();
  });

  it("never makes up a number out of noise", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2 ** 31 - 1 }), (seed) => {
        let state = seed;
        const data = Uint8ClampedArray.from({ length: 160 * 120 }, () => {
          state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
          return state >>> 24;
        });
        expect(readBarCode({ data, width: 160, height: 120 })).toBeNull();
      }),
      { numRuns: 20 },
    );
  });
});
