import { describe, expect, it } from "vitest";
import {
  type ChartPhoto,
  type Corners,
  type Doubt,
  deltaE2000,
  type Lab,
  type Picture,
  readChart,
} from "../../../src/engine/colour/index.ts";
import { photoOf, readingOf } from "./chart-read.ts";
import { type ChartScene, cameraOf, photograph } from "./chart-scene.ts";
import { none } from "./chart-scenes.ts";

const lab = (l: number, a: number, b: number): Lab => ({ white: "D65", l, a, b });
const inks: readonly Lab[] = [
  lab(40, 50, 30),
  lab(70, -30, 40),
  lab(35, 10, -45),
  lab(80, 5, 60),
  lab(50, 0, 0),
  lab(30, -25, 10),
  lab(60, 35, -20),
  lab(75, -20, -15),
  lab(45, 40, -30),
  lab(85, -10, 20),
  lab(25, 5, 5),
  lab(65, 25, 35),
];
const teal = lab(55, -30, -10);

/** Twelve swatches on white paper, seen from above at a slant, in even light. */
const plain: ChartScene = {
  ...{ seed: 7, rows: 3, columns: 4, gap: 0.25, labs: inks, white: lab(96, 0, 0) },
  ...{ width: 480, height: 400, pose: { roll: 0.2, pitch: 0.25, yaw: -0.2 } },
  light: { ratio: 1.3, towards: 0.7, exposure: 0.9, tint: none },
  ...{ glare: [], lines: null, noise: { electrons: 4000, read: 0.002 } },
};

const cellsIn = (scene: ChartScene, said: Partial<ChartPhoto> = {}) =>
  readingOf({ ...photoOf(scene), ...said }).cells;
const withInk = (at: number, ink: Lab): ChartScene => ({
  ...plain,
  labs: plain.labs.map((one, i) => (i === at ? ink : one)),
});
/** Swatch 5 is the second of the second row; its middle lies at (1.375, 1.375). */
const spoilt = 5;
const doubtsAt = (scene: ChartScene, at = spoilt): readonly Doubt[] => cellsIn(scene)[at]?.doubts ?? [];

const expectRead = (scene: ChartScene, cells: ReturnType<typeof cellsIn>, but: readonly number[] = []) =>
  cells.forEach((cell, at) => {
    const truth = scene.labs[at];
    if (but.includes(at) || !truth) return;
    expect({ at, doubts: cell.doubts }).toEqual({ at, doubts: [] });
    expect(cell.lab ? deltaE2000(cell.lab, truth) : Number.NaN).toBeLessThan(2);
  });

describe("a chart as it should be", () => {
  const photo = photoOf(plain);
  const reading = readingOf(photo);
  it("gives every swatch, row by row, with its spread and how far to rely on it", () => {
    expectRead(plain, reading.cells);
    expect(reading.cells.map(({ row, column }) => [row, column])).toEqual(
      inks.map((_, at) => [Math.floor(at / 4), at % 4]),
    );
    for (const { spread, certainty } of reading.cells) {
      expect(spread).toBeLessThan(2);
      expect(certainty).toBeGreaterThan(0.7);
      expect(certainty).toBeLessThanOrEqual(1);
    }
  });
  it("says what the light was", () => {
    expect(reading.light.between).toBe(true);
    expect(reading.light.places).toBe(3 * 5 + 4 * 4);
    expect(reading.light.used).toBe(reading.light.places);
    expect(reading.light.ratio).toBeGreaterThan(1.1);
    expect(reading.light.ratio).toBeLessThan(1.3);
  });
  it("gives the same twice, and leaves the picture as it was", () => {
    const before = photo.picture.data.slice();
    expect(readingOf(photo)).toEqual(reading);
    expect(photo.picture.data).toEqual(before);
  });
  it("goes into a worker and comes back", () => {
    expect(structuredClone(reading)).toEqual(readingOf(structuredClone(photo)));
  });
});

describe("light", () => {
  it.each([
    ["warm", { on: "channels", gains: [1, 0.85, 0.6] }],
    ["cool", { on: "channels", gains: [0.75, 0.9, 1] }],
  ] as const)("%s light is levelled, and its tint told", (name, tint) => {
    const scene: ChartScene = { ...plain, light: { ...plain.light, tint } };
    const { cells, light } = readingOf(photoOf(scene));
    expectRead(scene, cells);
    expect(Math.sign(light.paper.b)).toBe(name === "warm" ? 1 : -1);
  });
  it("dim light changes nothing", () => {
    const scene = { ...plain, light: { ...plain.light, exposure: 0.3 } };
    expectRead(scene, cellsIn(scene));
  });
  it("creamy paper is taken for what the person says it is", () => {
    const scene = { ...plain, white: lab(92, 1, 8) };
    expectRead(scene, cellsIn(scene, { white: lab(92, 1, 8) }));
    const unsaid = cellsIn(scene)[4]?.lab;
    expect(unsaid?.b).toBeLessThan(-4); // a grey swatch, read as if the cream were white
  });
  it("a shadow over whole swatches is levelled by the paper around them", () => {
    // Its edge runs through the gap after the second column.
    const shadow = { x: 1.875, y: 0, angle: 0, soft: 0.05, dims: [0.5, 0.52, 0.55] } as const;
    const scene = { ...plain, shadow };
    expectRead(scene, cellsIn(scene), [1, 2, 5, 6, 9, 10]);
  });
});

