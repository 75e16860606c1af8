import { converter, differenceCiede2000, parse } from "culori";
import { describe, expect, it } from "vitest";
import { hueGroup } from "../../src/engine/colour/index.ts";
import { overlap } from "../../src/ui/palette/view/boxes.ts";
import { discOf } from "../../src/ui/palette/view/disc.ts";
import { entriesOf, type PlayedLine } from "../../src/ui/palette/view/entries.ts";
import { hueWords } from "../../src/ui/palette/view/hues.ts";
import { placeLabels, type Wish } from "../../src/ui/palette/view/labels.ts";
import { layoutOf } from "../../src/ui/palette/view/layout.ts";
import { type PaletteView, paletteOf } from "../../src/ui/palette/view/palette.ts";
import { measuresFor } from "../../src/ui/palette/view/room.ts";
import { solve, subjectOf } from "../../src/ui/remakes/view/solve.ts";
import { standInsView, type Way } from "../../src/ui/remakes/view/stand-ins.ts";
import { formatter } from "../../src/ui/words/index.ts";
import fc from "../chance.ts";
import { sampleBook } from "./sample.ts";

// Where colours lie and how far they are apart is checked against culori, an independent npm library
// (lch65 and differenceCiede2000); the sentences come from the design and have no outside source.
const lch = converter("lch65");
const apart = differenceCiede2000();
const format = formatter("en-GB");

const played = (number: number, hex: string | null, other?: string | null): PlayedLine => ({
  line: `l${number}`,
  number,
  name: `Paint ${number}`,
  supply: { family: "paint", name: `Paint ${number}`, ...(hex ? { colour: { hex } } : {}) },
  state: other === undefined ? "gap" : "filled",
  standIn:
    other === undefined
      ? null
      : {
          name: `Mine ${number}`,
          item: { supply: { family: "paint", name: "Mine", ...(other ? { colour: { hex: other } } : {}) } },
        },
});

function viewOf(...rows: readonly PlayedLine[]): PaletteView {
  const view = paletteOf(rows, format);
  if (!view) throw new Error("fewer than two colours");
  return view;
}

const ebb = [
  played(1, "#6b7d3a", "#5f7430"),
  played(2, "#93a5b4", "#93a5b4"),
  played(3, "#b3372e", "#a8463d"),
  played(7, "#22201f"),
];

describe("what is in the picture", () => {
  it("leaves lines without a colour out, and itself with fewer than two", () => {
    expect(viewOf(...ebb, played(9, null, "#123456")).entries.map(({ number }) => number)).toEqual([
      1, 2, 3, 7,
    ]);
    expect(paletteOf([], format)).toBeNull();
    expect(paletteOf([played(1, "#6b7d3a", "#5f7430"), played(2, null)], format)).toBeNull();
  });

  it("tells a gap, what is left out, and a stand-in whose colour nobody noted", () => {
    const rows = [
      played(1, "#6b7d3a"),
      { ...played(2, "#b3372e"), state: "left-out" as const },
      played(3, "#22201f", null),
    ];
    const { entries, rows: printed } = viewOf(...rows);
    expect(entries.map(({ alone }) => alone)).toEqual(["gap", "left-out", "unknown"]);
    expect(printed.map(({ how, apart: said, mine }) => [how, said, mine])).toEqual([
      ["nothing close", "", ""],
      ["left out on purpose", "", ""],
      ["its colour is not noted", "", "Mine 3"],
    ]);
  });

  it.each(["nearest", "palette"] as const)(
    "shows the stand-ins chosen by the way looked at: %s",
    (way: Way) => {
      const subject = subjectOf(sampleBook(), "rm-boathouse");
      if (!subject) throw new Error("the sample has it");
      const match = solve(subject);
      const view = paletteOf(standInsView(subject, match, way).rows, format);
      const picks = new Map(match.palette?.picks.map(({ line, stash }) => [line, stash]));
      const expected = match.lines.flatMap(({ line, pick, candidates }) => {
        const stash = way === "palette" ? picks.get(line) : pick?.stash;
        const one = candidates.find((candidate) => candidate.stash === stash);
        return one && one.deltaE00 !== null ? [[line, one.deltaE00.toFixed(3)]] : [];
      });
      const shown = view?.entries.flatMap(({ line, apart: far }) =>
        far === null ? [] : [[line, far.toFixed(3)]],
      );
      expect(shown).toEqual(expected);
      expect(shown?.length).toBeGreaterThan(3);
    },
  );
});

