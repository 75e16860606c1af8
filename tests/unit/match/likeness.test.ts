import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  builtInWeights,
  type Candidate,
  likenessDoc,
  matchKit,
  traitLabel,
} from "../../../src/engine/match/index.ts";
import type { Kinship, StashItem, Supply, SupplyOf } from "../../../src/engine/supply/index.ts";

/** The one stash item as a candidate for the one kit line. */
function compare(
  kit: Supply,
  stash: Supply,
  more: { weights?: Record<string, Record<string, number>>; kinships?: Kinship[] } = {},
): Candidate {
  const item: StashItem = { id: "s", supply: stash };
  const match = matchKit({ kit: { id: "k", lines: [{ id: "l", supply: kit }] }, stash: [item], ...more });
  const [found] = match.lines[0]?.candidates ?? [];
  if (!found) throw new Error("not listed");
  return found;
}

const marker = (hex: string | null, traits: SupplyOf<"marker">["traits"] = {}): Supply => ({
  family: "marker",
  name: "marker",
  code: `marker ${hex}`,
  colour: hex ? { hex } : null,
  traits,
});

const row = (candidate: Candidate, trait: string) => candidate.trace.find((one) => one.trait === trait);

it("docs/likeness.md is printed from the table the engine uses", () => {
  expect(readFileSync(new URL("../../../docs/likeness.md", import.meta.url), "utf8")).toBe(likenessDoc());
});

