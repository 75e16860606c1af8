import * as culori from "culori";
import { describe, expect, it } from "vitest";
import { labFromHex } from "../../../src/engine/colour/index.ts";
import {
  alikeUpTo,
  doublesIn,
  keptApartOf,
  manyAlike,
  type StashItem,
  type Supply,
  sameProduct,
} from "../../../src/engine/supply/index.ts";
import fc from "../../chance.ts";

const base = { family: "paint", name: "Gouache, moss", maker: "Torrin", line: "Fjord" } as const;

const thing = (id: string, supply: Partial<Supply> = {}, more: Partial<StashItem> = {}): StashItem => ({
  id,
  supply: { ...base, ...supply } as Supply,
  ...more,
});

const found = (...items: readonly StashItem[]) =>
  doublesIn(items).map(({ items: some, why }) => [why, ...some.map(({ id }) => id)]);

describe("doubles", () => {
  it.each<readonly [string, Partial<Supply>, Partial<Supply>, string | null]>([
    [
      "one bar code, whatever the names",
      { gtin: "4006381333931", name: "x" },
      { gtin: "4006381333931", name: "y" },
      "gtin",
    ],
    ["maker, line and number", { code: "12", name: "x" }, { code: "12", name: "y" }, "code"],
    ["all that names them, one without a number", { code: "12" }, {}, "name"],
    ["words in another order", { name: "moss gouache" }, { name: "Gouache, moss" }, "nearly"],
    ["one letter", { name: "Gouache, mosss" }, {}, "nearly"],
    ["a trait only one of them has", { traits: { ml: 15 } }, {}, "nearly"],
    ["traits that differ", { traits: { ml: 15 } }, { traits: { ml: 5 } }, null],
    ["numbers that differ", { code: "12" }, { code: "13" }, null],
    ["figures in the name", { name: "Moss 1" }, { name: "Moss 2" }, null],
    ["another maker", { maker: "Kvist" }, {}, null],
    ["another family", { family: "marker", name: "mosss gouache" }, {}, null],
    ["two letters", { name: "Gouache, masses" }, {}, null],
    [
      "no maker, and names in another order",
      { name: "moss gouache", maker: null, line: null },
      { maker: null, line: null },
      null,
    ],
    [
      "colours far apart, spelt differently",
      { name: "Gouache, mosss", colour: { hex: "#ff0000" } },
      { colour: { hex: "#00ff00" } },
      null,
    ],
  ])("%s", (_, a, b, why) => {
    expect(found(thing("a", a), thing("b", b))).toEqual(why === null ? [] : [[why, "a", "b"]]);
  });

  it("does not guess which of two numbers a thing without one has", () => {
    expect(found(thing("a", { code: "1" }), thing("b", { code: "2" }), thing("c"), thing("d"))).toEqual([
      ["name", "c", "d"],
    ]);
  });

  it("asks no more about what was kept apart, whichever of the two says so", () => {
    const [a, b] = [thing("a"), thing("b", {}, { keptApart: ["a"] })];
    expect(found(a, b)).toEqual([]);
    expect(found(b, a)).toEqual([]);
    expect(keptApartOf(thing("x", {}, { keptApart: "a" }))).toEqual([]);
  });

  it("is in one group what is one thing, and every group holds two that the rule of the same product joins", () => {
    const supply = fc.record({
      name: fc.constantFrom("Moss", "moss ", "Rust"),
      maker: fc.constantFrom("Torrin", "Kvist", null),
      line: fc.constantFrom("Fjord", null),
      code: fc.constantFrom("1", "2", null),
      gtin: fc.constantFrom("4006381333931", null),
    });
    fc.assert(
      fc.property(fc.array(supply, { maxLength: 12 }), (supplies) => {
        const items = supplies.map((one, at) => thing(`i${at}`, one));
        const groups = doublesIn(items);
        const ids = groups.flatMap(({ items: some }) => some.map(({ id }) => id));
        expect(new Set(ids).size).toBe(ids.length);
        for (const { items: some, why } of groups) {
          if (why === "nearly") continue;
          const isJoined = (item: StashItem) =>
            some.some((other) => other !== item && sameProduct(item.supply, other.supply));
          expect(some.filter((item) => !isJoined(item))).toEqual([]);
        }
      }),
    );
  });

  it("looks at ten thousand of one name and no number without comparing all pairs", () => {
    let looks = 0;
    const items = Array.from({ length: 10_000 }, (_, at) => {
      const hex = `#${((at * 7_919) % 0xffffff).toString(16).padStart(6, "0")}`;
      const colour = {
        get hex() {
          looks += 1;
          return hex;
        },
      };
      return thing(`i${at}`, { name: `Shade ${at % 3}`, traits: { ml: at }, colour });
    });
    doublesIn(items);
    expect(looks).toBeLessThan(10 * items.length);
  });
});

describe("colours owned many times over", () => {
  const grey = (id: string, hex: string, more: Partial<StashItem> = {}) =>
    thing(id, { colour: { hex } }, more);

  it("are three or more of one role that are nearly one colour", () => {
    const items = [
      grey("a", "#8f8a84"),
      grey("b", "#8f8a85"),
      grey("c", "#908a84"),
      grey("d", "#20508f"),
      grey("e", "#8f8a84", { state: "dried" }),
      thing("f", { family: "marker", colour: { hex: "#8f8a84" } }),
    ];
    expect(manyAlike(items).map((group) => group.items.map(({ id }) => id))).toEqual([["a", "b", "c"]]);
    expect(manyAlike(items.slice(0, 2))).toEqual([]);
  });

  // ΔE00 by culori (an independent library), under D65 as ours.
  it("lie within the limit of the one in their middle, each in one group, and nothing nearby is forgotten", () => {
    const apart = culori.differenceCiede2000();
    const inD65 = (hex: string) => ({ mode: "lab65" as const, ...pick(labFromHex(hex)) });
    const pick = ({ l, a, b }: Readonly<{ l: number; a: number; b: number }>) => ({ l, a, b });
    const channel = fc.integer({ min: 100, max: 112 });
    const hexes = fc.array(fc.tuple(channel, channel, channel), { maxLength: 25 });
    fc.assert(
      fc.property(hexes, (some) => {
        const items = some.map((rgb, at) =>
          grey(`i${at}`, `#${rgb.map((value) => value.toString(16).padStart(2, "0")).join("")}`),
        );
        const groups = manyAlike(items);
        const grouped = groups.flatMap((group) => group.items);
        expect(new Set(grouped).size).toBe(grouped.length);
        const far = (a: StashItem, b: StashItem) =>
          apart(inD65(a.supply.colour?.hex ?? ""), inD65(b.supply.colour?.hex ?? ""));
        for (const { items: members, middle } of groups) {
          expect(members.length).toBeGreaterThanOrEqual(3);
          for (const member of members) expect(far(member, middle)).toBeLessThanOrEqual(alikeUpTo + 1e-6);
        }
        const rest = items.filter((item) => !grouped.includes(item));
        for (const item of rest)
          expect(rest.filter((other) => far(item, other) <= alikeUpTo - 1e-6).length).toBeLessThan(3);
      }),
      { numRuns: 60 },
    );
  });
});
