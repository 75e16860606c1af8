import type { Supply } from "../../engine/supply/index.ts";

/** One example of each family and of the traits that change its drawing. Names and colours are invented. */
export const examples: readonly Supply[] = [
  {
    family: "marker",
    name: "Marker, alcohol, chisel",
    colour: { hex: "#1f7478" },
    traits: { base: "alcohol", tips: ["chisel"] },
  },
  {
    family: "marker",
    name: "Brush pen, water dye",
    colour: { hex: "#bf5583" },
    traits: { base: "water-dye", tips: ["brush"] },
  },
  {
    family: "paint",
    name: "Gouache",
    colour: { hex: "#c88a26" },
    traits: { medium: "gouache", opacity: "opaque" },
  },
  {
    family: "paint",
    name: "Watercolour",
    colour: { hex: "#3f6ba8" },
    traits: { medium: "watercolour", opacity: "transparent" },
  },
  {
    family: "colour-pencil",
    name: "Colour pencil, wax",
    colour: { hex: "#a8452f" },
    traits: { binder: "wax" },
  },
  { family: "graphite", name: "Graphite, 2H", traits: { core: "graphite", grade: "2H" } },
  { family: "graphite", name: "Graphite, 6B", traits: { core: "graphite", grade: "6B" } },
  {
    family: "liner",
    name: "Liner, 0.5 mm",
    colour: { hex: "#1c2421" },
    traits: { base: "pigment", widthMm: 0.5 },
  },
  { family: "pastel", name: "Soft pastel", colour: { hex: "#7456a6" }, traits: { kind: "soft" } },
  { family: "ink", name: "Ink, 30 ml", colour: { hex: "#1d4a41" }, traits: { base: "shellac", ml: 30 } },
  {
    family: "paper",
    name: "Sheet, A4, 300 gsm, rough",
    traits: { size: "A4", gsm: 300, surface: "rough", bound: "loose" },
  },
  {
    family: "paper",
    name: "Pad, A5 toned, 120 gsm",
    colour: { hex: "#c6b48f" },
    traits: { size: "A5", gsm: 120, sheets: 40, use: "toned", bound: "pad" },
  },
  { family: "eraser", name: "Eraser, plastic", traits: { kind: "plastic" } },
  { family: "eraser", name: "Eraser, kneaded", traits: { kind: "kneaded" } },
  { family: "brush", name: "Round brush, 6 mm", traits: { shape: "round", hair: "natural", widthMm: 6 } },
  { family: "brush", name: "Flat brush, 12 mm", traits: { shape: "flat", hair: "synthetic", widthMm: 12 } },
  { family: "tool", name: "Ruler", traits: { kind: "ruler" } },
  { family: "other", name: "Something else" },
];

const gouache = (name: string, hex: string): Supply => ({
  family: "paint",
  name,
  colour: { hex },
  traits: { medium: "gouache", opacity: "opaque" },
});

/** Pairs: of one family, of two, of two sheets, and a gap. */
export const pairExamples: readonly Readonly<{ kit: Supply; standIn: Supply | null }>[] = [
  { kit: gouache("Gouache, moss", "#6e7d3b"), standIn: gouache("Gouache, fern shade", "#5f7033") },
  { kit: gouache("Gouache, fog blue", "#8ea6b6"), standIn: gouache("Gouache, haze", "#8ea6b6") },
  {
    kit: gouache("Gouache, rowan", "#b8322a"),
    standIn: {
      family: "marker",
      name: "Paint marker, brick",
      colour: { hex: "#a8453a" },
      traits: { base: "acrylic", tips: ["bullet"] },
    },
  },
  {
    kit: {
      family: "colour-pencil",
      name: "Colour pencil, peat",
      colour: { hex: "#5d4130" },
      traits: { binder: "oil" },
    },
    standIn: {
      family: "colour-pencil",
      name: "Colour pencil, bark",
      colour: { hex: "#6d513f" },
      traits: { binder: "wax" },
    },
  },
  {
    kit: { family: "graphite", name: "Graphite pencil, 4B", traits: { grade: "4B" } },
    standIn: { family: "graphite", name: "Graphite pencil, 6B", traits: { grade: "6B" } },
  },
  {
    kit: { family: "liner", name: "Liner, black, 0.3", traits: { base: "pigment", widthMm: 0.3 } },
    standIn: { family: "liner", name: "Liner, black, 0.35", traits: { base: "pigment", widthMm: 0.35 } },
  },
  { kit: { family: "brush", name: "Flat brush", traits: { shape: "flat", widthMm: 10 } }, standIn: null },
  {
    kit: {
      family: "paper",
      name: "Block, 24 × 32 cm",
      traits: { size: [240, 320], gsm: 300, sheets: 12, bound: "block" },
    },
    standIn: {
      family: "paper",
      name: "Pad, A3",
      traits: { size: "A3", gsm: 250, sheets: 14, bound: "pad", surface: "rough" },
    },
  },
];
