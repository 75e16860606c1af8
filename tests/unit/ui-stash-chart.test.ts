import { formatHex } from "culori";
import { describe, expect, it } from "vitest";
import type { CellReading, Colour, Doubt, Lab } from "../../src/engine/colour/index.ts";
import { hexOfWord, type StashItem } from "../../src/engine/supply/index.ts";
import {
  type Cell,
  cellsOf,
  cellView,
  keptOf,
  readingText,
  type Stands,
} from "../../src/ui/stash/chart/view/cells.ts";
import {
  colourBy,
  compared,
  firstUse,
  spreadText,
  usesOf,
  useText,
} from "../../src/ui/stash/chart/view/colour.ts";
import {
  asked,
  countIn,
  firstMarks,
  nearestCorner,
  outlinesOf,
  steppedBy,
  withMark,
} from "../../src/ui/stash/chart/view/marks.ts";
import {
  earlierTwice,
  foundText,
  freshThings,
  startIn,
  thingsAt,
  thingsFound,
} from "../../src/ui/stash/chart/view/things.ts";
import { itemView } from "../../src/ui/stash/view/item.ts";
import { knownStash } from "../../src/ui/stash/view/known.ts";

const lab = (l: number, a: number, b: number): Lab => ({ white: "D65", l, a, b });
const read = (colour: Lab, at = 0, spread = 0.4): CellReading => ({
  ...{ row: Math.floor(at / 6), column: at % 6, lab: colour, seen: colour },
  ...{ spread, certainty: 0.876, doubts: [] },
});
const doubtful = (doubt: Doubt, seen: Lab | null = lab(50, 0, 0)): CellReading => ({
  ...{ row: 0, column: 0, lab: null, seen, spread: seen && 3.2, certainty: 0.2 },
  doubts: [doubt],
});
const item = (id: string, code: string | null, colour?: Colour): StashItem => ({
  id,
  supply: { family: "paint", name: `Gouache ${id}`, maker: "Kvist", code, ...(colour ? { colour } : {}) },
});
const size = { width: 1000, height: 500 };

describe("marks on the photo", () => {
  const marks = firstMarks(size);
  it("start inside the photo, in order around it", () => {
    expect(marks.corners).toEqual([
      { x: 120, y: 60 },
      { x: 880, y: 60 },
      { x: 880, y: 440 },
      { x: 120, y: 440 },
    ]);
  });
  it("are moved by the arrow keys, ten times as far with Shift, and never leave the photo", () => {
    expect(steppedBy("ArrowRight", false, { x: 120, y: 60 }, size)).toEqual({ x: 122, y: 60 });
    expect(steppedBy("ArrowUp", true, { x: 120, y: 60 }, size)).toEqual({ x: 120, y: 40 });
    expect(steppedBy("ArrowLeft", true, { x: 5, y: 60 }, size)).toEqual({ x: 0, y: 60 });
    expect(steppedBy("ArrowDown", false, { x: 5, y: 500 }, size)).toEqual({ x: 5, y: 500 });
    expect(steppedBy("Enter", false, { x: 5, y: 5 }, size)).toBe(null);
  });
  it("are each moved alone", () => {
    const moved = withMark(marks, { kind: "corner", at: 2 }, { x: 900, y: 450 });
    expect(moved.corners[2]).toEqual({ x: 900, y: 450 });
    expect(moved.corners.toSpliced(2, 1)).toEqual(marks.corners.toSpliced(2, 1));
    expect(
      withMark({ ...marks, paper: [{ x: 1, y: 1 }] }, { kind: "paper", at: 0 }, { x: 2, y: 3 }).paper,
    ).toEqual([{ x: 2, y: 3 }]);
  });
  it("the corner nearest to a press is the one meant", () => {
    expect(nearestCorner(marks, { x: 700, y: 400 })).toEqual({ kind: "corner", at: 2 });
  });
  it.each([
    ["4", 4],
    [" 60 ", 60],
    ["61", null],
    ["0", null],
    ["2.5", null],
    ["-3", null],
    ["1e1", null],
    ["", null],
  ])("a count of %j is %j", (text, count) => expect(countIn(text)).toBe(count));
  it("say to the reader what is marked, and nothing while a count is missing", () => {
    expect(asked({ ...marks, rows: "2", columns: "3", gap: "none" })).toMatchObject({
      ...{ rows: 2, columns: 3, gap: 0, corners: marks.corners, white: { l: 96 } },
    });
    expect(asked({ ...marks, rows: "two" })).toBe(null);
    expect(outlinesOf({ ...marks, rows: "" })).toEqual([]);
  });
  it("show every swatch where it will be read", () => {
    const outlines = outlinesOf({ ...marks, rows: "2", columns: "3", gap: "none" });
    expect(outlines).toHaveLength(6);
    const [x, y] = [120 + 760 / 3, 60 + 380 / 2];
    expect(outlines[0]?.[2].x).toBeCloseTo(x, 6);
    expect(outlines[0]?.[2].y).toBeCloseTo(y, 6);
    expect(outlines[5]?.[2].x).toBeCloseTo(880, 6);
  });
});

