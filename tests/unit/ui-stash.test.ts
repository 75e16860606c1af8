import * as culori from "culori";
import { describe, expect, it } from "vitest";
import { labFromHex } from "../../src/engine/colour/index.ts";
import type { StashItem } from "../../src/engine/supply/index.ts";
import { applyChanges } from "../../src/store/journal/index.ts";
import { type Asked, anything } from "../../src/ui/stash/view/asked.ts";
import { cellKey, hueCounts, layoutOf, nearestFirst } from "../../src/ui/stash/view/by-colour.ts";
import { talliesOf } from "../../src/ui/stash/view/counts.ts";
import { spotToward } from "../../src/ui/stash/view/direction.ts";
import { type Found, findIn, readSearch } from "../../src/ui/stash/view/find.ts";
import { itemView, nearestOf } from "../../src/ui/stash/view/item.ts";
import { type Known, knownStash } from "../../src/ui/stash/view/known.ts";
import { anotherLike, newItems } from "../../src/ui/stash/view/new-items.ts";
import { inOrder } from "../../src/ui/stash/view/order.ts";
import { readCount, readTags } from "../../src/ui/stash/view/read-item.ts";
import { rowOf } from "../../src/ui/stash/view/rows.ts";
import { addTwin, removeTwin, twinOptions, twinsOf } from "../../src/ui/stash/view/twins.ts";
import { sampleBook } from "./sample.ts";

const book = sampleBook();
const stash = book.stash ?? [];
const known = knownStash(stash);

const find = (asked: Partial<Asked>) => findIn(known, { ...anything, ...asked });
const rowsOf = (stash: readonly Known[], found: Found) =>
  inOrder(stash, found).map((known) => rowOf(known, found.apart?.get(known.item.id)));
const one = (id: string): Known => {
  const found = known.find(({ item }) => item.id === id);
  if (!found) throw new Error(`the sample lacks ${id}`);
  return found;
};

describe("searching the stash", () => {
  it("finds everything while nothing is asked", () => {
    const found = find({});
    expect(found.ids.size).toBe(stash.length);
    expect(found.asked).toBe(false);
  });

  it("wants every word, whichever field it is in", () => {
    const found = find({ text: "blue tin GOUACHE" });
    const byHand = stash.filter(({ place, supply }) => place === "blue tin" && /gouache/i.test(supply.name));
    expect([...found.ids].toSorted()).toEqual(byHand.map(({ id }) => id).toSorted());
  });

  it("takes accents and case as they come", () => {
    expect(find({ text: "ljusgrand" }).ids).toEqual(find({ text: "LJUSGRÄND" }).ids);
    expect(find({ text: "ljusgrand" }).ids.size).toBeGreaterThan(0);
  });

  it("finds colours by their words though no name says them", () => {
    const found = find({ text: "yellow-green" });
    expect(found.ids.has("st-001")).toBe(true); // "Gouache, fern shade", #62732f
  });

  it("finds by maker, code and state", () => {
    expect(find({ text: "torrin fsh" }).ids).toEqual(new Set(["st-001"]));
    expect(find({ text: "dried out" }).ids.size).toBe(stash.filter(({ state }) => state === "dried").length);
  });

  it("narrows down by kind, place and state at once", () => {
    const found = find({ kind: "paint", place: "blue tin", state: "dried" });
    const byHand = stash.filter(
      (item) => item.supply.family === "paint" && item.place === "blue tin" && item.state === "dried",
    );
    expect(found.ids).toEqual(new Set(byHand.map(({ id }) => id)));
    expect(found.asked).toBe(true);
  });

  // ΔE00 by culori (an independent library), under D65 as ours.
  it("finds what is close to a hex, nearest first", () => {
    const wanted = "#6b7d3a";
    const apart = culori.differenceCiede2000();
    const inD65 = (hex: string) => {
      const { l, a, b } = labFromHex(hex);
      return { mode: "lab65", l, a, b } as const;
    };
    const found = find({ text: wanted });
    const byHand = stash.flatMap(({ id, supply }) =>
      supply.colour?.hex && apart(inD65(wanted), inD65(supply.colour.hex)) <= 10 ? [id] : [],
    );
    expect(new Set(found.apart?.keys())).toEqual(new Set(byHand));
    const distances = [...(found.apart?.values() ?? [])];
    expect(distances).toEqual(distances.toSorted((a, b) => a - b));
  });

  it.each([
    ["#6b7d3a", true, []],
    ["6b7d3a paint", true, ["paint"]],
    ["#abc", true, []],
    ["lab(50 -12 30) tube", true, ["tube"]],
    ["facade", false, ["facade"]],
    ["decade", false, ["decade"]],
    ["#12", false, ["#12"]],
    ["abc", false, ["abc"]],
  ])("reads %s", (text, hasColour, words) => {
    const search = readSearch(text);
    expect(search.colour !== null).toBe(hasColour);
    expect(search.words).toEqual(words);
  });
});

