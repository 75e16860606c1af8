import { describe, expect, it } from "vitest";
import {
  type Kinship,
  relationsOf,
  type StashItem,
  type Supply,
  sidesOf,
} from "../../../src/engine/supply/index.ts";
import fc from "../../chance.ts";

// No outside source: which side a thing is on is the project's own rule, and has to agree with how kinships are followed.

const paint = (maker: string, line: string, code: string, name = "moss"): Supply => ({
  family: "paint",
  name,
  maker,
  line,
  ...(code ? { code } : {}),
});

const lines: Kinship = {
  id: "ki",
  kind: "twin",
  a: { maker: "Fjällbrand", line: "Älv" },
  b: { maker: "Kvist", line: "Ström" },
};
const single: Kinship = { ...lines, a: { ...lines.a, code: "12" }, b: { ...lines.b, code: "340" } };

describe("sidesOf", () => {
  it.each([
    ["a whole line, by number", lines, paint("FJALLBRAND", "älv ", "7"), ["a"]],
    ["a whole line, by number, of a thing without one", lines, paint("Fjällbrand", "Älv", ""), []],
    ["a whole line, by name", { ...lines, by: "name" as const }, paint("Kvist", "Ström", ""), ["b"]],
    ["one number of a line", single, paint("Kvist", "Ström", "340"), ["b"]],
    ["the other side's number", single, paint("Kvist", "Ström", "12"), []],
    [
      "a side without a number takes the other's",
      { ...single, b: lines.b },
      paint("Kvist", "Ström", "12"),
      ["b"],
    ],
    ["a line linked with itself", { ...lines, b: lines.a }, paint("Fjällbrand", "Älv", "7"), ["a", "b"]],
    ["and no number but that", { ...single, b: lines.b }, paint("Kvist", "Ström", "13"), []],
    ["another line", lines, paint("Kvist", "Älv", "7"), []],
    ["nobody's", { id: "ki", kind: "twin" as const, a: {}, b: {} }, paint("", "", "7"), []],
  ])("%s", (_, kinship, supply, sides) => {
    expect(sidesOf(kinship, supply)).toEqual(sides);
  });

  it("agrees with what the kinship ties together", () => {
    const maker = fc.constantFrom("Fjällbrand", "Kvist");
    const code = fc.constantFrom("", "12", "340");
    const name = fc.constantFrom("moss", "brick");
    const supply = fc
      .tuple(maker, code, name)
      .map(([of, number, called]) => paint(of, "Älv", number, called));
    const side = fc.record({ maker, line: fc.constant("Älv"), code });
    const kin = fc.record({ a: side, b: side, by: fc.constantFrom("code" as const, "name" as const) });
    fc.assert(
      fc.property(kin, supply, supply, (drawn, one, other) => {
        const kinship: Kinship = { id: "ki", kind: "twin", ...drawn };
        const item: StashItem = { id: "st", supply: other };
        const relation = relationsOf([item], [kinship]).of(one).get(0);
        const tied = relation === "twin";
        // Tied only if they are on its two sides; the same product is said to be the same, not a twin.
        if (tied) {
          expect(sidesOf(kinship, one).length).toBeGreaterThan(0);
          expect(sidesOf(kinship, other).length).toBeGreaterThan(0);
        }
        const byNumber = drawn.a.code !== "" && drawn.b.code !== "";
        if (byNumber && relation !== "same") {
          const apart = sidesOf(kinship, one).some((here) =>
            sidesOf(kinship, other).some((there) => there !== here),
          );
          expect(tied).toBe(apart);
        }
      }),
    );
  });
});
