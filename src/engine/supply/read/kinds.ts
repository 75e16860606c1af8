import type { Family } from "../traits.ts";

/** A thing that is called by a word of its own, where its traits would not say it as well. */
export type Called =
  | "sketchbook"
  | "postcards"
  | "bristol-board"
  | "canvas-board"
  | "canvas"
  | "refill"
  | "pen-ink"
  | "brush-pen"
  | "paint-marker"
  | "highlighter"
  | "watercolour-pencil"
  | "pastel-pencil"
  | "water-brush"
  | "gel-pen"
  | "ballpoint"
  | "dip-pen"
  | "fountain-pen"
  | "rollerball"
  | "pen";

export type Sets = Readonly<Record<string, string | boolean | readonly string[]>>;

/** A kind of thing that a word may name, with the traits that the word alone tells. */
export type Kind = Readonly<{ family: Family; sets?: Sets; called?: Called }>;

const tool = (kind: string): Kind => ({ family: "tool", sets: { kind } });

/** Tried from the top: the first that a line names decides, so compounds come before their parts. */
export const kinds = {
  accessory: tool("other"),
  /** Given along, and nothing to draw with. */
  keepsake: { family: "other" },
  sharpener: tool("sharpener"),
  ruler: tool("ruler"),
  knife: tool("knife"),
  palette: tool("palette"),
  tape: tool("tape"),
  "stencil-brush": { family: "brush" },
  stencil: tool("stencil"),
  blender: tool("blender"),
  clip: tool("clip"),
  "eraser-pencil": { family: "eraser", sets: { kind: "pencil" } },
  "kneaded-eraser": { family: "eraser", sets: { kind: "kneaded" } },
  eraser: { family: "eraser" },
  sketchbook: { family: "paper", sets: { bound: "book" }, called: "sketchbook" },
  pad: { family: "paper", sets: { bound: "pad" } },
  block: { family: "paper", sets: { bound: "block" } },
  book: { family: "paper", sets: { bound: "book" } },
  postcard: { family: "paper", called: "postcards" },
  "bristol-board": { family: "paper", sets: { use: "bristol" }, called: "bristol-board" },
  "canvas-board": { family: "paper", sets: { use: "canvas" }, called: "canvas-board" },
  paper: { family: "paper" },
  canvas: { family: "paper", sets: { use: "canvas" }, called: "canvas" },
  refill: { family: "ink", called: "refill" },
  "pen-ink": { family: "ink", called: "pen-ink" },
  "brush-pen": { family: "marker", sets: { tips: ["brush"] }, called: "brush-pen" },
  "paint-marker": { family: "marker", called: "paint-marker" },
  highlighter: { family: "marker", called: "highlighter" },
  marker: { family: "marker" },
  "watercolour-pencil": {
    family: "colour-pencil",
    sets: { binder: "soluble" },
    called: "watercolour-pencil",
  },
  "pastel-pencil": { family: "colour-pencil", sets: { binder: "pastel" }, called: "pastel-pencil" },
  "oil-pencil": { family: "colour-pencil", sets: { binder: "oil" } },
  "wax-pencil": { family: "colour-pencil", sets: { binder: "wax" } },
  "colour-pencil": { family: "colour-pencil" },
  "charcoal-pencil": { family: "graphite", sets: { core: "charcoal", form: "pencil" } },
  "carbon-pencil": { family: "graphite", sets: { core: "carbon", form: "pencil" } },
  "soluble-graphite": { family: "graphite", sets: { core: "soluble" } },
  "graphite-pencil": { family: "graphite", sets: { core: "graphite", form: "pencil" } },
  "graphite-stick": { family: "graphite", sets: { core: "graphite", form: "stick" } },
  lead: { family: "graphite", sets: { form: "lead" } },
  "charcoal-stick": { family: "graphite", sets: { core: "charcoal", form: "stick" } },
  charcoal: { family: "graphite", sets: { core: "charcoal" } },
  graphite: { family: "graphite", sets: { core: "graphite" } },
  pencil: { family: "graphite", sets: { form: "pencil" } },
  "oil-pastel": { family: "pastel", sets: { kind: "oil" } },
  "pan-pastel": { family: "pastel", sets: { kind: "pan" } },
  pastel: { family: "pastel" },
  "liner-brush": { family: "brush", sets: { shape: "liner" } },
  "water-brush": { family: "brush", sets: { waterReservoir: true }, called: "water-brush" },
  brush: { family: "brush" },
  "gel-pen": { family: "liner", sets: { base: "gel" }, called: "gel-pen" },
  ballpoint: { family: "liner", sets: { base: "ballpoint" }, called: "ballpoint" },
  "dip-pen": { family: "liner", sets: { tip: "nib" }, called: "dip-pen" },
  "fountain-pen": { family: "liner", sets: { tip: "nib" }, called: "fountain-pen" },
  rollerball: { family: "liner", sets: { tip: "roller" }, called: "rollerball" },
  liner: { family: "liner" },
  pen: { family: "liner", called: "pen" },
  filbert: { family: "brush", sets: { shape: "filbert" } },
  ink: { family: "ink" },
  gouache: { family: "paint", sets: { medium: "gouache" } },
  watercolour: { family: "paint", sets: { medium: "watercolour" } },
  acrylic: { family: "paint", sets: { medium: "acrylic" } },
  oil: { family: "paint", sets: { medium: "oil" } },
  casein: { family: "paint", sets: { medium: "casein" } },
  tempera: { family: "paint", sets: { medium: "tempera" } },
  "half-pan": { family: "paint", sets: { form: "half-pan" } },
  paint: { family: "paint" },
  bristol: { family: "paper", sets: { use: "bristol" } },
} as const satisfies Readonly<Record<string, Kind>>;

export type KindName = keyof typeof kinds;
