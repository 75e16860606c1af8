import { type Family, grades } from "../supply/index.ts";

// The one table likeness rests on; docs/likeness.md is printed from it. Weights, credits and factors are
// our own judgement from common practice: no outside source. The scales name theirs.

/** The work a supply does. */
export type Role = "lay colour" | "draw line" | "sketch" | "erase" | "carry" | "brush" | "tool" | "other";

export const roles: Readonly<Record<Family, Role>> = {
  marker: "lay colour",
  liner: "draw line",
  graphite: "sketch",
  "colour-pencil": "lay colour",
  paint: "lay colour",
  ink: "lay colour",
  pastel: "lay colour",
  brush: "brush",
  eraser: "erase",
  paper: "carry",
  tool: "tool",
  other: "other",
};

/** One family standing in for another. `needs`: the factor holds only when the stand-in is known to have it. */
export type Crossing = Readonly<{
  kit: Family;
  stash: Family;
  factor: number;
  needs?: Readonly<{ trait: "tip" | "tips"; any: readonly string[] }>;
}>;

const eitherWay = (kit: Family, stash: Family, factor: number): readonly Crossing[] => [
  { kit, stash, factor },
  { kit: stash, stash: kit, factor },
];

/** Between families that are not named here, likeness is 0. */
export const crossings: readonly Crossing[] = [
  ...eitherWay("marker", "ink", 0.65),
  ...eitherWay("marker", "paint", 0.6),
  ...eitherWay("marker", "colour-pencil", 0.6),
  ...eitherWay("marker", "pastel", 0.5),
  ...eitherWay("colour-pencil", "pastel", 0.7),
  ...eitherWay("colour-pencil", "paint", 0.6),
  ...eitherWay("colour-pencil", "ink", 0.5),
  ...eitherWay("paint", "ink", 0.75),
  ...eitherWay("paint", "pastel", 0.55),
  ...eitherWay("ink", "pastel", 0.45),
  // From one role into another, where practice crosses:
  { kit: "liner", stash: "marker", factor: 0.5, needs: { trait: "tips", any: ["fine", "brush"] } },
  { kit: "marker", stash: "liner", factor: 0.5, needs: { trait: "tip", any: ["brush"] } },
  ...eitherWay("liner", "ink", 0.45),
  ...eitherWay("graphite", "colour-pencil", 0.45),
];

export type TraitName =
  | "colour"
  | "base"
  | "tips"
  | "refillable"
  | "tip"
  | "widthMm"
  | "waterproof"
  | "core"
  | "grade"
  | "form"
  | "binder"
  | "medium"
  | "ml"
  | "pigments"
  | "opacity"
  | "kind"
  | "shape"
  | "hair"
  | "waterReservoir"
  | "use"
  | "size"
  | "gsm"
  | "surface"
  | "coated"
  | "acidFree"
  | "bound"
  | "lightfast";

/** Built-in weights by the family of the kit item, heaviest first. A trait not named does not count. */
export const builtInWeights: Readonly<Record<Family, Readonly<Partial<Record<TraitName, number>>>>> = {
  marker: { colour: 6, base: 4, tips: 2, refillable: 0.5, lightfast: 0.5 },
  liner: { colour: 4, tip: 3, widthMm: 3, base: 2, waterproof: 2, lightfast: 0.5 },
  graphite: { colour: 5, grade: 4, core: 3, form: 2, lightfast: 0.5 },
  "colour-pencil": { colour: 6, binder: 3, lightfast: 1 },
  paint: { colour: 6, medium: 4, opacity: 1.5, form: 1, pigments: 1, lightfast: 1, ml: 0.5 },
  ink: { colour: 6, base: 3, waterproof: 2, lightfast: 1, ml: 0.5 },
  pastel: { colour: 6, kind: 3, lightfast: 1 },
  brush: { shape: 4, widthMm: 3, hair: 2, waterReservoir: 2 },
  eraser: { kind: 1 },
  paper: {
    colour: 5,
    use: 4,
    size: 3,
    gsm: 3,
    surface: 2,
    coated: 1,
    acidFree: 0.5,
    bound: 0.5,
    lightfast: 0.5,
  },
  tool: { kind: 1 },
  other: {},
};

