import type { Family } from "../../supply/index.ts";
import type { TraitName } from "../table.ts";

const numbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
const counted = (count: number, one: string, many: string): string =>
  `${numbers[count] ?? count} ${count === 1 ? one : many}`;

/** How near a stand-in comes, and why, in English. */
export const matchWords = {
  nearness: {
    same: "the same",
    twin: "the same under another label",
    "same-colour": "the same colour",
    near: "very near",
    fair: "fairly near",
    stretch: "at a pinch",
    gap: "nothing close",
  },

  /** Traits in the middle of a sentence; what has no word of ours comes as it is. */
  traits: {
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
  } satisfies Readonly<Record<TraitName, string>>,

  /** Families with their article. */
  families: {
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
  } satisfies Readonly<Record<Family, string>>,

  sameProduct: "the very same product",
  twin: "sold under another label",
  sameColour: "the same colour in another form",
  insteadOf: (other: string, kit: string) => `${other} instead of ${kit}`,
  apart: (deltaE: string) => `${deltaE} apart`,
  noDifference: "no difference in colour",
  softer: (grades: number) => `${counted(grades, "grade", "grades")} softer`,
  harder: (grades: number) => `${counted(grades, "grade", "grades")} harder`,
  cutDown: (pieces: number) => `larger: cut down, ${counted(pieces, "piece", "pieces")} a sheet`,
  covers: (hundredths: number) => `smaller: covers ${hundredths} of 100`,
  differs: (trait: string) => `${trait} differs`,
  unknown: (trait: string) => `${trait} not known`,
  noColour: "its colour is not known",
  noKitColour: "the kit's colour is not known",
  allAgrees: "all that is known agrees",
  littleKnown: "little is known of it",

  cut: (piece: string, pieces: number, waste: readonly string[]) => {
    const yields = pieces === 1 ? "one piece" : `${pieces} pieces`;
    const left = waste.length === 0 ? "nothing is left over" : `left over: ${waste.join(" and ")}`;
    return `Cut each sheet to ${piece}: ${yields} a sheet, ${left}.`;
  },
};
