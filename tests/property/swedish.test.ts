import { describe, expect, it } from "vitest";
import { labFromHex, missWords, plainName } from "../../src/engine/colour/index.ts";
import { cutSentence, matchKit, reasonLine, verdictWords } from "../../src/engine/match/index.ts";
import { type Evidence, estimateLine, type Line } from "../../src/engine/price/index.ts";
import { factsOf, type Supply } from "../../src/engine/supply/index.ts";
import fc from "../chance.ts";

const hex = fc.integer({ min: 0, max: 0xffffff }).map((rgb) => `#${rgb.toString(16).padStart(6, "0")}`);
const colour = fc.option(fc.record({ hex }), { nil: undefined });
const name = fc.constantFrom("Moss", "Lav", "A3 block", "Täckande gouachetub 15 ml", "Graphite pencil 4B");
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });
const size = fc.constantFrom("A2", "A3", "A4", "A5", "letter");
const tip = fc.constantFrom("brush", "chisel", "bullet", "fine");

const supply: fc.Arbitrary<Supply> = fc.oneof(
  fc.record({
    family: fc.constant("paint" as const),
    name,
    colour,
    traits: fc.record({
      medium: maybe(fc.constantFrom("gouache", "watercolour", "oil")),
      form: maybe(fc.constantFrom("tube", "half-pan", "stick")),
      opacity: maybe(fc.constantFrom("opaque", "semi", "transparent")),
      ml: maybe(fc.integer({ min: 1, max: 500 })),
    }),
  }),
  fc.record({
    family: fc.constant("marker" as const),
    name,
    colour,
    traits: fc.record({ tips: maybe(fc.uniqueArray(tip)), refillable: maybe(fc.boolean()) }),
  }),
  fc.record({
    family: fc.constant("graphite" as const),
    name,
    traits: fc.record({ grade: maybe(fc.constantFrom("10H", "HB", "F", "10B")) }),
  }),
  fc.record({
    family: fc.constant("paper" as const),
    name,
    traits: fc.record({
      size: maybe(size),
      gsm: maybe(fc.integer({ min: 60, max: 640 })),
      surface: maybe(fc.constantFrom("smooth", "medium", "rough")),
      use: maybe(fc.constantFrom("marker", "mixed", "toned", "print")),
      sheets: maybe(fc.integer({ min: 1, max: 40 })),
    }),
  }),
  fc.record({ family: fc.constantFrom("tool" as const, "other" as const), name }),
);

/** Words that only English has, of those that the engine strings its sentences together with. */
const english =
  /\b(?:the|of|and|apart|lighter|darker|softer|stronger|leaning|grades?|differs|known|sheets?|price|here|elsewhere|guess|because|converted|tax|pieces)\b/i;

const isSwedish = (text: string): void => {
  expect(text).not.toBe("");
  expect(text).not.toMatch(/undefined|null|NaN|\[object|^\s|\s$|\s\s/);
  expect(text).not.toMatch(english);
};

describe("whatever there is to say, it is said in Swedish", () => {
  it("of a colour and of how another misses it", () => {
    fc.assert(
      fc.property(hex, hex, (one, other) => {
        const [kit, own] = [labFromHex(one), labFromHex(other)];
        isSwedish(plainName(kit, "sv"));
        const misses = missWords(kit, own, "sv");
        for (const miss of misses) isSwedish(miss);
        expect(misses).toHaveLength(missWords(kit, own).length);
      }),
    );
  });

  it("of a supply; nothing is said that English has not got too", () => {
    fc.assert(
      fc.property(supply, (of) => {
        const facts = factsOf(of, String, "sv");
        for (const fact of facts) isSwedish(fact);
        expect(facts.length).toBeLessThanOrEqual(factsOf(of).length);
      }),
    );
  });

  it("of what stands in for a line", () => {
    fc.assert(
      fc.property(supply, supply, (kit, own) => {
        const item = { id: "a", supply: own };
        const { lines } = matchKit({ kit: { id: "k", lines: [{ id: "l", supply: kit }] }, stash: [item] });
        for (const candidate of lines[0]?.candidates ?? []) {
          const line = reasonLine(kit, item, candidate, "sv");
          isSwedish(line);
          expect(line).toMatch(/^[\p{Lu}\d]/u);
          isSwedish(verdictWords(candidate.verdict, "sv"));
          if (candidate.adaptation) isSwedish(cutSentence(candidate.adaptation, "sv"));
        }
      }),
    );
  });

  it("of every way to a price, as one sentence with a decimal comma", () => {
    const evidence: fc.Arbitrary<Evidence> = fc.record({
      id: fc.constant("e"),
      kind: fc.constantFrom("list", "shop", "card", "guess"),
      price: fc.record({
        amount: fc.integer({ min: 1, max: 100_000 }).map((cents) => (cents / 100).toFixed(2)),
        currency: fc.constantFrom("EUR", "SEK"),
      }),
      plusTax: maybe(fc.constantFrom("0", "0.25", "0.085")),
      market: maybe(fc.constantFrom("se", "ie")),
      date: maybe(fc.constantFrom("2026-04-20", "2026-01-02")),
      pack: maybe(fc.record({ ml: fc.integer({ min: 1, max: 60 }) })),
    });
    const settled = maybe(fc.constantFrom("guess", "list"));
    const rates = [{ date: "2026-03-31", base: "EUR", quotes: { SEK: "11.0250" } }];
    const markets = [
      { id: "se", name: "Sverige", currency: "SEK" },
      { id: "ie", name: "Irland", currency: "EUR" },
    ];
    fc.assert(
      fc.property(fc.array(evidence, { maxLength: 5 }), settled, (found, method) => {
        const line: Line = {
          id: "l",
          supply: { family: "paint", name: "Gouache", traits: { ml: 15 } },
          evidence: found,
          settled: method ? [{ method }] : [],
        };
        const kit = { id: "k", valuedOn: "2026-04-30", lines: [line] };
        const book = { kits: [kit], rates, markets };
        const said = (language: "en" | "sv") => {
          const { listOptions, streetOptions } = estimateLine(book, kit, line, "se", language);
          return [...listOptions, ...streetOptions];
        };
        const [swedish, englishOnes] = [said("sv"), said("en")];
        for (const { sentence } of swedish) {
          isSwedish(sentence);
          expect(sentence).toMatch(/^\p{Lu}.*\.$/u);
          expect(sentence).not.toMatch(/\d\.\d/);
        }
        // The language changes nothing but the sentence.
        const figures = (all: typeof swedish) => all.map(({ sentence: _, ...rest }) => rest);
        expect(figures(swedish)).toEqual(figures(englishOnes));
      }),
    );
  });
});