describe("paper", () => {
  const gapless: ChartScene = { ...plain, gap: 0 };
  it("need not be seen between the swatches", () => {
    const { cells, light } = readingOf(photoOf(gapless));
    expectRead(gapless, cells);
    expect(light.between).toBe(false);
  });
  it.each([0.1, 0.4, 0.7])("ruled lines that send back %f of it are not taken for it", (lines) => {
    const scene: ChartScene = { ...plain, gap: 0.04, lines };
    const { cells, light } = readingOf(photoOf(scene));
    expectRead(scene, cells);
    expect(light.between).toBe(false);
  });
  it("ruled lines in wide gaps do no harm", () => {
    const scene: ChartScene = { ...plain, lines: 0.1 };
    expectRead(scene, cellsIn(scene));
  });
  it("may be pointed at, when the desk is all that lies around", () => {
    const { toPicture, corners } = cameraOf(gapless);
    const { picture } = photoOf(gapless);
    // Brown desk over everything but two spots of paper outside two corners.
    const spots = [toPicture(-0.3, -0.3), toPicture(4.3, 3.3)];
    const { toChart } = cameraOf(gapless);
    const covered = repainted(picture, (x, y) => {
      const [u, v] = toChart(x, y);
      const isChart = u > 0 && v > 0 && u < 4 && v < 3;
      return isChart || spots.some((spot) => Math.hypot(spot.x - x, spot.y - y) < 14) ? null : [90, 70, 50];
    });
    const photo = { picture: covered, corners, rows: 3, columns: 4, gap: 0 };
    const pointed = readingOf({ ...photo, paper: spots });
    pointed.cells.forEach(({ lab: found }, at) => {
      const truth = inks[at];
      expect(found && truth ? deltaE2000(found, truth) : Number.NaN).toBeLessThan(3);
    });
  });
});

/** The picture with some pixels in another colour. */
function repainted(
  picture: Picture,
  colour: (x: number, y: number) => readonly [number, number, number] | null,
): Picture {
  const data = picture.data.slice();
  for (let at = 0; at < data.length; at += 4) {
    const pixel = at / 4;
    const to = colour((pixel % picture.width) + 0.5, Math.floor(pixel / picture.width) + 0.5);
    if (to) data.set(to, at);
  }
  return { ...picture, data };
}

describe("what spoils a part of a swatch does not count", () => {
  it.each([
    ["a small glare", { ...plain, glare: [{ x: 1.25, y: 1.3, radius: 0.15, adds: 0.6 }] }],
    [
      "paper where the brush skipped",
      { ...plain, seconds: new Map([[spoilt, { lab: plain.white, share: 0.35 }]]) },
    ],
    ["a sliver of the next colour", { ...plain, seconds: new Map([[spoilt, { lab: teal, share: 0.25 }]]) }],
  ] as const)("%s", (_, scene) => expectRead(scene, cellsIn(scene)));
  it("corners marked a little off", () => {
    const [a, b, c, d] = cameraOf(plain).corners;
    const corners: Corners = [
      { x: a.x + 4, y: a.y - 3 },
      { x: b.x - 3, y: b.y - 4 },
      { x: c.x + 4, y: c.y + 4 },
      { x: d.x - 4, y: d.y + 2 },
    ];
    expectRead(plain, cellsIn(plain, { corners }));
  });
  it.each([0.15, 0.35])("a gap taken for %f that is 0.25", (gap) =>
    expectRead(plain, cellsIn(plain, { gap })),
  );
});

