import type { matchWords as en } from "./en.ts";

const ones = ["inget", "ett"]; // of "steg"; of "bit" it would be "en"
const numbers = ["två", "tre", "fyra", "fem", "sex", "sju", "åtta", "nio", "tio"];
const steps = (count: number): string => `${[...ones, ...numbers][count] ?? count} steg`;
const pieces = (count: number): string =>
  count === 1 ? "en bit" : `${numbers[count - ones.length] ?? count} bitar`;

/** How near a stand-in comes, and why, in Swedish. Phrases about a trait need no agreement with it. */
export const matchWords: typeof en = {
  nearness: {
    same: "samma",
    twin: "samma under ett annat namn",
    "same-colour": "samma färg",
    near: "mycket nära",
    fair: "ganska nära",
    stretch: "i nödfall",
    gap: "inget som ligger nära",
  },

  traits: {
    colour: "färg",
    base: "bläcksort",
    tips: "spetsar",
    refillable: "påfyllning",
    tip: "spets",
    widthMm: "bredd",
    waterproof: "vattenfasthet",
    core: "kärna",
    grade: "hårdhet",
    form: "form",
    binder: "bindemedel",
    medium: "färgtyp",
    ml: "mängd",
    pigments: "pigment",
    opacity: "täckförmåga",
    kind: "sort",
    shape: "form",
    hair: "hår",
    waterReservoir: "vattenbehållare",
    use: "användning",
    size: "storlek",
    gsm: "ytvikt",
    surface: "yta",
    coated: "bestrykning",
    acidFree: "syrafrihet",
    bound: "bindning",
    lightfast: "ljusäkthet",
  },

  families: {
    marker: "en märkpenna",
    liner: "en fineliner",
    graphite: "en blyertspenna",
    "colour-pencil": "en färgpenna",
    paint: "målarfärg",
    ink: "tusch",
    pastel: "en pastell",
    brush: "en pensel",
    eraser: "ett suddgummi",
    paper: "papper",
    tool: "ett verktyg",
    other: "något annat",
  },

  sameProduct: "precis samma produkt",
  twin: "säljs under ett annat namn",
  sameColour: "samma färg i en annan form",
  insteadOf: (other, kit) => `${other} i stället för ${kit}`,
  apart: (deltaE) => `${deltaE} ifrån`,
  noDifference: "ingen skillnad i färg",
  softer: (grades) => `${steps(grades)} mjukare`,
  harder: (grades) => `${steps(grades)} hårdare`,
  cutDown: (count) => `större: skärs till, ${pieces(count)} per ark`,
  covers: (hundredths) => `mindre: täcker ${hundredths} av 100`,
  differs: (trait) => `skillnad i ${trait}`,
  unknown: (trait) => `ingen uppgift om ${trait}`,
  noColour: "dess färg är okänd",
  noKitColour: "kitets färg är okänd",
  allAgrees: "allt som är känt stämmer",
  littleKnown: "inte mycket är känt om den",

  cut: (piece, count, waste) => {
    const left = waste.length === 0 ? "inget blir över" : `kvar blir ${waste.join(" och ")}`;
    return `Skär varje ark till ${piece}: ${pieces(count)} per ark, ${left}.`;
  },
};
