import { describe, expect, it } from "vitest";
import { labFromHex, lchOf } from "../../src/engine/colour/index.ts";
import type { StashItem } from "../../src/engine/supply/index.ts";
import { chartSheets, leavesColour } from "../../src/ui/stash/print/view/chart.ts";
import { brokenInto, textWidth } from "../../src/ui/stash/print/view/label.ts";
import { cellAt, columnCounts, cornersOf, gridOf, sheet } from "../../src/ui/stash/print/view/layout.ts";
import { firstRows, listGroups } from "../../src/ui/stash/print/view/list.ts";
import { inChartOrder } from "../../src/ui/stash/print/view/order.ts";
import fc from "../chance.ts";
import { sampleBook } from "./sample.ts";

const stash = sampleBook().stash ?? [];

const paint = (id: string, more: Partial<StashItem["supply"]>, rest: Partial<StashItem> = {}): StashItem =>
  ({ id, supply: { family: "paint", name: id, ...more }, ...rest }) as StashItem; // a paint, whatever `more` may say

describe("the list on paper", () => {
  it.each(["place", "maker"] as const)("by %s, has everything once, and what has none at its end", (by) => {
    const things = [...stash, paint("nowhere", {}), paint("spaces", { maker: " " }, { place: " " })];
    const groups = listGroups(things, by);
    const ids = groups.flatMap(({ rows }) => rows.map(({ id }) => id));
    expect(ids.toSorted()).toEqual(things.map(({ id }) => id).toSorted());
    expect(groups.at(-1)?.title).toBe({ place: "No place noted", maker: "Maker not known" }[by]);
    expect(new Set(groups.map(({ key }) => key)).size).toBe(groups.length);
  });
  it("takes codes as people count: B2 before B10, and what has none after them", () => {
    const things = ["B10", "", "B2"].map((code) => paint(`x${code}`, { maker: "Kvist", code }));
    expect(listGroups(things, "maker")[0]?.rows.map(({ code }) => code)).toEqual(["B2", "B10", ""]);
  });
  it("says a state only where something is to be done", () => {
    const [group] = listGroups(
      [paint("a", {}, { state: "dried" }), paint("b", {}, { state: "ok" })],
      "place",
    );
    expect(group?.rows.map(({ state }) => state)).toEqual(["dried out", ""]);
  });
  it("shows the first rows under their heads, and no head without rows", () => {
    const groups = listGroups(stash, "place");
    const first = firstRows(groups, 30);
    expect(first.flatMap(({ rows }) => rows)).toEqual(groups.flatMap(({ rows }) => rows).slice(0, 30));
    expect(first.filter(({ rows }) => rows.length === 0)).toEqual([]);
  });
});

describe("the grid of a chart", () => {
  it.each(columnCounts)(
    "of %i columns is even, and lies on its sheet with its marks and words",
    (columns) => {
      const grid = gridOf(columns);
      // The same bare share across and down: a photo of the chart is read by one figure for both.
      expect(1 - grid.cell.width / grid.step.x).toBeCloseTo(0.4, 10);
      expect(1 - grid.cell.height / grid.step.y).toBeCloseTo(0.4, 10);
      const [[left, top], , [right, bottom]] = cornersOf(grid) as [
        [number, number],
        unknown,
        [number, number],
      ];
      expect([left, top]).toEqual(Object.values(cellAt(grid, 0, 0)));
      expect(left).toBeGreaterThanOrEqual(4); // the mark is 3 mm long and begins 1 mm off
      expect(right).toBeLessThanOrEqual(sheet.width - 10); // and the ruler stands 5 mm in
      expect(bottom + 10).toBeLessThanOrEqual(sheet.height - 6); // three lines of words, then the ruler
      expect(grid.rows).toBe(8);
    },
  );
  it("fits what A4 and Letter print between the margins of print.css", () => {
    // Source: ISO 216 (A4, 210 × 297 mm) and ANSI Y14.1 (Letter, 215.9 × 279.4 mm).
    expect(sheet.width).toBeLessThanOrEqual(Math.min(210, 215.9) - 2 * 16);
    expect(sheet.height).toBeLessThanOrEqual(Math.min(297, 279.4) - 14 - 17);
  });
});

describe("the cells of a chart", () => {
  const coloured = stash.filter(leavesColour);
  it("are one for each thing that leaves a colour, sheet by sheet", () => {
    const grid = gridOf(4);
    const sheets = chartSheets(coloured, "name", grid);
    expect(sheets.flat()).toHaveLength(coloured.length);
    expect(sheets.slice(0, -1).every((labels) => labels.length === 32)).toBe(true);
    expect(new Set(stash.filter((item) => !leavesColour(item)).map(({ supply }) => supply.family))).toEqual(
      new Set(["brush", "eraser", "paper", "tool"]),
    );
  });
  it("say name, number and place, in three lines at the most", () => {
    const item = paint(
      "x",
      { name: "Gouache, a very long name that goes on and on and on", code: "12" },
      { place: "tin" },
    );
    const [[label]] = chartSheets([item], "name", gridOf(6)) as [[readonly string[]]];
    expect(label).toHaveLength(3);
    expect(label.at(-1)).toBe("no. 12, tin");
    expect(label[1]).toMatch(/…$/);
  });
  it("go by hue from red around, then greys from light to dark, then what has no colour", () => {
    const of = (hex: string | null) => paint(String(hex), hex === null ? {} : { colour: { hex } });
    const order = inChartOrder(
      ["#333333", null, "#2040c0", "#eeeeee", "#20a040", "#c02020", "#d0c020"].map(of),
      "hue",
    );
    const ids = order.map(({ id }) => id);
    expect(ids.slice(4)).toEqual(["#eeeeee", "#333333", "null"]);
    const hues = ids.slice(0, 4).map((hex) => lchOf(labFromHex(hex)).h);
    expect(hues).toEqual(hues.toSorted((a, b) => a - b));
  });
  it("go by code within a line, lines within a maker", () => {
    const things = [
      paint("d", { maker: "Kvist", line: "Ylva", code: "10" }),
      paint("c", { maker: "Kvist", line: "Ylva", code: "9" }),
      paint("b", { maker: "Kvist", line: "Bäck", code: "90" }),
      paint("e", {}),
      paint("a", { maker: "Fjällbrand", code: "99" }),
    ];
    expect(inChartOrder(things, "code").map(({ id }) => id)).toEqual(["a", "b", "c", "d", "e"]);
  });
});

describe("words below a cell", () => {
  it("break between words, and lose none that there is room for", () => {
    expect(brokenInto("Gouache, moss", 20, 2)).toEqual(["Gouache, moss"]);
    expect(brokenInto("Gouache, moss green of the old kind", 12, 3)).toEqual([
      "Gouache, moss green of",
      "the old kind",
    ]);
    expect(brokenInto("  ", 12, 2)).toEqual([]);
  });
  it("never run into the next cell, whatever they are", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "grapheme", maxLength: 80 }),
        fc.integer({ min: 3, max: 30 }),
        (text, room) => {
          const lines = brokenInto(text, room, 2);
          expect(lines.length).toBeLessThanOrEqual(2);
          for (const line of lines) expect(textWidth(line)).toBeLessThanOrEqual(room);
          const said = lines.join(" ").replace(/…$/, "");
          expect(text.replace(/\s+/g, " ").trim().startsWith(said)).toBe(true);
        },
      ),
    );
  });
});
