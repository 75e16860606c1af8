import * as z from "zod/mini";
import { maybe, PositiveNumber, Text, WholeFromOne } from "../record/index.ts";

/** Pencil grades from hardest to softest: 10H … 2H, H, F, HB, B, 2B … 10B (common European trade scale). */
export const grades = [
  ...[10, 9, 8, 7, 6, 5, 4, 3, 2].map((step) => `${step}H`),
  "H",
  "F",
  "HB",
  "B",
  ...[2, 3, 4, 5, 6, 7, 8, 9, 10].map((step) => `${step}B`),
];

/** ASTM D4303 I (best) to V, and the blue wool scale of ISO 105-B02 from bw8 (best) to bw1. */
export const lightfastness = [
  "I",
  "II",
  "III",
  "IV",
  "V",
  "bw1",
  "bw2",
  "bw3",
  "bw4",
  "bw5",
  "bw6",
  "bw7",
  "bw8",
] as const;

/** A paper size: a name of ISO 216 or of the US sizes, or width and height in millimetres. */
const PaperSize = z.union([Text, z.tuple([PositiveNumber, PositiveNumber])]);

const yesNo = maybe(z.boolean());
const word = <const W extends readonly string[]>(...words: W) => maybe(z.enum(words));

/** The traits each family of supply may have. All may be left out: unknown is never guessed. */
export const traitsByFamily = {
  marker: {
    base: word("alcohol", "water-dye", "water-pigment", "acrylic", "oil", "chalk"),
    tips: maybe(z.array(z.enum(["brush", "chisel", "bullet", "fine"]))),
    refillable: yesNo,
  },
  liner: {
    base: word("pigment", "dye", "gel", "ballpoint", "alcohol"),
    tip: word("fibre", "brush", "roller", "nib"),
    widthMm: maybe(PositiveNumber),
    waterproof: yesNo,
  },
  graphite: {
    core: word("graphite", "charcoal", "carbon", "soluble"),
    grade: maybe(z.enum(grades)),
    form: word("pencil", "stick", "lead"),
  },
  "colour-pencil": { binder: word("wax", "oil", "soluble", "pastel") },
  paint: {
    medium: word("watercolour", "gouache", "acrylic", "oil", "casein", "tempera", "ink"),
    form: word("tube", "pan", "half-pan", "bottle", "stick", "pot"),
    ml: maybe(PositiveNumber),
    pigments: maybe(z.array(Text)),
    opacity: word("opaque", "semi", "transparent"),
  },
  ink: {
    base: word("dye", "pigment", "shellac", "alcohol", "acrylic"),
    ml: maybe(PositiveNumber),
    waterproof: yesNo,
  },
  pastel: { kind: word("soft", "hard", "oil", "pan") },
  brush: {
    shape: word("round", "flat", "filbert", "mop", "liner", "fan", "angle", "wash"),
    hair: word("natural", "synthetic", "mixed"),
    widthMm: maybe(PositiveNumber),
    waterReservoir: yesNo,
  },
  eraser: { kind: word("kneaded", "plastic", "rubber", "gum", "powered", "pencil") },
  paper: {
    use: word(
      "marker",
      "layout",
      "cartridge",
      "bristol",
      "watercolour",
      "mixed",
      "toned",
      "tracing",
      "canvas",
      "print",
    ),
    size: maybe(PaperSize),
    gsm: maybe(PositiveNumber),
    sheets: maybe(WholeFromOne),
    surface: word("smooth", "medium", "rough"),
    coated: word("none", "one", "both"),
    acidFree: yesNo,
    bound: word("pad", "book", "block", "loose"),
  },
  tool: {
    kind: word("sharpener", "ruler", "knife", "palette", "tape", "stencil", "blender", "clip", "other"),
  },
  other: {},
} as const;

export type Family = keyof typeof traitsByFamily;

/** Every family of supply, in the order lists show them. */
export const families = Object.keys(traitsByFamily) as Family[]; // keys of a literal we wrote: no others can be there