describe("the stash by colour", () => {
  it("has a place for every thing, once, whatever is searched for", () => {
    for (const text of ["", "opaque paint", "nothing has these words"]) {
      const layout = layoutOf(known, find({ text }), 1000);
      const ids = [...layout.cells.flat(), layout.rest].flatMap(({ slots }) =>
        slots.map(({ item }) => item.id),
      );
      expect(ids.toSorted()).toEqual(stash.map(({ id }) => id).toSorted());
    }
  });

  it("keeps places while the search changes", () => {
    const ids = (text: string) =>
      layoutOf(known, find({ text }), 1000)
        .cells.flat()
        .map(({ slots }) => slots.map(({ item }) => item.id));
    expect(ids("opaque paint")).toEqual(ids(""));
  });

  it("puts lighter things above darker ones", () => {
    const layout = layoutOf(known, find({}), 1000);
    const lightness = layout.cells.map((row) =>
      row.flatMap(({ slots }) => slots.map(({ item }) => one(item.id).colour?.lab.l ?? 0)),
    );
    lightness.slice(1).forEach((row, index) => {
      expect(Math.max(...row)).toBeLessThan(Math.min(...(lightness[index] ?? [])));
    });
  });

  it("folds away what is too much, and never what fits before what does not", () => {
    const found = find({ text: "gouache" });
    const layout = layoutOf(known, found, 2);
    const full = layoutOf(known, found, 1000);
    layout.cells.flat().forEach((cell, index) => {
      const whole = full.cells.flat()[index];
      const fits = cell.slots.filter(({ fits: does }) => does).length;
      expect(cell.slots.length + cell.more).toBe(whole?.slots.length);
      expect(fits).toBe(Math.min(2, whole?.slots.filter(({ fits: does }) => does).length ?? 0));
    });
  });

  // The distances are judged by culori above.
  it("puts what is close to a typed colour in the order of nearness, the nearest kept when some are folded", () => {
    const found = find({ text: "#303030" });
    expect(found.ids.size).toBeGreaterThan(3);
    const ids = (limit: number) => nearestFirst(known, found, limit).slots.map(({ item }) => item.id);
    expect(ids(1000)).toEqual([...(found.apart?.keys() ?? [])]);
    expect(ids(3)).toEqual([...(found.apart?.keys() ?? [])].slice(0, 3));
    expect(nearestFirst(known, found, 3).more).toBe(found.ids.size - 3);
  });

  it("shows all of a cell that was opened", () => {
    const key = cellKey("greys", "very dark");
    const find2 = (opened: ReadonlyMap<string, number>) =>
      layoutOf(known, find({}), 2, opened)
        .cells.flat()
        .find(({ hue, band }) => cellKey(hue, band) === key);
    expect(find2(new Map())?.more).toBeGreaterThan(0);
    expect(find2(new Map([[key, 1000]]))?.more).toBe(0);
  });

  it("counts what fits in each hue, folded away or not", () => {
    const found = find({ text: "paint" });
    const counts = [...hueCounts(layoutOf(known, found, 1)).values()];
    const coloured = known.filter(({ item, colour }) => colour && found.ids.has(item.id));
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(coloured.length);
  });
});

