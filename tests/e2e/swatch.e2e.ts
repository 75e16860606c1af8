import { expect, type Page, test } from "@playwright/test";
import { type Supply, SupplySchema } from "../../src/engine/supply/index.ts";
import { drawSwatch } from "../../src/ui/swatch/draw.ts";
import { drawPair } from "../../src/ui/swatch/pair.ts";
import {
  darkSurfaces,
  lightSurfaces,
  pairSvg,
  printSurfaces,
  type Surfaces,
  swatchSvg,
} from "../../src/ui/swatch/serialize.ts";
import { medianDifference, type Region, tonesIn, worstDifference } from "./swatch-pixels.ts";

/** Pale, light, dark, black, saturated and muted: see-through fills fail at one of them. */
const colours = [
  "#fbfaf4",
  "#f4dc46",
  "#9ec9d6",
  "#26324a",
  "#141416",
  "#d81e2c",
  "#0a47c4",
  "#0f8a4c",
  "#6b7d3a",
];

/** Lines on paper can only close up so far; everything else must be the colour itself. */
const hatched = 3;
const solid = 2;

const hands = [
  {
    hand: "marker, dye, brush",
    limit: solid,
    family: "marker",
    traits: { base: "water-dye", tips: ["brush"] },
  },
  {
    hand: "marker, alcohol, chisel",
    limit: solid,
    family: "marker",
    traits: { base: "alcohol", tips: ["chisel"] },
  },
  {
    hand: "marker, acrylic, bullet",
    limit: solid,
    family: "marker",
    traits: { base: "acrylic", tips: ["bullet"] },
  },
  { hand: "marker, nothing known", limit: solid, family: "marker", traits: {} },
  { hand: "gouache", limit: solid, family: "paint", traits: { medium: "gouache", opacity: "opaque" } },
  {
    hand: "acrylic, semi-opaque",
    limit: solid,
    family: "paint",
    traits: { medium: "acrylic", opacity: "semi" },
  },
  {
    hand: "oil, transparent",
    limit: solid,
    family: "paint",
    traits: { medium: "oil", opacity: "transparent" },
  },
  {
    hand: "watercolour",
    limit: solid,
    family: "paint",
    traits: { medium: "watercolour", pigments: ["PB29"] },
  },
  { hand: "ink", limit: solid, family: "ink", traits: { base: "dye" } },
  { hand: "soft pastel", limit: solid, family: "pastel", traits: { kind: "soft" } },
  { hand: "hard pastel", limit: solid, family: "pastel", traits: { kind: "hard" } },
  { hand: "oil pastel", limit: solid, family: "pastel", traits: { kind: "oil" } },
  { hand: "pan pastel", limit: solid, family: "pastel", traits: { kind: "pan" } },
  {
    hand: "toned pad",
    limit: solid,
    family: "paper",
    traits: { size: "A5", bound: "pad", sheets: 40, surface: "rough" },
  },
  { hand: "plastic eraser", limit: solid, family: "eraser", traits: { kind: "plastic" } },
  { hand: "kneaded eraser", limit: solid, family: "eraser", traits: { kind: "kneaded" } },
  { hand: "rubber", limit: solid, family: "eraser", traits: { kind: "rubber" } },
  { hand: "ruler", limit: solid, family: "tool", traits: { kind: "ruler" } },
  { hand: "tag", limit: solid, family: "other", traits: {} },
  { hand: "wax pencil", limit: hatched, family: "colour-pencil", traits: { binder: "wax" } },
  { hand: "oil pencil", limit: hatched, family: "colour-pencil", traits: { binder: "oil" } },
  { hand: "soluble pencil", limit: hatched, family: "colour-pencil", traits: { binder: "soluble" } },
  { hand: "pastel pencil", limit: hatched, family: "colour-pencil", traits: { binder: "pastel" } },
  { hand: "graphite 4H", limit: hatched, family: "graphite", traits: { grade: "4H" } },
  { hand: "graphite 8B", limit: hatched, family: "graphite", traits: { grade: "8B" } },
  { hand: "charcoal", limit: hatched, family: "graphite", traits: { core: "charcoal" } },
  { hand: "liner 0.05", limit: hatched, family: "liner", traits: { widthMm: 0.05 } },
  { hand: "liner 0.8", limit: hatched, family: "liner", traits: { widthMm: 0.8 } },
] as const;

type Hand = Readonly<{ family: string; traits: object }>;

const sizes = [
  { width: 64, height: 64 },
  { width: 120, height: 90 },
  { width: 120, height: 120 },
  { width: 240, height: 180 },
  { width: 336, height: 96 },
] as const;

const themes: readonly Readonly<{ theme: string; surfaces: Surfaces }>[] = [
  { theme: "light", surfaces: lightSurfaces },
  { theme: "dark", surfaces: darkSurfaces },
  { theme: "print", surfaces: printSurfaces },
];

/** The families whose swatch has the item's colour in its middle are measured over this share of each side. */
const middle = 0.4;

