import munkres from "munkres";
import { describe, expect, it } from "vitest";
import { assign } from "../../src/engine/match/assign.ts";
import { bestStandIns, type Choice } from "../../src/engine/match/standIns.ts";
import fc from "../chance.ts";

// Oracles: every assignment tried in turn (small), and the independent npm library `munkres` (large).

type Problem = Readonly<{ rows: readonly (readonly Choice[])[]; capacity: readonly number[] }>;

const problem = (most: number, fewUnits: boolean): fc.Arbitrary<Problem> =>
  fc
    .tuple(fc.integer({ min: 1, max: most }), fc.integer({ min: 1, max: most }))
    .chain(([lines, columns]) =>
      fc.record({
        units: fc.array(
          fc.array(fewUnits ? fc.integer({ min: 0, max: 4 }) : fc.integer({ min: 0, max: 10_000 }), {
            minLength: columns,
            maxLength: columns,
          }),
          { minLength: lines, maxLength: lines },
        ),
        // Each line has its own order of preference.
        ranks: fc.array(fc.shuffledSubarray([...Array(columns).keys()], { minLength: columns }), {
          minLength: lines,
          maxLength: lines,
        }),
        capacity: fc.array(fc.integer({ min: 1, max: 2 }), { minLength: columns, maxLength: columns }),
      }),
    )
    .map(({ units, ranks, capacity }) => ({
      capacity,
      rows: units.map((row, line) =>
        row
          .map((value, column) => ({ column, units: value, rank: ranks[line]?.[column] ?? 0 }))
          .filter((choice) => choice.units > 0),
      ),
    }));

type Plan = readonly (Choice | null)[];

/** Every plan there is, a gap among each line's choices. */
function plans({ rows, capacity }: Problem): readonly Plan[] {
  return rows.reduce<readonly Plan[]>(
    (begun, row) =>
      begun.flatMap((plan) =>
        [...row, null]
          .filter(
            (choice) =>
              !choice ||
              plan.filter((other) => other?.column === choice.column).length < (capacity[choice.column] ?? 0),
          )
          .map((choice) => [...plan, choice]),
      ),
    [[]],
  );
}

const totalOf = (plan: Plan): number => plan.reduce((sum, choice) => sum + (choice?.units ?? 0), 0);
const preference = (choice: Choice | null | undefined): number => choice?.rank ?? Number.POSITIVE_INFINITY;

/** The plan of greatest total that comes first line by line. */
function bestPlan(all: readonly Plan[]): Plan | undefined {
  const most = Math.max(...all.map(totalOf));
  return all
    .filter((plan) => totalOf(plan) === most)
    .toSorted((a, b) => {
      const line = a.findIndex((choice, index) => preference(choice) !== preference(b[index]));
      return line < 0 ? 0 : preference(a[line]) - preference(b[line]);
    })[0];
}

const solve = ({ rows, capacity }: Problem) => bestStandIns(rows, new Map(capacity.entries()));

describe("the best stand-ins, against every assignment tried in turn", () => {
  it.each([
    { name: "few values, so that many totals tie", few: true },
    { name: "any values", few: false },
  ])("are the same, ties and all: $name", ({ few }) => {
    fc.assert(
      fc.property(problem(4, few), (given) => {
        const expected = bestPlan(plans(given))?.map((choice) => choice?.column ?? null);
        expect(solve(given).map(({ column }) => column)).toEqual(expected);
      }),
      { numRuns: 600 },
    );
  });

  it("name the second choice of each line, and what it would cost in all", () => {
    fc.assert(
      fc.property(problem(4, true), (given) => {
        const all = plans(given);
        const best = bestPlan(all) ?? [];
        solve(given).forEach(({ second }, line) => {
          const others = all.filter((plan) => plan[line] && plan[line]?.column !== best[line]?.column);
          const most = Math.max(...others.map(totalOf));
          const [first] = others
            .filter((plan) => totalOf(plan) === most)
            .map((plan) => plan[line])
            .toSorted((a, b) => preference(a) - preference(b));
          expect(second).toEqual(first ? { column: first.column, costUnits: totalOf(best) - most } : null);
        });
      }),
      { numRuns: 400 },
    );
  });
});

describe("the solver, against munkres on the whole matrix", () => {
  const matrix = fc
    .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 30 }), fc.constantFrom(3, 50, 10_000))
    .chain(([rows, more, most]) =>
      fc.array(
        fc.array(fc.integer({ min: 0, max: most }), { minLength: rows + more, maxLength: rows + more }),
        { minLength: rows, maxLength: rows },
      ),
    );
  const costOf = (costs: readonly (readonly number[])[], pairs: readonly (readonly [number, number])[]) =>
    pairs.reduce((sum, [row, column]) => sum + (costs[row]?.[column] ?? Number.NaN), 0);

  it("finds the same least cost, every column used once", () => {
    fc.assert(
      fc.property(matrix, (costs) => {
        const rows = costs.map((row) => row.map((cost, column) => ({ column, cost })));
        const found =
          assign(
            rows,
            (costs[0] ?? []).map(() => 1),
          )?.columnOf ?? [];
        expect(new Set(found).size).toBe(costs.length);
        const pairs = found.map((column, row) => [row, column] as const);
        expect(costOf(costs, pairs)).toBe(costOf(costs, munkres(costs.map((row) => [...row]))));
      }),
      { numRuns: 300 },
    );
  });

  it("loses nothing by pruning: contested lines over a hundred items", () => {
    const wanted = fc.array(
      fc.array(fc.integer({ min: 4000, max: 4040 }), { minLength: 100, maxLength: 100 }),
      { minLength: 20, maxLength: 20 },
    );
    fc.assert(
      fc.property(wanted, (units) => {
        const rows = units.map((row) => row.map((value, column) => ({ column, units: value, rank: column })));
        const found = bestStandIns(rows, new Map());
        const total = found.reduce((sum, { column }, line) => sum + (units[line]?.[column ?? -1] ?? 0), 0);
        const oracle = munkres(units.map((row) => row.map((value) => -value)));
        expect(total).toBe(costOf(units, oracle));
      }),
      { numRuns: 40 },
    );
  });

  it("never loses to taking the best pair that is left, again and again", () => {
    fc.assert(
      fc.property(problem(8, false), (given) => {
        const { rows, capacity } = given;
        const room = [...capacity];
        const pairs = rows
          .flatMap((row, line) => row.map((choice) => ({ line, choice })))
          .toSorted((a, b) => b.choice.units - a.choice.units);
        const served = new Set<number>();
        let greedy = 0;
        for (const { line, choice } of pairs) {
          if (served.has(line) || (room[choice.column] ?? 0) === 0) continue;
          served.add(line);
          room[choice.column] = (room[choice.column] ?? 0) - 1;
          greedy += choice.units;
        }
        const total = solve(given).reduce((sum, { column }, line) => {
          return sum + (rows[line]?.find((choice) => choice.column === column)?.units ?? 0);
        }, 0);
        expect(total).toBeGreaterThanOrEqual(greedy);
      }),
    );
  });
});