describe("the list", () => {
  it("goes by name, and by nearness where a colour was typed", () => {
    const names = rowsOf(known, find({ kind: "marker" })).map(({ name }) => name);
    expect(names).toEqual(names.toSorted((a, b) => a.localeCompare(b)));
    const near = find({ text: "#62732f" });
    expect(rowsOf(known, near)[0]?.item.id).toBe("st-001");
    expect(rowsOf(known, near)[0]?.facts).toContain("0.0 apart");
  });

  it("says how many, and the sheets left of paper", () => {
    const pad: StashItem = {
      id: "p",
      supply: { family: "paper", name: "Pad", traits: { sheets: 20 } },
      owned: 2,
      sheetsLeft: 1,
    };
    const listed = knownStash([pad, { id: "x", supply: { family: "paint", name: "Paint" } }]);
    const rows = rowsOf(listed, findIn(listed, anything));
    expect(rows.map(({ have }) => have)).toEqual(["2, 1 sheet left", "1"]);
  });

  it("tells worn things from fine ones by a word", () => {
    const states = rowsOf(known, find({ state: "dried" })).map(({ state, isWorn }) => [state, isWorn]);
    expect(new Set(states.map(String))).toEqual(new Set(["dried out,true"]));
  });
});

describe("the margin", () => {
  it("counts each kind, place and state, and they come to the whole", () => {
    const tallies = talliesOf(known);
    for (const list of [tallies.kinds, tallies.places, tallies.states]) {
      expect(list.reduce((sum, { count }) => sum + count, 0)).toBe(stash.length);
    }
    expect(tallies.kinds[0]).toEqual({ value: "paint", label: "paint", count: 40 });
    expect(tallies.sum).toBe("145 things in 13 places");
  });

  it("counts one thing as one", () => {
    const tallies = talliesOf(
      knownStash([{ id: "a", supply: { family: "ink", name: "Ink" }, place: "sill" }]),
    );
    expect(tallies.sum).toBe("1 thing in 1 place");
    expect(tallies.colours).toBe("0 with a colour");
  });
});

describe("one item", () => {
  it("says its colour in words and figures", () => {
    const view = itemView(known, one("st-001"));
    expect(view.rows[0]?.text).toMatch(/^yellow-green, L 46, a .17, b 35$/);
    expect(view.facts).toBe("tube, 20 ml, opaque");
    expect(view.rows.find(({ label }) => label === "Have")?.text).toMatch(/^1, opened .*2023, fine$/);
  });

  it("names three others whose colours are nearest, in order, and never itself", () => {
    for (const each of known.filter(({ colour }) => colour)) {
      const near = nearestOf(known, each);
      expect(near).toHaveLength(3);
      expect(near.map(({ item }) => item.id)).not.toContain(each.item.id);
      const figures = near.map(({ text }) => Number.parseFloat(text.replace(",", ".")));
      expect(figures).toEqual(figures.toSorted((a, b) => a - b));
    }
  });

  it("has no neighbours without a colour", () => {
    const brush = known.find(({ item }) => item.supply.family === "brush");
    expect(brush && nearestOf(known, brush)).toEqual([]);
  });
});

describe("fields of an item", () => {
  it.each([
    ["0", 0],
    [" 12 ", 12],
  ])("takes %s as a count", (text, count) => expect(readCount(text)).toEqual({ ok: true, value: count }));

  it.each(["", "-1", "1.5", "two", "1e3"])("refuses %s as a count", (text) => {
    expect(readCount(text).ok).toBe(false);
  });

  it("takes tags with commas between", () => {
    expect(readTags(" night, #shore ,night,, ")).toEqual({ ok: true, value: ["night", "shore"] });
    expect(readTags(" , ")).toEqual({ ok: true, value: undefined });
  });
});