const named = ({ family, traits }: Hand, hex: string): Supply =>
  SupplySchema.parse({ family, name: "measured", traits, colour: { hex } });

/** Lays drawings out in rows of so many, with no room between them. */
async function show(page: Page, drawings: readonly string[], width: number, columns = 1) {
  const body = drawings.join("").replaceAll("<svg xmlns", '<svg style="display:block" xmlns');
  await page.setViewportSize({ width: columns * width, height: 600 });
  await page.setContent(
    `<!doctype html><body style="margin:0;display:grid;align-content:start;grid-template-columns:repeat(${columns},${width}px)">${body}</body>`,
  );
}

const cases = hands.flatMap((row) =>
  colours.map((hex) => ({ hand: row.hand, limit: row.limit, hex, supply: named(row, hex) })),
);

for (const { theme, surfaces } of themes)
  for (const { width, height } of sizes)
    test(`the middle of a swatch is the item's colour: ${theme}, ${width} × ${height}`, async ({ page }) => {
      await page.emulateMedia({ media: theme === "print" ? "print" : "screen" });
      const drawings = cases.map(({ supply, hand, hex }) =>
        swatchSvg(drawSwatch(supply, { width, height, seed: `${hand} in ${hex}` }), surfaces),
      );
      await show(page, drawings, width, colours.length);
      const [w, h] = [Math.round(middle * width), Math.round(middle * height)];
      const regions = cases.map((_, i): Region => {
        const [column, row] = [i % colours.length, Math.floor(i / colours.length)];
        return {
          x: column * width + Math.round((width - w) / 2),
          y: row * height + Math.round((height - h) / 2),
          w,
          h,
        };
      });
      const wrong = (await tonesIn(page, regions)).flatMap((tones, i) => {
        const { hand, limit, hex } = cases[i] ?? { hand: "no such case", limit: 0, hex: "#000000" };
        const miss = medianDifference(tones, hex);
        return miss <= limit ? [] : [`${hand} ${hex}: ${miss.toFixed(2)} apart, at most ${limit}`];
      });
      expect(wrong).toEqual([]);
    });

const paired = hands.filter(({ family }) =>
  ["marker", "paint", "pastel", "colour-pencil", "graphite"].includes(family),
);

test("each half of a pair is its item's colour beside the seam", async ({ page }) => {
  const [width, height] = [336, 96];
  const [left, right] = ["#5c3f2e", "#7a9a44"];
  await show(
    page,
    paired.map((row) =>
      pairSvg(
        drawPair(
          { id: row.hand, supply: named(row, left) },
          { id: "own", supply: named(row, right) },
          { width, height },
        ),
      ),
    ),
    width,
  );
  const beside = (from: number) =>
    paired.map((_, i): Region => ({ x: from, y: i * height + 29, w: 40, h: 38 }));
  const [lefts, rights] = [await tonesIn(page, beside(168 - 40)), await tonesIn(page, beside(168))];
  const wrong = paired.flatMap(({ hand, limit }, i) => [
    ...(medianDifference(lefts[i] ?? {}, left) <= limit ? [] : [`${hand}, left`]),
    ...(medianDifference(rights[i] ?? {}, right) <= limit ? [] : [`${hand}, right`]),
  ]);
  expect(wrong).toEqual([]);
});

test.describe("at a scale that puts the seam between two pixels", () => {
  test.use({ deviceScaleFactor: 1.3 });

  test("no pale hairline opens at the seam", async ({ page }) => {
    const supply = named({ family: "marker", traits: { base: "acrylic", tips: ["bullet"] } }, "#26324a");
    await show(
      page,
      [pairSvg(drawPair({ id: "kit", supply }, { id: "own", supply }, { width: 336, height: 96 }))],
      336,
    );
    // The seam lies at 168 × 1.3 = 218.4 px. Only the first coat is looked at, above the overlap.
    const [tones = {}] = await tonesIn(page, [{ x: 214, y: 26, w: 10, h: 18 }]);
    expect(worstDifference(tones, "#26324a")).toBeLessThan(4);
  });
});

test("a gap's half is bare page, and any number of pairs on a page cut rightly", async ({ page }) => {
  const supply = named({ family: "paint", traits: { medium: "gouache" } }, "#b23a2e");
  const gap = pairSvg(drawPair({ id: "kit", supply }, null, { width: 336, height: 96 }));
  await show(page, [gap, gap], 336);
  const halves = [0, 96].flatMap((y): Region[] => [
    { x: 60, y: y + 30, w: 100, h: 30 },
    { x: 172, y: y + 10, w: 150, h: 76 },
  ]);
  const [first, bare, second, bareToo] = await tonesIn(page, halves);
  expect(medianDifference(first ?? {}, "#b23a2e")).toBeLessThan(1);
  expect(second).toEqual(first);
  expect(bare).toEqual({ "#ffffff": 150 * 76 });
  expect(bareToo).toEqual(bare);
});
