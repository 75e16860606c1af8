import { differenceEuclidean, parse } from "culori";
import { describe, expect, it } from "vitest";
import { type Pixels, pickColour, whiteAt } from "../../src/ui/kits/view/pick-colour.ts";

const side = 40;

/** A picture of one colour a half: what is left of the middle, and what is right of it. */
function picture(left: readonly number[], right: readonly number[]): Pixels {
  const data = new Uint8ClampedArray(side * side * 4);
  for (let at = 0; at < side * side; at += 1) {
    const colour = at % side < side / 2 ? left : right;
    data.set([...colour, 255], at * 4);
  }
  return { data, width: side, height: side };
}
const [left, right] = [
  { x: 8, y: 20 },
  { x: 31, y: 20 },
];

/** How far two hex colours are apart in sRGB, as the library culori has it. */
const apart = (one: string, other: string): number => {
  const [a, b] = [parse(one), parse(other)];
  return a && b ? differenceEuclidean("rgb")(a, b) : Number.NaN;
};

describe("a colour picked from a photo", () => {
  it("is that of the disc, with no spread where all is alike", () => {
    const picked = pickColour(picture([107, 125, 58], [255, 255, 255]), left, 6, null);
    expect(apart(picked.hex, "#6b7d3a")).toBeLessThan(0.005);
    expect(picked.spread).toBeLessThan(0.01);
  });

  it("is averaged in linear light: black and white halves make 188, not 128", () => {
    // IEC 61966-2-1: half the light is coded 188; the disc's middle column is white, so that it is a little more.
    const picked = pickColour(picture([0, 0, 0], [255, 255, 255]), { x: 20, y: 20 }, 6, null);
    const level = Number.parseInt(picked.hex.slice(1, 3), 16);
    expect(level).toBeGreaterThan(180);
    expect(level).toBeLessThan(202);
    expect(picked.spread).toBeGreaterThan(20);
  });

  it("loses the tint of the light once a white is pointed at", () => {
    const pixels = picture([240, 200, 150], [200, 167, 125]); // a neutral grey beside white, both in warm light
    const white = whiteAt(pixels, left, 6);
    const grey = pickColour(pixels, right, 6, white);
    const channels = [1, 3, 5].map((at) => Number.parseInt(grey.hex.slice(at, at + 2), 16));
    expect(Math.max(...channels) - Math.min(...channels)).toBeLessThanOrEqual(2);
  });

  it("takes no white that is too bright or too dark to tell the light", () => {
    const pixels = picture([255, 255, 255], [0, 0, 0]);
    expect(whiteAt(pixels, left, 6)).toBeNull();
    expect(whiteAt(pixels, right, 6)).toBeNull();
  });

  it("stays inside the picture at its corners", () => {
    expect(pickColour(picture([10, 20, 30], [0, 0, 0]), { x: 0, y: 0 }, 9, null).hex).toBe("#0a141e");
  });
});