describe("new items", () => {
  const written = [
    { qty: 2, supply: { family: "paint", name: "Gouache, moss" } },
    { qty: 1, supply: { family: "liner", name: "Liner, black" } },
  ] as const;

  it("get fresh ids, the place, and how many; the day they were got stays open", () => {
    let at = 0;
    const taken: number[] = [];
    const items = newItems(written, "blue tin", stash, (ids) => {
      taken.push(ids.length);
      at += 1;
      return `n${at}`;
    });
    expect(items).toEqual([
      { id: "n1", supply: written[0].supply, owned: 2, place: "blue tin" },
      { id: "n2", supply: written[1].supply, place: "blue tin" },
    ]);
    expect(taken).toEqual([stash.length, stash.length + 1]);
  });

  it("another like one is of the same make, without the code of that very colour", () => {
    const other = anotherLike({ ...one("st-001").item, paid: { amount: "1", currency: "EUR" } }, "n");
    expect(other.id).toBe("n");
    expect(other.supply.maker).toBe("Torrin Hill");
    expect(other.supply.code).toBeUndefined();
    expect(other.paid).toBeUndefined();
    expect(other.place).toBe("blue tin");
  });
});

describe("twins", () => {
  const item = (id: string, twinOf?: string[]): StashItem => ({
    id,
    supply: { family: "paint", name: id },
    ...(twinOf ? { twinOf } : {}),
  });
  const three = [item("a", ["b"]), item("b", ["a"]), item("c", ["a"])];

  it("are found whichever of the two says so", () => {
    expect(twinsOf(item("a", ["b"]), three).map(({ id }) => id)).toEqual(["b", "c"]);
  });

  it("are offered but once, and never the thing itself", () => {
    expect(twinOptions(item("a", ["b"]), [...three, item("d")]).map(({ value }) => value)).toEqual(["d"]);
  });

  it.each(["b", "c"])("are parted on both sides (%s)", (id) => {
    const whole = { ...book, stash: three };
    const [a] = three;
    const other = three.find((one) => one.id === id);
    if (!a || !other) throw new Error("the test lacks its items");
    const after = applyChanges(whole, removeTwin(a, other).changes);
    if (!after.ok) throw new Error(after.fault.problem);
    const next = after.value.book.stash ?? [];
    const first = next.find((one) => one.id === "a");
    expect(first && twinsOf(first, next).map((twin) => twin.id)).not.toContain(id);
  });

  it("are joined by an act of the stash", () => {
    const whole = { ...book, stash: [item("a"), item("d")] };
    const after = applyChanges(whole, addTwin(item("a"), "d").changes);
    if (!after.ok) throw new Error(after.fault.problem);
    expect(after.value.book.stash?.[0]?.twinOf).toEqual(["d"]);
  });
});

describe("arrow keys among swatches", () => {
  const spots = [
    { x: 0, y: 0 },
    { x: 50, y: 0 },
    { x: 50, y: 40 },
    { x: 300, y: 0 },
  ];
  const from = { x: 0, y: 0 };
  it.each([
    ["ArrowRight", 1],
    ["ArrowDown", 2],
    ["ArrowLeft", -1],
    ["ArrowUp", -1],
  ] as const)("%s leads to %i", (arrow, at) => expect(spotToward(arrow, from, spots)).toBe(at));
  it("prefers what lies in line", () => {
    expect(spotToward("ArrowRight", { x: 60, y: 0 }, [...spots, { x: 200, y: 200 }])).toBe(3);
  });
  it("has nowhere to go among none", () => expect(spotToward("ArrowUp", from, [])).toBe(-1));
});
