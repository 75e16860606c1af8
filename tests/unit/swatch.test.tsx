import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { families, type Supply, SupplySchema, traitsByFamily } from "../../src/engine/supply/index.ts";
import {
  drawPair,
  drawSwatch,
  lightSurfaces,
  Pair,
  pairSvg,
  Swatch,
  swatchSvg,
} from "../../src/ui/swatch/index.ts";

const coloured = ["marker", "liner", "colour-pencil", "paint", "ink", "pastel"] as const;

const supplyOf = (family: string, hex: string | null, traits: object = {}): Supply =>
  SupplySchema.parse({ family, name: "a supply", traits, colour: hex ? { hex } : null });

const paint = (hex: string) => supplyOf("paint", hex, { medium: "gouache" });
const svgOf = (supply: Supply, width: number, height: number, seed = "st-001") =>
  swatchSvg(drawSwatch(supply, { width, height, seed }));

/** Every word that one of these traits may have, one supply to a word. */
const everyWord: readonly Supply[] = [
  ...["alcohol", "water-dye", "water-pigment", "acrylic", "oil", "chalk"].flatMap((base) =>
    ["brush", "chisel", "bullet", "fine"].map((tip) => supplyOf("marker", "#41808a", { base, tips: [tip] })),
  ),
  ...["0.05", "0.3", "1", "5"].map((width) => supplyOf("liner", "#1b1b1f", { widthMm: Number(width) })),
  ...["graphite", "charcoal", "carbon", "soluble"].flatMap((core) =>
    ["10H", "HB", "10B"].map((grade) => supplyOf("graphite", null, { core, grade })),
  ),
  ...["wax", "oil", "soluble", "pastel"].map((binder) => supplyOf("colour-pencil", "#a8503c", { binder })),
  ...["watercolour", "gouache", "acrylic", "oil", "casein", "tempera", "ink"].flatMap((medium) =>
    ["opaque", "semi", "transparent"].map((opacity) => supplyOf("paint", "#c68a2b", { medium, opacity })),
  ),
  ...["soft", "hard", "oil", "pan"].map((kind) => supplyOf("pastel", "#8069ad", { kind })),
  ...["round", "flat", "filbert", "mop", "liner", "fan", "angle", "wash"].flatMap((shape) =>
    [0.5, 6, 60].map((widthMm) => supplyOf("brush", null, { shape, widthMm })),
  ),
  ...["kneaded", "plastic", "rubber", "gum", "powered", "pencil"].map((kind) =>
    supplyOf("eraser", null, { kind }),
  ),
  ...["pad", "book", "block", "loose"].flatMap((bound) =>
    ["smooth", "medium", "rough"].map((surface) =>
      supplyOf("paper", null, { bound, surface, size: "A3", gsm: 300, sheets: 40 }),
    ),
  ),
  supplyOf("paper", null, { size: [10, 4000], gsm: 5, use: "canvas" }),
  ...["sharpener", "ruler", "knife", "palette", "tape", "stencil", "blender", "clip", "other"].map((kind) =>
    supplyOf("tool", null, { kind }),
  ),
  ...families.flatMap((family) => [
    supplyOf(family, null),
    supplyOf(family, "#fbfbf8"),
    supplyOf(family, "#000000"),
  ]),
];

const sizes = [[24, 24], [44, 30], [64, 64], [336, 96], [240, 180], [1920, 500]] as const; // biome-ignore format: one row

