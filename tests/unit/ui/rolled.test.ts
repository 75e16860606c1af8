import { expect, it } from "vitest";
import { piecesIn, stretchesOf } from "../../../src/ui/parts/use-rolled.ts";
import fc from "../../chance.ts";

const heights = fc.array(fc.integer({ min: 1, max: 900 }), { maxLength: 60 });
const total = (some: readonly number[]) => some.reduce((sum, height) => sum + height, 0);

it("draws every piece that the window meets, and no piece that it does not", () => {
  const window = fc.tuple(fc.integer({ min: -2_000, max: 60_000 }), fc.integer({ min: 1, max: 2_000 }));
  fc.assert(
    fc.property(heights, window, (some, [top, height]) => {
      const { from, to } = piecesIn(top, top + height, some.length, (piece) => some[piece] ?? 0);
      const meets = some.flatMap((_, piece) => {
        const start = total(some.slice(0, piece));
        return start < top + height && start + (some[piece] ?? 0) > top ? [piece] : [];
      });
      expect(from).toBeLessThanOrEqual(to);
      if (meets.length > 0) expect([from, to]).toEqual([meets[0], (meets.at(-1) ?? 0) + 1]);
      else expect(to - from).toBe(some.length === 0 ? 0 : 1); // the nearest, to measure and to scroll from
    }),
  );
});

it("leaves gaps as high as what is left out, in order", () => {
  const drawn = fc.array(fc.integer({ min: 0, max: 70 }));
  fc.assert(
    fc.property(heights, drawn, (some, list) => {
      const stretches = stretchesOf(new Set(list), some.length, (piece) => some[piece] ?? 0);
      const pieces = stretches.flatMap((one) => ("piece" in one ? [one.piece] : []));
      expect(pieces).toEqual(some.map((_, piece) => piece).filter((piece) => list.includes(piece)));
      const high = stretches.map((one) => ("piece" in one ? (some[one.piece] ?? 0) : one.gap));
      expect(total(high)).toBe(total(some));
    }),
  );
});