describe("the colour of a swatch", () => {
  const typed: Colour = { name: "moss", hex: "#6b7d3a", from: "typed" };
  it("is kept as measured, its name stays, and what was typed of it goes", () => {
    expect(colourBy("measured", read(lab(50.123, -10.456, 20.001)), { ...typed, theirs: 1 })).toEqual({
      ...{ name: "moss", theirs: 1, lab: [50.12, -10.46, 20], white: "D65", from: "measured" },
      ...{ spread: 0.4, certainty: 0.88 },
    });
  });
  it("changes nothing where it is kept as it was", () => {
    expect(colourBy("before", read(lab(50, 0, 0)), typed)).toBe(undefined);
    expect(colourBy("measured", doubtful("glare"), typed)).toBe(undefined);
  });
  it("of one in doubt is never taken by itself, only when a person says so", () => {
    expect(firstUse(doubtful("glare"), null)).toBe("before");
    expect(usesOf(doubtful("glare"))).toEqual(["before", "seen"]);
    expect(colourBy("seen", doubtful("glare"), null)).toMatchObject({ lab: [50, 0, 0], certainty: 0.2 });
  });
  it("of bare paper, or of one that gave no pixels, cannot be taken at all", () => {
    expect(usesOf(doubtful("empty"))).toEqual(["before"]);
    expect(usesOf(doubtful("few-pixels", null))).toEqual(["before"]);
  });
  it("far off what was typed is not taken by itself: it may be another thing", () => {
    const near = read(lab(51, -13, 33));
    const far = read(lab(30, 60, -40));
    expect(firstUse(near, typed)).toBe("measured");
    expect(firstUse(far, typed)).toBe("before");
    expect(compared(far, typed)?.isFarOff).toBe(true);
    expect(firstUse(far, { name: "moss" })).toBe("measured");
  });
  // The ΔE00 of these two is 2.0425: Sharma, Wu & Dalal (2005), table 1, pair 1. 2^(−2.0425 ÷ 12) = 0.889.
  it("is compared with what is known, in directions and in figures", () => {
    const before: Colour = { lab: [50, 2.6772, -79.7751], white: "D65", from: "typed" };
    const beside = compared(read(lab(50, 0, -82.7485)), before);
    expect(beside?.figures).toBe("2.0 apart, 89 of 100 near");
    expect(beside?.said).toMatch(/^Beside what you typed: /);
    expect(compared(read(lab(60, 2.6772, -79.7751)), before)?.said).toBe("Beside what you typed: lighter");
    expect(compared(read(lab(50.3, 2.6772, -79.7751)), before)?.said).toBe("As good as what you typed");
    expect(compared(read(lab(60, 0, 0)), { ...before, from: "measured" })?.said).toMatch(/^Beside last time/);
  });
  it("is compared with nothing where nothing is known, or only guessed from a name", () => {
    expect(compared(read(lab(50, 0, 0)), null)).toBe(null);
    expect(compared(read(lab(50, 0, 0)), { name: "moss", hex: hexOfWord("moss") })).toBe(null);
  });
  it("says how evenly it was seen", () => {
    expect([0, 0.99, 1.4, 2.5, 4].map(spreadText)).toEqual([
      ...["even", "even", "varies by about 1", "varies by about 3", "varies by about 4"],
    ]);
  });
  it("its choices are called by what there is", () => {
    expect(useText("before", typed)).toBe("keep typed");
    expect(useText("before", { lab: [1, 2, 3], from: "measured" })).toBe("keep what it has");
    expect(useText("before", null)).toBe("leave it without");
    expect(useText("measured", null)).toBe("use measured");
  });
});

