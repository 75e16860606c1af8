import type { Language } from "../record/index.ts";
import { type Lab, lchOf } from "./lab.ts";
import { oklabOf } from "./oklab.ts";
import { type ColourWords, wordsIn } from "./words/index.ts";

export type HueName = keyof ColourWords["hues"];

/** The columns of a stash laid out by colour. */
export const hueGroups = [
  "reds",
  "oranges",
  "yellows",
  "greens",
  "teals",
  "blues",
  "violets",
  "pinks",
  "greys",
] as const;
export type HueGroup = (typeof hueGroups)[number];

/** The rows of a stash laid out by colour, lightest first. */
export const lightnessBands = ["very light", "light", "middling", "dark", "very dark"] as const;
export type LightnessBand = (typeof lightnessBands)[number];

// Below this Oklab chroma people see a grey; the limit is ours.
const greyChroma = 0.022;

/** Where each hue ends, in Oklab degrees. The names are everyday words; the limits are ours. */
const hues: readonly Readonly<{ to: number; name: HueName; group: HueGroup }>[] = [
  { to: 8, name: "pink", group: "pinks" },
  { to: 38, name: "red", group: "reds" },
  { to: 50, name: "red-orange", group: "oranges" },
  { to: 70, name: "orange", group: "oranges" },
  { to: 86, name: "yellow-orange", group: "oranges" },
  { to: 112, name: "yellow", group: "yellows" },
  { to: 132, name: "yellow-green", group: "greens" },
  { to: 160, name: "green", group: "greens" },
  { to: 188, name: "blue-green", group: "teals" },
  { to: 222, name: "teal", group: "teals" },
  { to: 275, name: "blue", group: "blues" },
  { to: 292, name: "blue-violet", group: "violets" },
  { to: 318, name: "violet", group: "violets" },
  { to: 336, name: "purple", group: "violets" },
  { to: 360, name: "pink", group: "pinks" },
];

const hueAt = (degrees: number): Readonly<{ name: HueName; group: HueGroup }> =>
  hues.find((hue) => degrees < hue.to) ?? { name: "pink", group: "pinks" };

/** The column a colour belongs to. */
export function hueGroup(lab: Lab): HueGroup {
  const { c, h } = oklabOf(lab);
  return c < greyChroma ? "greys" : hueAt(h).group;
}

/** The row a colour belongs to, by L* in steps of twenty with the ends a little wider. */
export function lightnessBand(lab: Lab): LightnessBand {
  if (lab.l >= 82) return "very light";
  if (lab.l >= 64) return "light";
  if (lab.l >= 44) return "middling";
  return lab.l >= 25 ? "dark" : "very dark";
}

function greyName(l: number): keyof ColourWords["greys"] {
  if (l >= 96) return "white";
  if (l <= 12) return "black";
  if (l >= 78) return "pale grey";
  return l >= 40 ? "grey" : "dark grey";
}

/** Dark oranges are browns, dark yellows olives, light reds pinks, dark pinks crimsons: as people say it. */
function everydayHue(name: HueName, l: number, c: number): HueName {
  if ((name === "orange" || name === "red-orange") && l < 55) return "brown";
  if (name === "yellow-orange" && l < 58) return c > 45 ? "ochre" : "brown";
  if (name === "yellow" && l < 55) return "olive";
  if (name === "red" && l >= 68) return "pink";
  if (name === "pink" && l < 42) return "crimson";
  return name;
}

/** The hue of a colour by its everyday name, of a grey the hue it leans to. `grey`: people see no hue in it. */
export function hueOf(lab: Lab): Readonly<{ name: HueName; grey: boolean }> {
  const ok = oklabOf(lab);
  const { l, c } = lchOf(lab);
  return { name: everydayHue(hueAt(ok.h).name, l, c), grey: ok.c < greyChroma };
}

function strength(c: number): keyof ColourWords["strengths"] | null {
  if (c >= 75) return "vivid";
  if (c >= 32) return null;
  return c >= 14 ? "muted" : "greyish";
}

function lightness(l: number): keyof ColourWords["lightnesses"] | null {
  if (l >= 86) return "pale";
  if (l >= 70) return "light";
  if (l >= 38) return null;
  return l >= 22 ? "dark" : "very dark";
}

/** A colour in plain words: lightness, strength, hue ("dark muted yellow-green"). Nobody has to see it. */
export function plainName(lab: Lab, language: Language = "en"): string {
  const words = wordsIn[language];
  const ok = oklabOf(lab);
  const { l, c } = lchOf(lab);
  if (ok.c < greyChroma) return words.greys[greyName(l)];
  const [light, strong] = [lightness(l), strength(c)];
  return [
    ...(light ? [words.lightnesses[light]] : []),
    ...(strong ? [words.strengths[strong]] : []),
    words.hues[everydayHue(hueAt(ok.h).name, l, c)],
  ].join(" ");
}
