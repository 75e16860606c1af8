import type { Family } from "../supply/index.ts";
import type { TraitName } from "./table.ts";

const traits: Readonly<Record<TraitName, string>> = {
  colour: "colour",
  base: "kind of ink",
  tips: "tips",
  refillable: "refillable",
  tip: "tip",
  widthMm: "width",
  waterproof: "waterproof",
  core: "core",
  grade: "grade",
  form: "form",
  binder: "binder",
  medium: "medium",
  ml: "amount",
  pigments: "pigments",
  opacity: "opacity",
  kind: "kind",
  shape: "shape",
  hair: "hair",
  waterReservoir: "holds water",
  use: "made for",
  size: "size",
  gsm: "weight",
  surface: "surface",
  coated: "coating",
  acidFree: "acid-free",
  bound: "binding",
  lightfast: "lightfastness",
};

/** A trait as it is said on screen: "kind of ink" for `base`. What has no word of ours comes back as it is. */
export const traitLabel = (trait: string): string =>
  Object.hasOwn(traits, trait) ? traits[trait as TraitName] : trait; // hasOwn has just shown that it is one

const families: Readonly<Record<Family, string>> = {
  marker: "a marker",
  liner: "a liner",
  graphite: "a graphite pencil",
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

/** A family with its article: "a marker". */
export const familyLabel = (family: Family): string => families[family];
