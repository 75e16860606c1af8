import type { StashItem } from "../../src/engine/supply/index.ts";
import { type Dice, dice } from "../unit/colour/chart-scene.ts";

const makers = ["Kvitlyng", "Torrin Hill", "Ljusgränd", "Fjällro", "Sälgkvist", "Norrsken & Dotter", "Harr"];
const lines = ["Studio gouache", "Body colour", "Strand", "Vinter", "Fält", "Ateljé"];
const shades = [
  "moss",
  "brick",
  "dusk",
  "haze",
  "fern",
  "amber",
  "slate",
  "rose",
  "ochre",
  "sea green",
  "plum",
];
const qualities = ["pale", "deep", "warm", "cool", "light", "dark", "soft", "clear", "smoky", "old"];
const places = ["blue tin", "top drawer", "window sill", "travel case", "shelf by the door", "cellar"];
const states = ["ok", "ok", "ok", "low", "empty", "dried"] as const;
const notes = [
  "Bought at the spring fair together with the other half of the set; the cap is a little tight.",
  "Swatched on the rough side of the paper. Dries a touch darker than it looks in the tube.",
  "From the drawer that came with the desk, label half gone, and still perfectly good to work with.",
];

/** How the colours of a palette lie: all over sRGB, or in a few crowded corners as in a real drawer. */
export type Palette = "uniform" | "crowded";

const pick = <T>(chance: Dice, list: readonly T[]): T => list[Math.floor(chance.next() * list.length)] as T; // never empty

const hexOf = (channels: readonly number[]): string =>
  `#${channels
    .map((value) =>
      Math.round(Math.min(255, Math.max(0, value)))
        .toString(16)
        .padStart(2, "0"),
    )
    .join("")}`;

/** The middles that a crowded palette keeps to: earths, greens, blues and greys. */
const crowds = [
  [150, 98, 52],
  [92, 110, 60],
  [60, 84, 128],
  [140, 140, 136],
] as const;

function colourIn(palette: Palette, chance: Dice): string {
  if (palette === "uniform") return hexOf([0, 1, 2].map(() => chance.between(0, 255)));
  return hexOf(pick(chance, crowds).map((middle) => middle + 9 * chance.normal()));
}

function itemOf(index: number, palette: Palette, chance: Dice): StashItem {
  const shade = `${pick(chance, qualities)} ${pick(chance, shades)}`;
  return {
    id: `st-${index.toString(36).padStart(8, "0")}`,
    supply: {
      family: "paint",
      name: `Gouache, ${shade} ${index % 97}`,
      maker: pick(chance, makers),
      line: pick(chance, lines),
      code: `${pick(chance, ["g", "k", "b", "st"])}${100 + (index % 900)}`,
      colour: { name: shade, hex: colourIn(palette, chance), from: "typed" },
      traits: { medium: "gouache", form: "tube", ml: pick(chance, [10, 14, 15, 20]), opacity: "opaque" },
    },
    owned: 1 + Math.floor(3 * chance.next()),
    state: pick(chance, states),
    acquired: `20${10 + (index % 16)}-0${1 + (index % 9)}-1${index % 10}`,
    paid: { amount: `${20 + (index % 60)}.${index % 2 ? "50" : "00"}`, currency: "SEK" },
    place: pick(chance, places),
    note: pick(chance, notes),
    tags: [pick(chance, ["landscape", "portrait", "sketch"]), pick(chance, ["hedge", "winter", "sea"])],
  };
}

/** So many things, the same on every machine. */
export function stashOf(count: number, palette: Palette = "uniform"): readonly StashItem[] {
  const chance = dice(count + palette.length);
  return Array.from({ length: count }, (_, index) => itemOf(index, palette, chance));
}
