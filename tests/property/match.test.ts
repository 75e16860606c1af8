import munkres from "munkres";
import { describe, expect, it } from "vitest";
import { keepPalette, matchKit } from "../../src/engine/match/index.ts";
import { families, type StashItem, type Supply, traitsByFamily } from "../../src/engine/supply/index.ts";
import fc from "../chance.ts";

const hex = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, "0")}`);
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

const marker = (known: boolean) =>
  fc
    .record({
      hex: known ? hex : maybe(hex),
      base: (known ? (x: fc.Arbitrary<string>) => x : maybe)(
        fc.constantFrom("alcohol", "water-dye", "acrylic"),
      ),
      tips: fc.subarray(["brush", "chisel", "bullet", "fine"], known ? { minLength: 1 } : {}),
      code: fc.uuid(),
    })
    .map(
      ({ hex: colour, base, tips, code }) =>
        ({
          family: "marker",
          name: code,
          maker: "Nordlys",
          code,
          colour: colour ? { hex: colour } : null,
          traits: { base, tips, refillable: known ? true : undefined },
        }) as Supply, // the words come from the schema's own lists
    );

const anySupply: fc.Arbitrary<Supply> = fc.oneof(
  marker(false),
  fc
    .record({ family: fc.constantFrom(...families), name: fc.string(), hex: maybe(hex) })
    .map(
      ({ family, name, hex: colour }) =>
        ({ family, name, colour: colour ? { hex: colour } : null }) as Supply,
    ),
);

const stashOf = (supplies: readonly Supply[]): StashItem[] =>
  supplies.map((supply, at) => ({ id: `s${at}`, supply }));
const kitOf = (supplies: readonly Supply[]) => ({
  id: "k",
  lines: supplies.map((supply, at) => ({ id: `l${at}`, supply })),
});

describe("likeness", () => {
  it("lies from 0 to 1, as does certainty, and likeness 1 is the best there is", () => {
    fc.assert(
      fc.property(anySupply, fc.array(anySupply, { maxLength: 8 }), (kit, stash) => {
        for (const one of matchKit({ kit: kitOf([kit]), stash: stashOf(stash) }).lines[0]?.candidates ?? []) {
          expect(one.likeness).toBeGreaterThanOrEqual(0);
          expect(one.likeness).toBeLessThanOrEqual(1);
          expect(one.certainty).toBeGreaterThanOrEqual(0);
          expect(one.certainty).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  it("is the same either way round within a family, where both sides know everything", () => {
    const likeness = (kit: Supply, stash: Supply) =>
      matchKit({ kit: kitOf([kit]), stash: stashOf([stash]) }).lines[0]?.candidates[0]?.likeness;
    fc.assert(
      fc.property(marker(true), marker(true), (a, b) => {
        expect(likeness(a, b)).toBe(likeness(b, a));
      }),
    );
  });

  it("follows from its trace: the weighted mean, times both factors", () => {
    fc.assert(
      fc.property(marker(false), marker(true), (kit, stash) => {
        const [one] = matchKit({ kit: kitOf([kit]), stash: stashOf([stash]) }).lines[0]?.candidates ?? [];
        if (!one || one.trace.length === 0) return;
        const total = one.trace.reduce((sum, { weight }) => sum + weight, 0);
        const mean = one.trace.reduce((sum, { weight, similarity }) => sum + weight * similarity, 0) / total;
        expect(one.likeness).toBeCloseTo(mean * one.factor * one.farFactor, 4);
      }),
    );
  });
});

describe("a whole match", () => {
  const both = fc.tuple(
    fc.array(marker(false), { minLength: 1, maxLength: 6 }),
    fc.array(marker(false), { minLength: 1, maxLength: 12 }),
  );

  it("has the total that munkres finds on the whole matrix of its own candidates, gaps counting 0", () => {
    fc.assert(
      fc.property(both, ([kit, shelf]) => {
        const found = matchKit({ kit: kitOf(kit), stash: stashOf(shelf) });
        // One column per item and one gap per line; what is below the threshold is worth nothing.
        const matrix = found.lines.map(({ candidates }) => [
          ...shelf.map((_, at) => {
            const units = Math.round(
              (candidates.find(({ stash }) => stash === `s${at}`)?.likeness ?? 0) * 10_000,
            );
            return units >= 4000 ? -units : 0;
          }),
          ...kit.map(() => 0),
        ]);
        const best = munkres(matrix).reduce((sum, [row, column]) => sum - (matrix[row]?.[column] ?? 0), 0);
        expect(Math.round(found.totalLikeness * 10_000)).toBe(best);
      }),
    );
  });

  it("uses nothing twice, picks nothing below 0.40, and does not depend on the order of the stash", () => {
    fc.assert(
      fc.property(both, ([kit, shelf]) => {
        const stash = stashOf(shelf);
        const found = matchKit({ kit: kitOf(kit), stash });
        const picks = found.lines.flatMap(({ pick }) => pick ?? []);
        expect(new Set(picks.map((pick) => pick.stash)).size).toBe(picks.length);
        for (const pick of picks) expect(pick.likeness).toBeGreaterThanOrEqual(0.4);
        expect(matchKit({ kit: kitOf(kit), stash: stash.toReversed() })).toEqual(found);
      }),
    );
  });

  it("keeps a palette that is never worse, fills the same lines and uses nothing twice", () => {
    fc.assert(
      fc.property(both, ([kit, shelf]) => {
        const input = { kit: kitOf(kit), stash: stashOf(shelf) };
        const [first, kept] = [matchKit(input), keepPalette(input)];
        expect(kept.cost).toBeLessThanOrEqual(kept.costOfFirst);
        expect(kept.picks.map(({ line }) => line)).toEqual(
          first.lines.filter(({ pick }) => pick).map(({ line }) => line),
        );
        expect(new Set(kept.picks.map(({ stash }) => stash)).size).toBe(kept.picks.length);
        for (const { line, stash } of kept.picks) {
          const before = first.lines.find((one) => one.line === line);
          const now = before?.candidates.find((one) => one.stash === stash)?.likeness ?? 0;
          expect(now).toBeGreaterThanOrEqual((before?.pick?.likeness ?? 0) - 0.1 - 1e-9);
        }
      }),
    );
  });
});

it("every trait of every family counts for something, save the number of sheets", () => {
  for (const family of families) {
    for (const trait of Object.keys(traitsByFamily[family])) {
      if (trait === "sheets") continue;
      const sample = { family, name: "a", traits: { [trait]: sampleOf(trait) } } as Supply;
      const found = matchKit({
        kit: kitOf([sample]),
        stash: [{ id: "s", supply: { ...sample, name: "b" } as Supply }],
      });
      expect(found.lines[0]?.candidates[0]?.trace.map((row) => row.trait)).toContain(trait);
    }
  }
});

function sampleOf(trait: string): unknown {
  const samples: Readonly<Record<string, unknown>> = {
    tips: ["brush"],
    pigments: ["PB29"],
    size: "A4",
    grade: "HB",
  };
  if (samples[trait] !== undefined) return samples[trait];
  return ["widthMm", "ml", "gsm"].includes(trait) ? 1 : "word";
}