describe("the sentence", () => {
  it("gives the mean difference and the line that drifts most, with how", () => {
    const pairs = [
      ["#6b7d3a", "#5f7430"],
      ["#93a5b4", "#93a5b4"],
      ["#b3372e", "#a8463d"],
    ] as const;
    const misses = pairs.map(([kit, mine]) => apart(kit, mine));
    const mean = misses.reduce((sum, miss) => sum + miss, 0) / misses.length;
    const { finding, more, most, rows } = viewOf(...ebb);
    expect(finding).toMatch(
      new RegExp(`^${mean.toFixed(1).replace(".", "\\.")} apart on average; the red of line 3 drifts most, `),
    );
    expect(finding).toContain("softer");
    expect(more).toBe("Line 7 has no colour beside it.");
    expect(most).toBe("l3");
    expect(rows.map(({ apart: said }) => said)).toEqual([...misses.map((miss) => miss.toFixed(1)), ""]);
  });

  it("says when all are met, look the same, or stand alone", () => {
    expect(viewOf(played(1, "#6b7d3a", "#6b7d3a"), played(2, "#b3372e", "#b3372e")).finding).toBe(
      "Every colour is exactly met.",
    );
    const most = apart("#6b7d3a", "#6b7e3a").toFixed(1);
    const same = viewOf(played(1, "#6b7d3a", "#6b7e3a"), played(2, "#b3372e", "#b3372e"));
    expect(same.finding).toBe(`No colour is more than ${most} apart: even side by side they look the same.`);
    expect(same.most).toBeNull();
    const none = viewOf(played(1, "#6b7d3a"), played(2, "#b3372e"));
    expect([none.finding, none.more]).toEqual(["None of its colours has one beside it yet.", ""]);
  });

  it("speaks of the one pair there is", () => {
    const far = apart("#b3372e", "#a8463d").toFixed(1);
    const { finding, more, most } = viewOf(
      played(3, "#b3372e", "#a8463d"),
      played(5, "#22201f"),
      played(6, "#ffffff"),
    );
    expect(finding).toMatch(new RegExp(`^The red of line 3 is ${far.replace(".", "\\.")} apart, `));
    expect(more).toBe("Lines 5 and 6 have no colour beside them.");
    expect(most).toBeNull();
  });

  it("never prints a minus nought", () => {
    const grey = {
      family: "paint" as const,
      name: "Grey",
      colour: { lab: [50, -0.01, -0.04] as [number, number, number] },
    };
    const { rows } = viewOf(
      { ...played(1, "#808080", "#7f7f7f"), supply: grey },
      played(2, "#ffffff", "#000000"),
    );
    expect(rows[0]?.kitLab).toBe("lightness 50.0, a 0.0, b 0.0");
  });
});

const widths = [1027, 720, 592, 358, 288] as const;

describe("the disc and the ladder", () => {
  const view = viewOf(...ebb);

  it.each(widths)("puts each colour at its own hue and strength, %d px", (width) => {
    const { disc } = layoutOf(view, { width, textScale: 1 });
    const { most, unit } = measuresFor(view.entries, { width, textScale: 1 });
    expect(disc.radius).toBeCloseTo(most * unit, 9);
    for (const { kit, kitHex, standIn, standInHex } of disc.pairs) {
      for (const [place, hex] of [
        [kit, kitHex],
        [standIn, standInHex],
      ] as const) {
        if (!place || !hex) continue;
        const { c, h = 0 } = lch(parse(hex)) ?? { c: Number.NaN };
        expect(place.x).toBeCloseTo(disc.centre.x + c * Math.cos((h * Math.PI) / 180) * unit, 1);
        expect(place.y).toBeCloseTo(disc.centre.y - c * Math.sin((h * Math.PI) / 180) * unit, 1);
      }
    }
  });

  it.each(widths)("lays lightness to the same scale, and no taller than the disc is wide, %d px", (width) => {
    const { disc, ladder } = layoutOf(view, { width, textScale: 1 });
    const [top, bottom] = [ladder.rungs[0]?.y ?? 0, ladder.rungs.at(-1)?.y ?? 0];
    const { unit } = measuresFor(view.entries, { width, textScale: 1 });
    expect(bottom - top).toBeCloseTo(100 * unit, 9);
    expect(bottom - top).toBeLessThanOrEqual(2 * disc.radius + 1e-9);
    for (const { kit, kitHex } of ladder.staves.flatMap(({ columns }) => columns)) {
      expect(kit.y).toBeCloseTo(bottom - (lch(parse(kitHex))?.l ?? Number.NaN) * unit, 1);
    }
  });

  it("keeps to that scale with greys alone", () => {
    const greys = viewOf(played(1, "#808080", "#858585"), played(2, "#404040"));
    const { disc, ladder } = layoutOf(greys, { width: 1027, textScale: 1 });
    expect((ladder.rungs.at(-1)?.y ?? 0) - (ladder.rungs[0]?.y ?? 0)).toBeLessThanOrEqual(
      2 * disc.radius + 1e-9,
    );
  });

  it("names the hues where the engine's own names have them", () => {
    for (const { name, degrees } of hueWords) {
      const turn = (degrees * Math.PI) / 180;
      const lab = { white: "D65", l: 60, a: 35 * Math.cos(turn), b: 35 * Math.sin(turn) } as const;
      expect(hueGroup(lab)).toBe(`${name}s`);
    }
  });

  it("draws a gap alone, and lines with the very same colours as one mark with all their numbers", () => {
    const blacks = [4, 5, 6].map((number) => played(number, "#22201f", "#22201f"));
    const { disc, ladder } = layoutOf(viewOf(...ebb, ...blacks), { width: 1027, textScale: 1 });
    expect(disc.pairs.map(({ numbers }) => numbers)).toEqual([[1], [2], [3], [7], [4, 5, 6]]);
    expect(disc.pairs[3]?.standIn).toBeNull();
    expect(ladder.staves.flatMap(({ columns }) => columns)).toHaveLength(7);
  });

  it("breaks a long ladder into staves that fit", () => {
    const many = Array.from({ length: 40 }, (_, index) => played(index + 1, "#6b7d3a", "#5f7430"));
    for (const width of widths) {
      const { ladder } = layoutOf(viewOf(...many), { width, textScale: 1 });
      expect(ladder.width).toBeLessThanOrEqual(width + 1e-9);
      const xs = ladder.staves.map(({ columns }) => columns.map(({ kit }) => kit.x));
      expect(xs.flat()).toHaveLength(40);
      for (const row of xs) {
        for (const [index, x] of row.entries())
          if (index > 0) expect(x - (row[index - 1] ?? x)).toBeGreaterThanOrEqual(24);
      }
    }
  });
});