// The rules are this project's own (docs/likeness.md); ΔE00 18.4365 for this pair is Sharma, Wu & Dalal (2005)
// whole way from sRGB, as colour's own tests check it.
describe("likeness", () => {
  const [blue, violet] = [marker("#4269d0", { base: "alcohol" }), marker("#a463f2", { base: "alcohol" })];

  it("is Gower's mean over what the kit item knows, colour by 2^(−ΔE00 ÷ 12)", () => {
    const found = compare(blue, violet);
    expect(found.deltaE00).toBeCloseTo(18.4365, 4);
    // 0.606850: on the edge between two fourth decimals, and ΔE00 is only known to four here.
    expect(Math.abs(found.likeness - (6 * 2 ** (-18.4365 / 12) + 4) / 10)).toBeLessThan(0.0001);
    expect(found.likeness).toBe(Math.round(found.likeness * 10_000) / 10_000);
    expect(found.certainty).toBe(1);
    expect(found.trace).toEqual([
      { trait: "colour", kit: "#4269d0", stash: "#a463f2", similarity: expect.closeTo(0.3447, 3), weight: 6 },
      { trait: "base", kit: "alcohol", stash: "alcohol", similarity: 1, weight: 4 },
    ]);
  });

  it("counts ½ for what is not known of the stash item, and leaves out what is not known of the kit item", () => {
    const found = compare(blue, marker("#4269d1", { refillable: true }));
    expect(row(found, "base")).toEqual({
      trait: "base",
      kit: "alcohol",
      stash: null,
      similarity: 0.5,
      weight: 4,
    });
    expect(row(found, "refillable")).toBeUndefined();
    expect(found.certainty).toBe(0.6);
  });

  it.each([
    { what: "nothing known of the kit item", kit: marker(null), stash: marker("#123456"), likeness: 0.5 },
    {
      what: "another family",
      kit: marker(null),
      stash: { family: "ink", name: "i" } as const,
      likeness: 0.325,
    },
    {
      what: "other",
      kit: { family: "other", name: "a" } as const,
      stash: { family: "other", name: "b" } as const,
      likeness: 0,
    },
    {
      what: "two tools of no kind we name",
      kit: { family: "tool", name: "a", traits: { kind: "other" } } as const,
      stash: { family: "tool", name: "b", traits: { kind: "other" } } as const,
      likeness: 0.5,
    },
  ])(
    "is half of what the families allow where no trait is known to both: $what",
    ({ kit, stash, likeness }) => {
      expect(compare(kit, stash)).toMatchObject({ likeness, certainty: 0 });
    },
  );

  it("makes a wrong colour a gap whatever else agrees", () => {
    const traits: SupplyOf<"marker">["traits"] = {
      base: "alcohol",
      tips: ["brush", "chisel"],
      refillable: true,
    };
    const found = compare(marker("#d01010", traits), marker("#10d010", traits));
    expect(found.deltaE00).toBeGreaterThan(40);
    expect(found).toMatchObject({
      verdict: "gap",
      farFactor: expect.closeTo(2 ** (-((found.deltaE00 ?? 0) - 20) / 12), 4),
    });
  });

  it("takes the colour as equal where a kinship says so, however far the swatches", () => {
    const side = (code: string) => ({ maker: "Nordlys", line: "Fjell", code });
    const named = (hex: string, code: string): Supply => ({
      ...marker(hex, { base: "alcohol" }),
      ...side(code),
    });
    const kinships: Kinship[] = [{ id: "x", kind: "same-colour", a: side("1"), b: side("2") }];
    const found = compare(named("#d01010", "1"), named("#10d010", "2"), { kinships });
    expect(found).toMatchObject({ likeness: 1, verdict: "same-colour", farFactor: 1 });
    expect(row(found, "colour")?.similarity).toBe(1);
  });

  it("takes nothing from a colour's name", () => {
    const named = (name: string): Supply => ({
      family: "ink",
      name: "ink",
      code: name,
      colour: { name: "moss" },
    });
    expect(compare(named("1"), named("2")).trace).toEqual([]);
  });

  it.each([
    { trait: "grade", kit: { grade: "HB" }, stash: { grade: "2B" }, similarity: 1 - 2 / 21 },
    { trait: "grade", kit: { grade: "10H" }, stash: { grade: "10B" }, similarity: 0 },
    { trait: "core", kit: { core: "charcoal" }, stash: { core: "carbon" }, similarity: 0.7 },
  ])("compares $trait $kit with $stash as $similarity", ({ trait, kit, stash, similarity }) => {
    const found = compare(
      { family: "graphite", name: "a", traits: kit } as Supply, // each row's traits are graphite's
      { family: "graphite", name: "b", traits: stash } as Supply,
    );
    expect(row(found, trait)?.similarity).toBeCloseTo(similarity, 12);
  });

  it.each([
    { widthMm: 0.5, other: 0.5, similarity: 1 },
    { widthMm: 0.5, other: 1, similarity: 0.5 }, // a doubling is half of the way to four times
    { widthMm: 1, other: 0.5, similarity: 0.5 },
    { widthMm: 0.1, other: 0.8, similarity: 0 },
  ])("compares widths by their ratio: $widthMm and $other", ({ widthMm, other, similarity }) => {
    const liner = (name: string, mm: number): Supply => ({ family: "liner", name, traits: { widthMm: mm } });
    expect(row(compare(liner("a", widthMm), liner("b", other)), "widthMm")?.similarity).toBeCloseTo(
      similarity,
      12,
    );
  });

  it("compares tips as sets and opacity by steps", () => {
    const found = compare(
      marker("#111111", { tips: ["brush", "chisel"] }),
      marker("#222222", { tips: ["brush", "fine"] }),
    );
    expect(row(found, "tips")?.similarity).toBeCloseTo(1 / 3, 12);
    const paint = (name: string, opacity: "opaque" | "semi"): Supply => ({
      family: "paint",
      name,
      traits: { opacity },
    });
    expect(row(compare(paint("a", "opaque"), paint("b", "semi")), "opacity")?.similarity).toBe(0.5);
  });

  it.each([
    { kit: "I", stash: "III", similarity: 0.5 },
    { kit: "bw8", stash: "bw1", similarity: 0 },
    { kit: "II", stash: "bw6", similarity: 1 }, // customary correspondence, no standard
    { kit: "I", stash: "bw4", similarity: 0.5 },
  ] as const)("compares lightfastness $kit with $stash", ({ kit, stash, similarity }) => {
    const paint = (lightfast: typeof kit | typeof stash): Supply => ({
      family: "paint",
      name: lightfast,
      lightfast,
    });
    expect(row(compare(paint(kit), paint(stash)), "lightfast")?.similarity).toBeCloseTo(similarity, 12);
  });

  it("uses a person's own weights for that family, 0 taking a trait out with its penalty", () => {
    const even = compare(blue, violet, { weights: { marker: { colour: 4 } } });
    expect(even.likeness).toBeCloseTo((2 ** (-18.4365 / 12) + 1) / 2, 4);
    expect(
      compare(marker("#d01010", { base: "oil" }), marker("#10d010", { base: "oil" }), {
        weights: { marker: { colour: 0 } },
      }),
    ).toMatchObject({ likeness: 1 });
    expect(compare(blue, violet, { weights: { paint: { colour: 0 } } }).likeness).toBe(
      compare(blue, violet).likeness,
    );
  });

  it("lets a fine marker stand in for a liner, but not a broad or an unknown one", () => {
    const liner: Supply = { family: "liner", name: "liner", traits: { base: "dye" } };
    expect(compare(liner, marker("#000000", { base: "water-dye", tips: ["fine"] })).likeness).toBe(0.45);
    const match = matchKit({
      kit: { id: "k", lines: [{ id: "l", supply: liner }] },
      stash: [{ id: "s", supply: marker("#000000", { tips: ["chisel"] }) }],
    });
    expect(match.lines[0]?.candidates).toEqual([]);
  });
});