describe("what the swatches are", () => {
  const stash = [
    item("b", "10"),
    item("c", "2"),
    item("a", null),
    item("d", "A2"),
    { id: "p", supply: { family: "paper", name: "Gouache paper", maker: "Kvist" } } satisfies StashItem,
  ];
  it("are the things found, in order of their number; paper is on no chart", () => {
    expect(thingsFound(knownStash(stash), "kvist", "code").map(({ id }) => id)).toEqual(["c", "b", "d", "a"]);
    expect(thingsFound(knownStash(stash), " ", "code")).toEqual([]);
  });
  it.each([
    ["1", 1],
    [" 25 ", 25],
    ["0", 1],
    ["", 1],
    ["next", 1],
  ])("begin with the thing that is typed: %j", (text, start) => expect(startIn(text)).toBe(start));
  it("take the things in reading order, but for those chosen one by one", () => {
    const [b, c] = stash as [StashItem, StashItem];
    const things = thingsAt(
      4,
      [b, c],
      new Map<number, StashItem | null>([
        [1, null],
        [3, b],
      ]),
    );
    expect(things.map((thing) => thing?.id ?? null)).toEqual(["b", null, null, "b"]);
    expect([...earlierTwice(things)]).toEqual([0]);
  });
  it("say how what was found fits", () => {
    expect(foundText(0, 24)).toMatch(/^Write what they have in common/);
    expect(foundText(24, 24)).toBe("24 things found for 24 swatches.");
    expect(foundText(30, 24)).toBe(
      "30 things found for 24 swatches. The swatches take the first of them, in order.",
    );
    expect(foundText(1, 24)).toBe("1 thing found for 24 swatches. The last swatches are left over.");
  });
  it("new ones have their names and numbers line by line, or the swatch's number", () => {
    const names = "12 moss\n\nB-7\nbrick #a8433a";
    const fresh = freshThings({ family: "paint", name: "Gouache", maker: "Kvist" }, names, 5);
    expect(fresh.map(({ name, code }) => [name, code ?? null])).toEqual([
      ["Gouache, moss", "12"],
      ["Gouache, 2", null],
      ["Gouache", "B-7"],
      ["Gouache, brick", null],
      ["Gouache, 5", null],
    ]);
    expect(fresh[3]).toMatchObject({ maker: "Kvist", colour: { hex: "#a8433a" } });
  });
});

describe("what is kept", () => {
  const cells = [read(lab(50, 10, 10)), doubtful("glare"), doubtful("empty"), read(lab(70, 0, 30), 3)];
  const stands = (ids: readonly string[]): readonly Stands[] =>
    ids.map((id) => (id === "" ? null : { kind: "stash", item: item(id, null) }));
  const all = (uses = new Map()): readonly Cell[] => cellsOf(cells, stands(["a", "b", "c", ""]), uses);

  it("are the colours of swatches that stand for something and are in no doubt", () => {
    const { changed, added } = keptOf(all(), new Set());
    expect(changed.map(({ item: { id } }) => id)).toEqual(["a"]);
    expect(added).toEqual([]);
    expect(keptOf(all(new Map([[1, "seen"]])), new Set()).changed.map(({ item: { id } }) => id)).toEqual([
      "a",
      "b",
    ]);
    expect(keptOf(all(), new Set([0])).changed).toEqual([]);
  });
  it("a choice that a swatch does not offer falls back", () => {
    expect(all(new Map([[2, "seen"]]))[2]?.use).toBe("before");
  });
  it("new things come with their colour, or without it where it is in doubt; bare paper is no thing", () => {
    const fresh: readonly Stands[] = cells.map(() => ({
      kind: "fresh",
      supply: { family: "paint", name: "Gouache" },
    }));
    const { added } = keptOf(cellsOf(cells, fresh, new Map()), new Set());
    expect(added.map(({ colour }) => colour?.from ?? null)).toEqual(["measured", null, "measured"]);
  });
  it("is shown with its figures, or with the reason why there is no colour", () => {
    const [one, two, three, four] = all().map(cellView);
    expect(one).toMatchObject({
      number: "1",
      name: "Gouache a",
      figures: `${formatHex({ mode: "lab65", l: 50, a: 10, b: 10 })} · L 50, a 10, b 10 · even`,
    });
    expect(two).toMatchObject({ figures: "No colour: light shines in it.", drawn: null, isDoubtful: true });
    expect(two?.uses.map(({ label }) => label)).toEqual([
      "leave it without",
      "use what was seen all the same",
    ]);
    expect(three).toMatchObject({ figures: "No colour: nothing but paper.", uses: [] });
    expect(four).toMatchObject({ name: null, place: "row 1, 4 along" });
  });
  it("is summed up, with what the light was", () => {
    const light = { places: 9, used: 9, paper: lab(80, 2, 12), ratio: 1.62, between: false };
    expect(readingText({ cells, light })).toEqual({
      title: "2 of 4 swatches have a colour",
      more: "2 are in doubt and get none; the reason stands beside each. The light was 1.6 times as strong at one end; that is levelled. It was warm; that is levelled too. No paper was found between the swatches, so the light was told from around them.",
    });
    expect(
      readingText({
        cells: [read(lab(50, 0, 0))],
        light: { ...light, paper: lab(80, 0, 0), ratio: 1, between: true },
      }),
    ).toEqual({
      title: "1 of 1 swatch has a colour",
      more: "The light was even.",
    });
  });
});

describe("a measured colour on its thing's page", () => {
  const factOf = (spread: unknown) => {
    const measured = item("a", null, { lab: [50, 0, 0], white: "D65", from: "measured", spread });
    const [known] = knownStash([measured]);
    return known && itemView([], known).rows[0]?.more;
  };
  it("says how evenly it was seen, where a number was kept of it", () => {
    expect(factOf(0.4)).toBe("measured from a photo, even");
    expect(factOf(2.2)).toBe("measured from a photo, varies by about 2");
    for (const odd of [undefined, null, "x", Number.NaN, -1])
      expect(factOf(odd)).toBe("measured from a photo");
  });
});
