import { describe, expect, it } from "vitest";
import published from "../../fixtures/reference/assignment.json" with { type: "json" };
import hundred from "../../fixtures/reference/assignment-100.json" with { type: "json" };
import { assign } from "../../src/engine/match/assign.ts";

type Cell = number | string;

/** Rows must be the fewer: with more rows than columns, some row goes without, which these cases allow. */
function wide(costs: readonly (readonly Cell[])[]): readonly (readonly Cell[])[] {
  const columns = costs[0]?.length ?? 0;
  if (costs.length <= columns) return costs;
  return Array.from({ length: columns }, (_, column) => costs.map((row) => row[column] ?? "forbidden"));
}

function leastCost(costs: readonly (readonly Cell[])[], sign: 1 | -1): number | null {
  const rows = wide(costs).map((row) =>
    row.flatMap((cost, column) => (typeof cost === "number" ? [{ column, cost: sign * cost }] : [])),
  );
  const found = assign(
    rows,
    (wide(costs)[0] ?? []).map(() => 1),
  );
  if (!found) return null;
  return found.columnOf.reduce((sum, column, row) => sum + Number(wide(costs)[row]?.[column]), 0);
}

// Sources stand in fixtures/reference/assignment.json beside each case: the SciPy documentation and test
// suite, textbooks, a public solver's guide. `maximum` was computed there with SciPy and by enumeration.
describe("published assignment problems", () => {
  it.each(published.assignment)(
    "$id costs $optimum at least and $maximum at most",
    ({ cost, optimum, maximum }) => {
      expect(leastCost(cost, 1)).toBe(optimum);
      expect(leastCost(cost, -1)).toBe(maximum);
    },
  );

  it("solves the 100 × 100 instance of OR-Library (assign100): 305", () => {
    expect(leastCost(hundred.cost, 1)).toBe(hundred.optimum);
    expect(hundred.optimum).toBe(305);
  });

  it("says so when a row can get nothing", () => {
    expect(assign([[{ column: 0, cost: 1 }], [{ column: 0, cost: 2 }]], [1])).toBeNull();
  });
});