it("colour weighs most wherever a family has it", () => {
  for (const weights of Object.values(builtInWeights)) {
    const { colour, ...rest } = weights;
    if (colour !== undefined) expect(colour).toBeGreaterThan(Math.max(...Object.values(rest)));
  }
});

describe("paper", () => {
  const paper = (name: string, size: string | [number, number]): Supply => ({
    family: "paper",
    name,
    traits: { size },
  });

  // Arithmetic on ISO 216 sizes: 297 × 420 holds two of 210 × 297, turned; 215.9 × 279.4 does not hold one.
  it("larger than needed keeps full credit and says how it is cut", () => {
    const found = compare(paper("a", "A4"), paper("b", "A3"));
    expect(found).toMatchObject({ likeness: 1, adaptation: { pieces: 2, waste: [], wasteShare: 0 } });
    expect(found.adaptation?.sentence).toBe(
      "Cut each sheet to 210 × 297 mm: 2 pieces a sheet, nothing is left over.",
    );
  });

  it("names the strips that are left over", () => {
    const found = compare(paper("a", [100, 200]), paper("b", [250, 450]));
    expect(found.adaptation).toMatchObject({
      pieces: 4,
      waste: [
        [50, 450],
        [50, 200],
      ],
    });
    expect(found.adaptation?.wasteShare).toBeCloseTo(1 - 80_000 / 112_500, 12);
  });

  it("smaller than needed has the credit of the area it covers", () => {
    const found = compare(paper("a", "A4"), paper("b", "A5"));
    expect(found).toMatchObject({
      likeness: Math.round((148 * 210 * 10_000) / (210 * 297)) / 10_000,
      adaptation: null,
    });
  });

  it("within what a trimmed sheet may be off needs no cut", () => {
    expect(compare(paper("a", "A4"), paper("b", [211, 298])).adaptation).toBeNull();
  });

  it("of a size nobody agreed on is not known", () => {
    expect(row(compare(paper("a", "A4"), paper("b", "large")), "size")?.stash).toBeNull();
  });
});

it("says traits as one would on screen", () => {
  expect(traitLabel("base")).toBe("kind of ink");
  expect(traitLabel("constructor")).toBe("constructor");
});
