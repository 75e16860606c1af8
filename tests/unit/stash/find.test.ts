import { describe, expect, it } from "vitest";
import { labFromHex } from "../../../src/engine/colour/index.ts";
import { readColourPhrase, type StashItem } from "../../../src/engine/supply/index.ts";
import {
  anything,
  readTraits,
  type TraitAsked,
  traitsText,
  withTrait,
} from "../../../src/ui/stash/view/asked.ts";
import { talliesOf } from "../../../src/ui/stash/view/counts.ts";
import { filtersOf } from "../../../src/ui/stash/view/filters.ts";
import { findIn } from "../../../src/ui/stash/view/find.ts";
import { foundText } from "../../../src/ui/stash/view/found-text.ts";
import { knownStash } from "../../../src/ui/stash/view/known.ts";
import { inOrder } from "../../../src/ui/stash/view/order.ts";
import { between } from "../../../src/ui/stash/view/range.ts";
import fc from "../../chance.ts";
import { sampleBook } from "../sample.ts";

const stash = sampleBook().stash ?? [];
const known = knownStash(stash);
const search = (text: string) => findIn(known, { ...anything, text }, readColourPhrase);

const paint = (id: string, name: string, hex: string | null, more: Partial<StashItem> = {}): StashItem => ({
  id,
  supply: { family: "paint", name, ...(hex !== null && { colour: { hex } }) },
  ...more,
});

describe("what words say of a colour", () => {
  // Which colours go by which words: common practice, no source.
  it.each([
    ["pale grey-green", "#b4c2ac", true],
    ["ljust grågrön", "#b4c2ac", true],
    ["pale grey-green", "#2f6b2f", false],
    ["mörkblå", "#1c2f66", true],
    ["dark blue", "#1c2f66", true],
    ["dark blue", "#a8c4ee", false],
    ["warm grey", "#8f8a84", true],
    ["warm grey", "#848a8f", false],
    ["grå", "#8a8a8a", true],
    ["white", "#fdfdfb", true],
    ["svart", "#151515", true],
    ["reddish brown", "#7a3a20", true],
    ["blågrön", "#1a8577", true],
    ["very dark red", "#3d0a0a", true],
    ["lichen", "#8fb67b", true],
    ["lichen green", "#8fb67b", true],
    ["lichen green", "#1a8577", false],
    ["quibble green", "#3d8b3d", true],
  ])("%s takes in %s: %s", (text, hex, fits) => {
    expect(readColourPhrase(text)?.fits(labFromHex(hex))).toBe(fits);
  });

  it.each(["tube", "light tube", "", "pad of paper", "no. 12", "__proto__", "constructor"])(
    "says nothing where no word names a colour: %s",
    (text) => expect(readColourPhrase(text)).toBeNull(),
  );

  it("keeps to the words of colour, and calls one colour what one word names", () => {
    expect(readColourPhrase("moss gouache")?.words).toEqual(["moss"]);
    expect(readColourPhrase("moss gouache")?.isOne).toBe(true);
    expect(readColourPhrase("green gouache")?.isOne).toBe(false);
  });
});

describe("searching by colour words", () => {
  it("finds what is of the colour beside what is called so, those called so first", () => {
    const items = [
      paint("a", "Gouache, quartz", "#137e6d"), // "blue-green", as it is said
      paint("b", "Teal earth", null),
      paint("c", "Rust", "#a83c09"),
    ];
    const found = findIn(knownStash(items), { ...anything, text: "teal" }, readColourPhrase);
    expect([...found.ids].toSorted()).toEqual(["a", "b"]);
    expect([...(found.named ?? [])]).toEqual(["b"]);
    const order = inOrder(knownStash(items), found).map(({ item }) => item.id);
    expect(order).toEqual(["b", "a"]);
  });

  it("wants the words that are none of colour as well", () => {
    const found = search("green gouache");
    expect(found.ids.size).toBeGreaterThan(0);
    for (const { item } of inOrder(known, found)) expect(JSON.stringify(item)).toMatch(/gouache/i);
  });

  it("leaves words aside that nothing goes by, and says so", () => {
    const found = search("quibble green");
    expect(found.leftAside).toEqual(["quibble"]);
    expect(found.ids).toEqual(search("green").ids);
    expect(foundText(found, null)).toContain("nothing goes by “quibble”");
  });

  it("finds the same by the English and by the Swedish words", () => {
    expect(search("ljust grågrön").ids).toEqual(search("pale grey-green").ids);
    expect(search("pale grey-green").ids.size).toBeGreaterThan(0);
  });
});

describe("what is close to a thing", () => {
  it("is in order of nearness, the thing itself first, and never fewer than twelve", () => {
    const found = findIn(known, { ...anything, near: "st-001" });
    const order = inOrder(known, found).map(({ item }) => item.id);
    expect(order[0]).toBe("st-001");
    expect(order.length).toBeGreaterThanOrEqual(12);
    expect(order).toEqual([...(found.apart?.keys() ?? [])]);
  });

  it("is everything where there is no such thing, or it has no colour", () => {
    const colourless = known.find(({ colour }) => !colour)?.item.id ?? "";
    for (const near of ["nobody", colourless])
      expect(findIn(known, { ...anything, near }).ids.size).toBe(stash.length);
  });
});

const words = [
  "moss",
  "tar",
  "gouache",
  "blue tin",
  "Torrin",
  "15 ml",
  "opaque",
  "field",
  "paper",
  "ö",
  "grey",
];