describe("a swatch as data", () => {
  it("has a hand for every family there is", () => {
    expect(Object.keys(traitsByFamily)).toHaveLength(12);
    for (const family of families) expect(svgOf(supplyOf(family, "#41808a"), 64, 64)).toMatch(/<path.*<path/);
  });

  it.each(sizes)("is clean paths at %i × %i, whatever the traits say", (width, height) => {
    for (const supply of everyWord) {
      const { marks } = drawSwatch(supply, { width, height, seed: "st-001" });
      for (const mark of marks) {
        expect(mark.d).toMatch(/^(?:M[MlqhvazZ\d .-]*)?$/);
        for (const paint of [mark.fill, mark.stroke])
          if (paint !== undefined) expect(paint).toMatch(/^(?:#[0-9a-f]{6}|chip|board|edge|rule|seam)$/);
        if (mark.stroke) expect(mark.strokeWidth).toBeGreaterThan(0);
      }
    }
  });

  it("is the same for the same item, and another for another", () => {
    expect(svgOf(paint("#6b7d3a"), 336, 96, "st-001")).toBe(svgOf(paint("#6b7d3a"), 336, 96, "st-001"));
    expect(svgOf(paint("#6b7d3a"), 336, 96, "st-001")).not.toBe(svgOf(paint("#6b7d3a"), 336, 96, "st-002"));
  });

  it("draws more the larger it is: gesture, sketch, full", () => {
    const counts = [
      [24, 24],
      [64, 64],
      [240, 180],
    ].map(
      ([width = 0, height = 0]) => drawSwatch(paint("#6b7d3a"), { width, height, seed: "a" }).marks.length,
    );
    expect(counts[0]).toBeLessThan(counts[1] ?? 0);
    const [sketch, full] = [svgOf(paint("#6b7d3a"), 64, 64), svgOf(paint("#6b7d3a"), 240, 180)];
    expect(full.length).toBeGreaterThan(sketch.length);
  });

  it("says by its shape that a colour is not known", () => {
    for (const family of coloured) {
      const dashed = drawSwatch(supplyOf(family, null), { width: 120, height: 90, seed: "a" }).marks;
      expect(dashed.some((mark) => mark.dash)).toBe(true);
      const known = drawSwatch(supplyOf(family, "#41808a"), { width: 120, height: 90, seed: "a" }).marks;
      expect(known.some((mark) => mark.dash)).toBe(false);
    }
  });

  it("lays what is as pale as paper on a board", () => {
    const groundOf = (supply: Supply) =>
      drawSwatch(supply, { width: 64, height: 64, seed: "a" }).marks[0]?.fill;
    expect(groundOf(paint("#fbfbf8"))).toBe("board");
    expect(groundOf(supplyOf("paper", null))).toBe("board");
    expect(groundOf(paint("#f4dc46"))).toBe("chip");
  });

  // Common practice, no source: 96 px to the inch of 25.4 mm, so a 0.5 mm line is 1.89 px wide.
  it("shows a liner in its true width, and magnified where asked", () => {
    const widthAt = (scale?: number) =>
      drawSwatch(supplyOf("liner", "#1b1b1f", { widthMm: 0.5 }), {
        width: 240,
        height: 180,
        scale,
        seed: "a",
      }).marks.find((mark) => mark.stroke?.startsWith("#"))?.strokeWidth;
    expect(widthAt()).toBe(1.89);
    expect(widthAt(4)).toBe(7.56);
  });

  it("gives a brush's handle the item's colour", () => {
    const { marks } = drawSwatch(supplyOf("brush", "#b0203a"), { width: 240, height: 180, seed: "a" });
    expect(marks.some((mark) => mark.fill === "#b0203a")).toBe(true);
  });

  // Sizes: the look's measured ones, in thousands of characters; pastel has specks, so it may be larger.
  it.each([
    { width: 24, height: 24, most: 5, pastel: 5 },
    { width: 64, height: 64, most: 12, pastel: 24 },
    { width: 240, height: 180, most: 33, pastel: 82 },
  ])("stays small at $width × $height", ({ width, height, most, pastel }) => {
    for (const supply of everyWord) {
      const limit = supply.family === "pastel" ? pastel : most;
      expect(
        svgOf(supply, width, height).length,
        `${supply.family} ${JSON.stringify(supply.traits)}`,
      ).toBeLessThan(1000 * limit);
    }
  });
});

describe("a pair", () => {
  const size = { width: 336, height: 96 };
  const kit = { id: "kit-1/l1", supply: paint("#6b7d3a") };

  it("of one family is one stroke that changes colour", () => {
    const pair = drawPair(kit, { id: "st-9", supply: paint("#5f7034") }, size);
    expect(pair.left.map((mark) => mark.d)).toEqual(pair.right.map((mark) => mark.d));
    expect(pair.left[0]?.fill).toBe("#6b7d3a");
    expect(pair.right[0]?.fill).toBe("#5f7034");
  });

  it("of two families lets each keep its own hand", () => {
    const marker = supplyOf("marker", "#a5463a");
    const pair = drawPair(kit, { id: "st-9", supply: marker }, size);
    const alone = drawSwatch(marker, { ...size, seed: "st-9" }).marks.map((mark) => mark.d);
    expect(alone).toEqual(expect.arrayContaining(pair.right.map((mark) => mark.d)));
  });

  it("without a stand-in leaves the right half bare and dashed", () => {
    const pair = drawPair(kit, null, size);
    expect(pair.right).toEqual([]);
    expect(pair.over.filter((mark) => mark.dash)).toHaveLength(1);
    expect(pair.ground[0]?.d).toBe("M0 0h168v96h-168z");
  });

  it("of two sheets shares one scale and dashes the kit's outline where they differ", () => {
    const sheet = (sizeName: string) => supplyOf("paper", null, { size: sizeName, bound: "loose" });
    const cut = (a: string, b: string) =>
      drawPair({ id: "k", supply: sheet(a) }, { id: "s", supply: sheet(b) }, size).right.filter(
        (mark) => mark.dash,
      );
    expect(cut("A4", "A3")).toHaveLength(1);
    expect(cut("A4", "A4")).toHaveLength(0);
    // ISO 216: the long side of A4 is the short side of A3, 297 mm, so on one scale the widths stand as 297 to 420.
    const widthOf = (d: string | undefined) => Number(/h(\d+(?:\.\d)?)/.exec(d ?? "")?.[1]);
    const pair = drawPair({ id: "k", supply: sheet("A4") }, { id: "s", supply: sheet("A3") }, size);
    const [small, large] = [pair.left, pair.right].map((marks) =>
      widthOf(marks.find((mark) => mark.d.includes("h"))?.d),
    );
    expect((small ?? 0) / (large ?? 1)).toBeCloseTo(297 / 420, 2);
  });

  it("cuts at a whole pixel and lets the left half reach under the right by one", () => {
    const svg = pairSvg(drawPair(kit, { id: "st-9", supply: paint("#5f7034") }, { width: 335, height: 96 }));
    expect(svg).toContain('<svg x="0" width="169" height="96" viewBox="0 0 169 96" overflow="hidden">');
    expect(svg).toContain('<svg x="168" width="167" height="96" viewBox="168 0 167 96" overflow="hidden">');
  });
});

describe("swatches as text and on screen", () => {
  const pair = <Pair kit={{ id: "k", supply: paint("#6b7d3a") }} standIn={null} width={336} height={96} />;
  const swatch = <Swatch item={{ id: "a", supply: supplyOf("ink", "#274b43") }} width={64} height={64} />;

  it.each([
    ["swatch text", svgOf(supplyOf("ink", "#274b43"), 64, 64)],
    ["swatch on screen", renderToStaticMarkup(swatch)],
    ["pair on screen", renderToStaticMarkup(pair)],
  ])("%s has no ids, styles, filters or pictures", (_, text) => {
    expect(text).not.toMatch(/\b(?:id|style|filter|opacity|mask|clip-path)=|<image|<style|NaN|undefined/);
  });

  it("are hidden from screen readers, as words stand beside them", () => {
    expect(renderToStaticMarkup(swatch)).toMatch(/^<svg[^>]* aria-hidden="true"/);
    expect(renderToStaticMarkup(pair)).toMatch(/^<svg[^>]* aria-hidden="true"/);
  });

  it("take the ground's tone from the theme on screen and as a plain colour in a file", () => {
    expect(renderToStaticMarkup(swatch)).toContain('fill="var(--chip)"');
    expect(svgOf(supplyOf("ink", "#274b43"), 64, 64)).toContain('fill="#fcfcf9"');
  });

  it("escape what a file must not hold raw", () => {
    const drawing = { width: 1, height: 1, marks: [{ d: "M0 0h1", fill: "chip" as const }] };
    expect(swatchSvg(drawing, { ...lightSurfaces, chip: '"><&' })).toContain('fill="&quot;&gt;&lt;&amp;"');
  });
});