const hexes = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, "0")}`);

describe("the numbers", () => {
  it("stay apart and inside, whatever the colours", () => {
    const palettes = fc.array(fc.tuple(hexes, fc.option(hexes)), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(palettes, fc.constantFrom(1027, 592, 358), (pairs, width) => {
        const rows = pairs.map(([hex, other], index) => played(index + 1, hex, other ?? undefined));
        const { disc } = layoutOf(viewOf(...rows), { width, textScale: 1 });
        expect(disc.width).toBeLessThanOrEqual(width + 1e-9);
        for (const [index, { label, numbers }] of disc.pairs.entries()) {
          const half = numbers.join(", ").length * 4.2; // a figure is 8.4 px wide at this size
          expect(label.x - half).toBeGreaterThanOrEqual(-1);
          expect(label.x + half).toBeLessThanOrEqual(disc.width + 1);
          for (const other of disc.pairs.slice(index + 1)) {
            const otherHalf = other.numbers.join(", ").length * 4.2;
            const clash =
              Math.abs(label.x - other.label.x) < half + otherHalf && Math.abs(label.y - other.label.y) < 11;
            expect(clash).toBe(false);
          }
        }
      }),
      { numRuns: 60, seed: 7 },
    );
  });

  it("keep off every mark where there is room, and lead back to their own where they had to stand off", () => {
    const at = { x: 100, y: 100 };
    const wish = (x: number): Wish => ({
      at: { x, y: 100 },
      away: { x: x - 1, y: 100 },
      halfWidth: 6,
      halfHeight: 8,
    });
    const wishes = [wish(100), wish(104), wish(108)];
    const marks = wishes.map(({ at: place }, owner) => ({ at: place, owner }));
    const around = { frame: { left: 0, top: 0, right: 200, bottom: 200 }, marks, words: [], soft: [] };
    const placed = placeLabels(wishes, 6, around);
    for (const { box } of placed) {
      for (const mark of marks) {
        const { x, y } = mark.at;
        expect(overlap(box, { left: x - 6, top: y - 6, right: x + 6, bottom: y + 6 })).toBeLessThan(1e-6);
      }
    }
    const [single] = placeLabels([wish(100)], 6, { ...around, marks: [{ at, owner: 0 }] });
    expect(single?.stray).toBe(false);
    expect(single?.at.y).toBeCloseTo(100, 9); // on the wished side: straight away from its partner
    expect(single?.at.x).toBeGreaterThan(100);
    expect(placed.some(({ stray }) => stray)).toBe(true);
    const tight = {
      ...around,
      frame: { left: 0, top: 0, right: 108, bottom: 200 },
      marks: [{ at, owner: 0 }],
    };
    expect(placeLabels([wish(100)], 6, tight)[0]?.box.right).toBeLessThanOrEqual(108);
  });

  it("come out the same each time", () => {
    const entries = entriesOf(ebb);
    const measures = measuresFor(entries, { width: 358, textScale: 1 });
    expect(discOf(entries, null, measures, 1)).toEqual(discOf(entries, null, measures, 1));
  });

  it("and all else stays finite at twice the text size on the narrowest page", () => {
    const layout = layoutOf(viewOf(...ebb), { width: 288, textScale: 2 });
    expect(JSON.stringify(layout.disc.words)).not.toContain("null");
    expect(layout.disc.width).toBeLessThanOrEqual(288);
    expect(layout.ladder.width).toBeLessThanOrEqual(288);
    for (const { x, y } of layout.disc.pairs.flatMap(({ kit, label }) => [kit, label])) {
      expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
    }
  });
});