/** Two words of one trait and how far one does for the other, either way round. */
export type Credit = readonly [string, string, number];

/** How one trait is compared. */
export type Measure = Readonly<
  | { as: "colour" }
  | { as: "nominal"; credits: readonly Credit[] }
  | { as: "set" }
  | { as: "ordered"; scale: readonly string[] }
  | { as: "lightfast" }
  /** `zeroAt`: the ratio of two sizes at which likeness has gone. */
  | { as: "ratio"; zeroAt: number }
  | { as: "sheet" }
>;

const yesNo: Measure = { as: "nominal", credits: [] };

export const measures: Readonly<Record<TraitName, Measure>> = {
  colour: { as: "colour" },
  base: {
    as: "nominal",
    credits: [
      ["water-dye", "dye", 0.9],
      ["water-pigment", "pigment", 0.9],
      ["pigment", "acrylic", 0.7],
      ["water-pigment", "acrylic", 0.6],
      ["water-dye", "water-pigment", 0.6],
      ["pigment", "shellac", 0.6],
      ["shellac", "acrylic", 0.6],
      ["dye", "gel", 0.6],
      ["dye", "pigment", 0.5],
      ["pigment", "gel", 0.5],
      ["gel", "ballpoint", 0.4],
      ["acrylic", "oil", 0.4],
      ["chalk", "acrylic", 0.4],
      ["chalk", "water-pigment", 0.4],
      ["dye", "alcohol", 0.4],
      ["water-dye", "alcohol", 0.3],
      ["pigment", "alcohol", 0.3],
      ["dye", "ballpoint", 0.3],
      ["dye", "shellac", 0.3],
      ["oil", "alcohol", 0.2],
    ],
  },
  tips: { as: "set" },
  refillable: yesNo,
  tip: {
    as: "nominal",
    credits: [
      ["fibre", "roller", 0.5],
      ["roller", "nib", 0.4],
      ["brush", "nib", 0.4],
      ["fibre", "nib", 0.3],
      ["fibre", "brush", 0.3],
    ],
  },
  // Line widths go by steps of √2 (ISO 128-20): four steps apart nothing is left.
  widthMm: { as: "ratio", zeroAt: 4 },
  waterproof: yesNo,
  core: {
    as: "nominal",
    credits: [
      ["charcoal", "carbon", 0.7],
      ["graphite", "carbon", 0.6],
      ["graphite", "soluble", 0.6],
      ["graphite", "charcoal", 0.4],
      ["carbon", "soluble", 0.4],
      ["charcoal", "soluble", 0.3],
    ],
  },
  // The common European trade scale; makers differ, so only the order counts.
  grade: { as: "ordered", scale: grades },
  form: {
    as: "nominal",
    credits: [
      ["pan", "half-pan", 0.95],
      ["pencil", "lead", 0.8],
      ["tube", "pot", 0.8],
      ["tube", "bottle", 0.8],
      ["bottle", "pot", 0.8],
      ["tube", "pan", 0.6],
      ["tube", "half-pan", 0.6],
      ["pan", "stick", 0.5],
      ["half-pan", "stick", 0.5],
      ["pencil", "stick", 0.5],
      ["lead", "stick", 0.5],
    ],
  },
  binder: {
    as: "nominal",
    credits: [
      ["wax", "oil", 0.8],
      ["wax", "soluble", 0.4],
      ["oil", "soluble", 0.4],
      ["wax", "pastel", 0.3],
      ["soluble", "pastel", 0.3],
      ["oil", "pastel", 0.2],
    ],
  },
  medium: {
    as: "nominal",
    credits: [
      ["gouache", "casein", 0.8],
      ["gouache", "tempera", 0.8],
      ["casein", "tempera", 0.8],
      ["watercolour", "ink", 0.6],
      ["watercolour", "gouache", 0.5],
      ["gouache", "acrylic", 0.5],
      ["casein", "acrylic", 0.5],
      ["tempera", "acrylic", 0.4],
      ["acrylic", "ink", 0.4],
      ["watercolour", "tempera", 0.4],
      ["watercolour", "casein", 0.4],
      ["acrylic", "oil", 0.3],
    ],
  },
  ml: { as: "ratio", zeroAt: 10 },
  pigments: { as: "set" },
  opacity: { as: "ordered", scale: ["opaque", "semi", "transparent"] },
  kind: {
    as: "nominal",
    credits: [
      ["soft", "hard", 0.6],
      ["soft", "pan", 0.6],
      ["hard", "pan", 0.5],
      ["soft", "oil", 0.2],
      ["hard", "oil", 0.2],
      ["plastic", "rubber", 0.7],
      ["plastic", "pencil", 0.6],
      ["rubber", "pencil", 0.6],
      ["plastic", "powered", 0.5],
      ["rubber", "gum", 0.5],
      ["powered", "pencil", 0.5],
      ["rubber", "powered", 0.4],
      ["plastic", "gum", 0.4],
      ["kneaded", "gum", 0.4],
      ["sharpener", "knife", 0.4],
      ["tape", "clip", 0.4],
    ],
  },
  shape: {
    as: "nominal",
    credits: [
      ["flat", "wash", 0.8],
      ["flat", "angle", 0.7],
      ["flat", "filbert", 0.6],
      ["mop", "wash", 0.6],
      ["round", "mop", 0.5],
      ["round", "liner", 0.5],
      ["round", "filbert", 0.5],
      ["filbert", "angle", 0.4],
    ],
  },
  hair: {
    as: "nominal",
    credits: [
      ["natural", "mixed", 0.7],
      ["synthetic", "mixed", 0.7],
      ["natural", "synthetic", 0.4],
    ],
  },
  waterReservoir: yesNo,
  use: {
    as: "nominal",
    credits: [
      ["marker", "layout", 0.7],
      ["watercolour", "mixed", 0.7],
      ["cartridge", "mixed", 0.7],
      ["cartridge", "toned", 0.6],
      ["bristol", "cartridge", 0.6],
      ["bristol", "marker", 0.5],
      ["bristol", "mixed", 0.5],
      ["mixed", "toned", 0.5],
      ["layout", "print", 0.5],
      ["layout", "tracing", 0.5],
      ["marker", "print", 0.4],
      ["cartridge", "layout", 0.4],
      ["cartridge", "print", 0.4],
      ["cartridge", "watercolour", 0.4],
      ["bristol", "print", 0.3],
      ["canvas", "mixed", 0.3],
    ],
  },
  size: { as: "sheet" },
  gsm: { as: "ratio", zeroAt: 4 },
  surface: {
    as: "nominal",
    credits: [
      ["smooth", "medium", 0.5],
      ["medium", "rough", 0.5],
    ],
  },
  coated: {
    as: "nominal",
    credits: [
      ["one", "both", 0.8],
      ["none", "one", 0.5],
    ],
  },
  acidFree: yesNo,
  bound: {
    as: "nominal",
    credits: [
      ["pad", "block", 0.8],
      ["pad", "loose", 0.8],
      ["block", "loose", 0.7],
      ["pad", "book", 0.6],
      ["block", "book", 0.5],
      ["book", "loose", 0.4],
    ],
  },
  lightfast: { as: "lightfast" },
};

/**
 * Places of both lightfastness scales on blue wool steps, 1 worst to 8 best. Within one scale that scale's
 * own steps are used; between them ASTM categories lie where they are customarily put, since no standard does.
 */
export const blueWoolOfAstm: Readonly<Record<string, number>> = { I: 7.5, II: 6, III: 4.5, IV: 2.5, V: 1 };

/** Colour likeness halves with each of these steps of ΔE00. */
export const colourHalving = 12;
/** Past this ΔE00 the whole likeness is halved by the same steps. */
export const farColour = 20;
/** Below this likeness nothing stands in: the line is a gap. */
export const gapBelow = 0.4;
export const fairFrom = 0.65;
export const nearFrom = 0.85;
