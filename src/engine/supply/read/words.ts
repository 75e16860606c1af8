import type { Family } from "../traits.ts";

/** A word that names what kind of thing a line speaks of, with the traits that the word alone tells. */
export type Head = Readonly<{
  words: readonly string[];
  family: Family;
  sets?: Readonly<Record<string, string | boolean | readonly string[]>>;
  /** What the name of the supply begins with, where its traits would not say it as well. */
  name?: string;
}>;

/** Tried from the top: the first that stands in the line decides, so compounds come before their parts. */
export const heads: readonly Head[] = [
  { words: ["pencil sharpener", "sharpener"], family: "tool", sets: { kind: "sharpener" } },
  { words: ["ruler", "set square"], family: "tool", sets: { kind: "ruler" } },
  { words: ["craft knife", "scalpel", "cutter", "knife"], family: "tool", sets: { kind: "knife" } },
  { words: ["palette"], family: "tool", sets: { kind: "palette" } },
  { words: ["masking tape", "washi tape", "tape"], family: "tool", sets: { kind: "tape" } },
  { words: ["stencil"], family: "tool", sets: { kind: "stencil" } },
  { words: ["blending stump", "paper stump", "tortillon"], family: "tool", sets: { kind: "blender" } },
  { words: ["bulldog clip", "clip"], family: "tool", sets: { kind: "clip" } },
  { words: ["eraser pencil", "pencil eraser"], family: "eraser", sets: { kind: "pencil" } },
  { words: ["putty rubber"], family: "eraser", sets: { kind: "kneaded" } },
  { words: ["eraser", "rubber"], family: "eraser" },
  {
    words: ["sketchbook", "sketch book", "notebook"],
    family: "paper",
    sets: { bound: "book" },
    name: "Sketchbook",
  },
  { words: ["sketch pad", "sketchpad", "pad"], family: "paper", sets: { bound: "pad" } },
  { words: ["block"], family: "paper", sets: { bound: "block" } },
  { words: ["book"], family: "paper", sets: { bound: "book" } },
  { words: ["postcard", "post card"], family: "paper", name: "Postcards" },
  { words: ["paper", "bristol board", "canvas board"], family: "paper" },
  { words: ["canvas"], family: "paper", sets: { use: "canvas" } },
  { words: ["marker refill", "ink refill", "refill"], family: "ink", name: "Refill" },
  { words: ["brush pen", "brush marker"], family: "marker", sets: { tips: ["brush"] }, name: "Brush pen" },
  { words: ["paint marker", "paint pen"], family: "marker", name: "Paint marker" },
  { words: ["marker", "felt pen", "felt tip", "felt-tip pen"], family: "marker" },
  {
    words: ["watercolour pencil", "watercolor pencil", "aquarelle pencil"],
    family: "colour-pencil",
    sets: { binder: "soluble" },
    name: "Watercolour pencil",
  },
  { words: ["pastel pencil"], family: "colour-pencil", sets: { binder: "pastel" }, name: "Pastel pencil" },
  { words: ["oil pencil"], family: "colour-pencil", sets: { binder: "oil" } },
  { words: ["wax pencil"], family: "colour-pencil", sets: { binder: "wax" } },
  {
    words: ["coloured pencil", "colored pencil", "colour pencil", "color pencil", "crayon pencil"],
    family: "colour-pencil",
  },
  { words: ["charcoal pencil"], family: "graphite", sets: { core: "charcoal", form: "pencil" } },
  { words: ["carbon pencil"], family: "graphite", sets: { core: "carbon", form: "pencil" } },
  { words: ["water soluble graphite"], family: "graphite", sets: { core: "soluble" } },
  { words: ["graphite pencil"], family: "graphite", sets: { core: "graphite", form: "pencil" } },
  { words: ["graphite stick"], family: "graphite", sets: { core: "graphite", form: "stick" } },
  { words: ["pencil lead", "graphite lead", "lead"], family: "graphite", sets: { form: "lead" } },
  {
    words: ["willow charcoal", "charcoal"],
    family: "graphite",
    sets: { core: "charcoal" },
  },
  { words: ["graphite"], family: "graphite", sets: { core: "graphite" } },
  { words: ["pencil"], family: "graphite", sets: { form: "pencil" } },
  { words: ["oil pastel"], family: "pastel", sets: { kind: "oil" } },
  { words: ["pan pastel"], family: "pastel", sets: { kind: "pan" } },
  { words: ["pastel"], family: "pastel" },
  { words: ["liner brush", "rigger brush", "rigger"], family: "brush", sets: { shape: "liner" } },
  {
    words: ["water brush", "waterbrush"],
    family: "brush",
    sets: { waterReservoir: true },
    name: "Water brush",
  },
  { words: ["paint brush", "paintbrush", "brush"], family: "brush" },
  { words: ["gel pen", "gel liner"], family: "liner", sets: { base: "gel" }, name: "Gel pen" },
  { words: ["ballpoint pen", "ballpoint"], family: "liner", sets: { base: "ballpoint" }, name: "Ballpoint" },
  { words: ["dip pen"], family: "liner", sets: { tip: "nib" }, name: "Dip pen" },
  { words: ["fountain pen"], family: "liner", sets: { tip: "nib" }, name: "Fountain pen" },
  { words: ["rollerball"], family: "liner", sets: { tip: "roller" }, name: "Rollerball" },
  { words: ["fineliner", "fine liner", "drawing pen", "technical pen", "liner"], family: "liner" },
  { words: ["pen"], family: "liner", name: "Pen" },
  { words: ["filbert"], family: "brush", sets: { shape: "filbert" } },
  { words: ["drawing ink", "ink"], family: "ink" },
  { words: ["gouache"], family: "paint", sets: { medium: "gouache" } },
  {
    words: ["watercolour paint", "watercolor paint", "watercolour", "watercolor", "aquarelle"],
    family: "paint",
    sets: { medium: "watercolour" },
  },
  { words: ["acrylic paint", "acrylic"], family: "paint", sets: { medium: "acrylic" } },
  { words: ["oil paint", "oil colour", "oil color"], family: "paint", sets: { medium: "oil" } },
  { words: ["casein"], family: "paint", sets: { medium: "casein" } },
  { words: ["egg tempera", "tempera"], family: "paint", sets: { medium: "tempera" } },
  { words: ["half pan"], family: "paint", sets: { form: "half-pan" } },
  { words: ["paint"], family: "paint" },
];