describe("a search", () => {
  it("finds what a filter that looks at each thing anew would find", () => {
    const text = fc.array(fc.constantFrom(...words), { maxLength: 3 }).map((some) => some.join(" "));
    const kinds = fc.constantFrom(null, "paint" as const, "marker" as const);
    const states = fc.constantFrom(null, "low" as const, "ok" as const);
    fc.assert(
      fc.property(text, kinds, states, (typed, kind, state) => {
        const found = findIn(known, { ...anything, text: typed, kind, state });
        const wanted = typed
          .toLowerCase()
          .split(/\s+/)
          .filter(Boolean)
          .map((word) => word.replace("ö", "o"));
        const naive = known.filter(
          ({ item, findable }) =>
            (kind === null || item.supply.family === kind) &&
            (state === null || (item.state ?? "ok") === state) &&
            wanted.every((word) => findable.indexOf(word) >= 0),
        );
        expect([...found.ids]).toEqual(naive.map(({ item }) => item.id));
      }),
    );
  });

  it("looks into the bar code and the note", () => {
    const items = [
      { ...paint("a", "Tube", null), note: "from the attic sale" },
      { id: "b", supply: { family: "paint", name: "Pan", gtin: "4006381333931" } } as const,
    ];
    const ids = (text: string) => [...findIn(knownStash(items), { ...anything, text }).ids];
    expect(ids("attic")).toEqual(["a"]);
    expect(ids("4006381333931")).toEqual(["b"]);
  });

  it("narrows down by maker, line, tag and trait", () => {
    for (const [asked, fits] of [
      [{ maker: "Torrin Hill" }, (item: StashItem) => item.supply.maker === "Torrin Hill"],
      [
        { kind: "paint", traits: [{ trait: "opacity", value: "opaque" }] },
        ({ supply }: StashItem) => supply.family === "paint" && supply.traits?.opacity === "opaque",
      ],
      [
        { kind: "marker", traits: [{ trait: "tips", value: "chisel" }] },
        ({ supply }: StashItem) =>
          supply.family === "marker" && (supply.traits?.tips ?? []).includes("chisel"),
      ],
    ] as const) {
      const found = findIn(known, { ...anything, ...asked });
      expect(found.ids.size).toBeGreaterThan(0);
      expect([...found.ids]).toEqual(stash.filter(fits).map(({ id }) => id));
    }
  });
});

describe("what is asked, in the address", () => {
  it("comes back as it was", () => {
    const asked = fc.array(
      fc.record({
        trait: fc.constantFrom("base", "widthMm", "size", "pigments"),
        value: fc.string({ minLength: 1, unit: "grapheme" }),
      }),
      { maxLength: 4 },
    );
    fc.assert(
      fc.property(asked, (traits) => {
        expect(readTraits(traitsText(traits))).toEqual(traits);
      }),
    );
    expect(readTraits("base:%;:x;none")).toEqual([{ trait: "base", value: "%" }]);
  });

  it("has one value a trait, and none when it is asked for twice", () => {
    const oil: TraitAsked = { trait: "base", value: "oil" };
    const one = withTrait([], { trait: "base", value: "alcohol" });
    expect(withTrait(one, oil)).toEqual([oil]);
    expect(withTrait([oil], oil)).toEqual([]);
  });
});

describe("the lists to narrow down by", () => {
  it("offer a family's traits once it is asked for, and count them", () => {
    const tallies = talliesOf(known);
    const keys = (kind: "paint" | null) =>
      filtersOf(known, tallies, { ...anything, kind }).map(({ key }) => key);
    expect(keys(null)).not.toContain("trait medium");
    expect(keys("paint")).toContain("trait medium");
    const medium = filtersOf(known, tallies, { ...anything, kind: "paint" }).find(
      ({ key }) => key === "trait medium",
    );
    for (const { value, count } of medium?.tallies ?? [])
      expect(count).toBe(
        stash.filter(({ supply }) => supply.family === "paint" && supply.traits?.medium === value).length,
      );
  });

  it("offer lines only of the maker asked for", () => {
    const lines = filtersOf(known, talliesOf(known), { ...anything, maker: "Torrin Hill" }).find(
      ({ key }) => key === "line",
    );
    const theirs = new Set(
      stash.flatMap(({ supply }) => (supply.maker === "Torrin Hill" && supply.line ? [supply.line] : [])),
    );
    expect(new Set(lines?.tallies.map(({ value }) => value))).toEqual(theirs);
  });
});

describe("the order", () => {
  const items = [
    paint("a", "Shade 10", null, { place: "tin" }),
    paint("b", "Shade 2", null),
    paint("c", "Amber", null, { place: "box" }),
  ];
  const ids = (order: "name" | "place" | "newest") => {
    const some = knownStash(items);
    return inOrder(some, findIn(some, anything), order).map(({ item }) => item.id);
  };
  it.each([
    ["name", ["c", "b", "a"]],
    ["place", ["c", "a", "b"]],
    ["newest", ["c", "b", "a"]],
  ] as const)("goes by %s", (order, expected) => expect(ids(order)).toEqual(expected));
});

it("a stretch is all between two, either way", () => {
  const ids = ["a", "b", "c", "d"];
  expect(between(ids, "b", "d")).toEqual(["b", "c", "d"]);
  expect(between(ids, "d", "b")).toEqual(["b", "c", "d"]);
  expect(between(ids, "x", "b")).toEqual(["b"]);
  expect(between(ids, "a", "x")).toEqual([]);
});
