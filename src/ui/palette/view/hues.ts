import { paletteWords } from "../../words/palette.ts";

/** A hue's name and where it stands, in degrees of CIELAB hue. */
export type Hue = Readonly<{ name: string; degrees: number }>;

const { hues } = paletteWords;

/**
 * The middle of each group of hues, at middling lightness and strength. Groups are those of the engine's colour
 * names, which are drawn in another space; towards light and dark their borders bend a little.
 */
export const hueWords: readonly Hue[] = [
  { name: hues.red, degrees: 27 },
  { name: hues.orange, degrees: 65 },
  { name: hues.yellow, degrees: 98 },
  { name: hues.green, degrees: 135 },
  { name: hues.teal, degrees: 196 },
  { name: hues.blue, degrees: 260 },
  { name: hues.violet, degrees: 311 },
  { name: hues.pink, degrees: 352 },
];