/** By trait and value: the words that tell it, separated by commas. Values `true` and `false` are yes and no. */
type Telling = Readonly<Record<string, Readonly<Record<string, string>>>>;

const waterproof = {
  false: "not waterproof, non waterproof, not water proof",
  true: "waterproof, water proof",
};

/**
 * What the words of each family tell. A word that could mean two things (water-based, permanent) is left out:
 * it stays in the name, unread. Trade words such as "sable" or "cold pressed" are common practice, no source.
 */
export const traitWords: Readonly<Record<Family, Telling>> = {
  marker: {
    base: {
      alcohol: "alcohol based, alcohol ink, alcohol",
      "water-dye": "water based dye, water dye, dye",
      "water-pigment": "water based pigment, water pigment, pigment",
      acrylic: "acrylic",
      oil: "oil based, oil",
      chalk: "liquid chalk, chalk",
    },
    tips: {
      brush: "brush tip, brush nib, brush",
      chisel: "chisel tip, chisel nib, chisel",
      bullet: "bullet tip, bullet nib, round tip, bullet",
      fine: "fine tip, fine nib, fine",
    },
    refillable: { false: "not refillable, non refillable", true: "refillable" },
  },
  liner: {
    base: {
      pigment: "pigment ink, pigment",
      dye: "dye",
      gel: "gel",
      ballpoint: "ballpoint",
      alcohol: "alcohol",
    },
    tip: {
      fibre: "fibre tip, fiber tip, felt tip, fibre",
      brush: "brush tip, brush",
      roller: "roller tip, roller ball, roller",
      nib: "metal nib, nib",
    },
    waterproof,
  },
  graphite: {
    core: {
      graphite: "graphite",
      charcoal: "charcoal",
      carbon: "carbon",
      soluble: "water soluble, soluble",
    },
    form: { pencil: "pencil", stick: "stick", lead: "lead" },
  },
  "colour-pencil": {
    binder: {
      wax: "wax based, wax binder, wax",
      oil: "oil based, oil binder, oil",
      soluble: "water soluble, soluble",
      pastel: "pastel",
    },
  },
  paint: {
    medium: {
      watercolour: "watercolour, watercolor",
      gouache: "gouache",
      acrylic: "acrylic",
      oil: "oil",
      casein: "casein",
      tempera: "tempera",
      ink: "ink",
    },
    form: {
      "half-pan": "half pan",
      pan: "whole pan, full pan, pan",
      tube: "tube",
      bottle: "bottle",
      stick: "stick",
      pot: "pot, jar",
    },
    opacity: {
      semi: "semi opaque, semi transparent, semiopaque, semitransparent",
      opaque: "opaque",
      transparent: "transparent",
    },
  },
  ink: {
    base: {
      dye: "dye based, dye",
      pigment: "pigmented, pigment",
      shellac: "shellac",
      alcohol: "alcohol",
      acrylic: "acrylic",
    },
    waterproof,
  },
  pastel: { kind: { soft: "soft", hard: "hard", oil: "oil", pan: "pan" } },
  brush: {
    shape: {
      round: "round",
      flat: "flat",
      filbert: "filbert",
      mop: "mop",
      liner: "liner, rigger",
      fan: "fan",
      angle: "angled, angle, angular",
      wash: "wash",
    },
    hair: {
      synthetic: "synthetic hair, synthetic, nylon",
      mixed: "mixed hair",
      natural: "natural hair, natural, sable, squirrel, goat hair, hog bristle, hog",
    },
    waterReservoir: { true: "with reservoir, reservoir, water tank" },
  },
  eraser: {
    kind: {
      kneaded: "kneaded, kneadable, putty",
      plastic: "plastic, vinyl",
      rubber: "rubber",
      gum: "gum",
      powered: "electric, powered, battery",
      pencil: "pencil",
    },
  },
  paper: {
    use: {
      marker: "for markers, marker",
      layout: "layout",
      cartridge: "cartridge, drawing",
      bristol: "bristol",
      watercolour: "for watercolour, watercolour, watercolor",
      mixed: "mixed media, multi media, mixed",
      toned: "toned, tinted",
      tracing: "tracing",
      canvas: "canvas",
      print: "printmaking, print",
    },
    surface: {
      smooth: "hot pressed, hot press, smooth",
      medium: "cold pressed, cold press, medium",
      rough: "rough",
    },
    coated: {
      both: "coated both sides, coated on both sides",
      one: "coated one side, coated on one side",
      none: "uncoated, not coated",
    },
    acidFree: { true: "acid free" },
    bound: {
      loose: "loose sheets, single sheets, loose",
      pad: "pad",
      block: "block",
      book: "book",
    },
  },
  tool: {},
  other: {},
};

/** What a family is called in the middle of a sentence. */
export const familyWords: Readonly<Record<Family, string>> = {
  marker: "a marker",
  liner: "a liner",
  graphite: "a pencil",
  "colour-pencil": "a colour pencil",
  paint: "paint",
  ink: "ink",
  pastel: "a pastel",
  brush: "a brush",
  eraser: "an eraser",
  paper: "paper",
  tool: "a tool",
  other: "something else",
};

/** What a trait is called on screen; one that is not listed is called by its own name. */
const traitNames: ReadonlyMap<string, string> = new Map([
  ["tips", "tips"],
  ["widthMm", "width"],
  ["ml", "amount"],
  ["gsm", "weight"],
  ["coated", "coating"],
  ["acidFree", "acid-free"],
  ["bound", "pad or block"],
  ["waterReservoir", "water in the handle"],
]);

export const traitName = (trait: string): string => traitNames.get(trait) ?? trait;
