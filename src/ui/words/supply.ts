import type { Family } from "../../engine/supply/index.ts";

/** The words of a supply's form, in English: families, their traits, and the values of the traits. */
export const supplyWords = {
  family: "What it is",
  families: {
    marker: "Marker or brush pen",
    liner: "Liner or pen",
    graphite: "Graphite or charcoal",
    "colour-pencil": "Colour pencil",
    paint: "Paint",
    ink: "Ink",
    pastel: "Pastel",
    brush: "Brush",
    eraser: "Eraser",
    paper: "Paper",
    tool: "Tool",
    other: "Something else",
  } satisfies Readonly<Record<Family, string>>,

  name: "Name",
  nameMissing: "It has no name. Write what it is called, or what it is.",
  maker: "Maker",
  line: "Line or series",
  code: "Code",
  gtin: "Barcode number",
  gtinOdd: "This is no barcode number that adds up: check its figures, or leave it out.",
  lightfast: "Lightfastness",
  lightfastLevels: {
    I: "I, excellent",
    II: "II, very good",
    III: "III, fair",
    IV: "IV, poor",
    V: "V, very poor",
    bw1: "blue wool 1, fades first",
    bw8: "blue wool 8, lasts best",
  } as Readonly<Partial<Record<string, string>>>,
  blueWool: (step: string) => `blue wool ${step}`,
  safety: "What its safety label says",
  more: "Maker's numbers, lightfastness, safety",
  moreClose: "Fold these away",

  colour: "Colour",
  colourName: "Colour, by name",
  colourCode: "Colour, as hex",
  colourHint: "such as #6b7d3a",
  colourPick: "Pick the colour",
  colourNone: "No colour given yet",
  colourReads: (name: string) => `reads as ${name}`,
  measured: "measured from a photo",

  notSaid: "not said",
  yes: "yes",
  no: "no",
  list: "with commas between",
  sizeHint: "a name such as A4, or 240 × 320 mm",
  notASize:
    "This does not read as a paper size. Write its name, such as A4, or its sides, such as 240 × 320 mm.",
  notANumber: (text: string) => `“${text}” is not a number above nought. Write figures, such as 12.5.`,
  notAWhole: (text: string) => `“${text}” is not a whole number from 1 up. Write figures, such as 12.`,
  twoReadings: (text: string, whole: string, decimal: string) =>
    `${text} can be read in two ways. Write ${whole} or ${decimal}.`,

  traits: {
    base: "Base",
    tips: "Tips",
    tip: "Tip",
    refillable: "Refillable",
    widthMm: "Width",
    waterproof: "Waterproof",
    core: "Core",
    grade: "Grade",
    form: "Form",
    binder: "Binder",
    medium: "Medium",
    ml: "Amount",
    pigments: "Pigments",
    opacity: "Opacity",
    kind: "Kind",
    shape: "Shape",
    hair: "Hair",
    waterReservoir: "Holds its own water",
    use: "Made for",
    size: "Size",
    gsm: "Weight",
    sheets: "Sheets",
    surface: "Surface",
    coated: "Coated",
    acidFree: "Acid-free",
    bound: "Bound as",
  } as Readonly<Partial<Record<string, string>>>,

  units: { widthMm: "mm", ml: "ml", gsm: "g/m²" } as Readonly<Partial<Record<string, string>>>,

  values: {
    "water-dye": "water-based dye",
    "water-pigment": "water-based pigment",
    "half-pan": "half pan",
    semi: "semi-opaque",
    soluble: "water-soluble",
  } as Readonly<Partial<Record<string, string>>>,

  coated: { none: "not coated", one: "on one side", both: "on both sides" } as Readonly<
    Partial<Record<string, string>>
  >,
};

/** What a translation has to hold. */
export type SupplyWords = typeof supplyWords;
