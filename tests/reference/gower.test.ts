import { describe, expect, it } from "vitest";
import published from "../../fixtures/reference/gower.json" with { type: "json" };
import { gower } from "../../src/engine/match/similarity.ts";

type Value = string | number | null;
type Columns = Readonly<Record<string, readonly Value[]>>;
type Example = Readonly<{
  types: Readonly<Record<string, string>>;
  data: Columns;
  asymmetric?: readonly string[];
}>;

/** Gower's rules for the trait types of these examples; null where a trait does not count (his δ = 0). */
function similarity(example: Example, trait: string, i: number, j: number): number | null {
  const values = example.data[trait] ?? [];
  const [a, b] = [values[i] ?? null, values[j] ?? null];
  if (a === null || b === null) return null;
  if (example.types[trait] !== "ratio") {
    if (example.asymmetric?.includes(trait) && a === 0 && b === 0) return null;
    return a === b ? 1 : 0;
  }
  const known = values.filter((value) => typeof value === "number");
  return 1 - Math.abs(Number(a) - Number(b)) / (Math.max(...known) - Math.min(...known));
}

function combined(example: Example, i: number, j: number): number | null {
  const each = Object.keys(example.types).map((trait) => similarity(example, trait, i, j));
  return gower(each.flatMap((one) => (one === null ? [] : [{ similarity: one, weight: 1 }])));
}

const exampleNamed = (id: string) => {
  const found = published.examples.find((example) => example.id === id);
  if (!found) throw new Error(`no example ${id}`);
  return found;
};

// Source: B. S. Everitt, Cluster Analysis (1993), pp. 45–46, whole matrix; the method is J. C. Gower (1971),
// Biometrics 27(4), 857–871. The printed s12 is 1/16; the rest of the matrix was computed exactly elsewhere.
describe("Gower's coefficient on Everitt's five patients", () => {
  const { similarity: expected, ...example } = exampleNamed("everitt-patients");
  const pairs = (expected ?? []).flatMap((row, k) => row.map((value, j) => ({ i: k + 1, j, value })));

  it.each(pairs)("patients $i and $j: $value", ({ i, j, value }) => {
    expect(combined(example as unknown as Example, i, j)).toBeCloseTo(value, 12); // columns differ per example
    expect(combined(example as unknown as Example, j, i)).toBeCloseTo(value, 12);
  });
});

// Source: README of the public repository wwwjk366/gower (its printed matrix is single precision: 2e-6).
describe("Gower's coefficient on the eight people of a public library's example", () => {
  const { dissimilarity: expected, ...example } = exampleNamed("python-gower-readme");
  const pairs = (expected ?? []).flatMap((row, k) => row.map((value, j) => ({ i: k + 1, j, value })));

  it.each(pairs)("people $i and $j are $value apart", ({ i, j, value }) => {
    const found = combined(example as unknown as Example, i, j);
    expect(Math.abs(1 - (found ?? Number.NaN) - value)).toBeLessThan(2e-6);
  });
});

describe("Gower's coefficient", () => {
  it("weighs each part and says null where nothing counts", () => {
    expect(
      gower([
        { similarity: 1, weight: 3 },
        { similarity: 0, weight: 1 },
      ]),
    ).toBe(0.75);
    expect(gower([])).toBeNull();
    expect(gower([{ similarity: 1, weight: 0 }])).toBeNull();
  });
});