describe("a swatch that cannot be told is marked, with the reason, and gets no colour", () => {
  const dim = { ...plain.light, exposure: 0.5 };
  const half = { lab: teal, share: 0.5 };
  const edge = { x: 1.375, y: 0, angle: 0, soft: 0.05, dims: [0.45, 0.46, 0.48] } as const;
  it.each<readonly [Doubt, string, ChartScene]>([
    [
      "glare",
      "glare all over it but for a rim",
      { ...plain, glare: [{ x: 1.4, y: 1.4, radius: 0.33, adds: 0.6 }] },
    ],
    ["glare", "brighter than white", { ...withInk(spoilt, lab(112, 0, 0)), light: dim }],
    ["shadow", "an edge of a shadow through its middle", { ...plain, shadow: edge }],
    ["uneven", "two colours, half and half", { ...plain, seconds: new Map([[spoilt, half]]) }],
    ["clipped", "a colour that sRGB cannot show", withInk(spoilt, lab(50, -70, -40))],
    ["empty", "nothing painted", withInk(spoilt, plain.white)],
  ])("%s: %s", (doubt, _, scene) => {
    const cells = cellsIn(scene);
    expect(cells[spoilt]?.doubts).toContain(doubt);
    expect(cells[spoilt]?.lab).toBe(null);
    // The shadow's edge crosses the whole of the second column.
    expectRead(scene, cells, doubt === "shadow" ? [1, 5, 9] : [spoilt]);
  });
  it("few-pixels: a swatch too far away in a picture seen at a slant", () => {
    const scene: ChartScene = { ...plain, rows: 4, columns: 3, pose: { roll: 0, pitch: 1.1, yaw: 0 } };
    const far = { ...scene, width: 148, height: 148 };
    const cells = cellsIn(far);
    expect(cells.some(({ doubts }) => doubts.includes("few-pixels"))).toBe(true);
    for (const { doubts, lab: found } of cells) expect(found === null).toBe(doubts.length > 0);
  });
  it("only the one: its neighbours have no doubt", () =>
    expect(doubtsAt(withInk(spoilt, plain.white), 6)).toEqual([]));
});

describe("faults name the place, what is wrong and what to do", () => {
  const photo = photoOf(plain);
  const [a, b, c, d] = photo.corners;
  const blank = (byte: number): Picture => ({
    ...photo.picture,
    data: new Uint8ClampedArray(photo.picture.data.length).fill(byte),
  });
  const small = (from: Corners, by: number) =>
    from.map(({ x, y }) => ({ x: 200 + x * by, y: 150 + y * by })) as unknown as Corners; // four in, four out
  it.each<readonly [string, string, Partial<ChartPhoto>]>([
    ["corners", "the corners cross, or lie on one line", { corners: [a, c, b, d] }],
    ["corners", "the corners cross, or lie on one line", { corners: [a, a, c, d] }],
    [
      "corners",
      "the corners cross, or lie on one line",
      { corners: [a, b, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 + 5 }, d] },
    ],
    ["corners", "a corner lies outside the picture", { corners: [{ x: -1, y: 5 }, b, c, d] }],
    ["corners", "a corner lies outside the picture", { corners: [{ x: Number.NaN, y: 5 }, b, c, d] }],
    ["corners", "the swatches are too small in this picture", { corners: small(photo.corners, 0.08) }],
    ["rows", "less than one", { rows: 0 }],
    ["columns", "less than one", { columns: 2.5 }],
    ["rows", "more than 60", { rows: 61 }],
    ["gap", "not between 0 and 0.6", { gap: 0.7 }],
    ["gap", "not between 0 and 0.6", { gap: Number.NaN }],
    ["white", "too dark for white paper", { white: lab(40, 0, 0) }],
    ["paper", "a spot lies outside the picture", { paper: [{ x: 5, y: 4000 }] }],
    ["photo", "the picture is not whole", { picture: { ...photo.picture, width: 481 } }],
    ["photo", "the paper is brighter than the camera could tell", { picture: blank(255) }],
  ])("%s: %s", (place, problem, said) => {
    const read = readChart({ ...photo, ...said });
    expect(read.ok ? "read" : read.fault).toMatchObject({ place, problem });
    expect(!read.ok && read.fault.remedy.length).toBeGreaterThan(10);
  });
  // No outside source: the sentence is our own.
  it("in Swedish where that is spoken", () => {
    expect(readChart({ ...photo, corners: [a, c, b, d] }, "sv")).toEqual({
      ok: false,
      fault: {
        place: "corners",
        problem: "hörnen korsar varandra, eller ligger på en linje",
        remedy: "märk ut dem i ordning runt kartan",
      },
    });
  });
  it("paper: none to be found in a picture of colours only", () => {
    const patches = repainted(photo.picture, (x, y) => {
      const hue = (Math.floor(x / 9) * 7 + Math.floor(y / 9) * 13) % 6;
      return [40 + 35 * hue, 215 - 30 * ((hue * 5) % 6), 60 + 30 * ((hue * 2) % 5)];
    });
    const read = readChart({ ...photo, picture: patches });
    expect(read.ok ? "read" : read.fault.problem).toBe("no bare paper was found around the swatches");
  });
});

it("a photo of a chart with one swatch is read too", () => {
  const scene: ChartScene = { ...plain, rows: 1, columns: 1, labs: [teal] };
  expectRead(scene, cellsIn({ ...scene }));
  expect(photograph(scene).data.length).toBe(4 * 480 * 400);
});
