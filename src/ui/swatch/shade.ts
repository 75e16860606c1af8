import { hexFromLab, type Lab } from "../../engine/colour/index.ts";

/** Colours of overlaps, ridges and rims, computed in CIELAB so that nothing needs to be see-through. */
export type Hex = `#${string}`;

export const lab = (l: number, a = 0, b = 0): Lab => ({ white: "D65", l, a, b });

// hexFromLab always begins with "#"; its type just does not say so.
export const hex = (colour: Lab): Hex => hexFromLab(colour) as Hex;

/** `share` 0: all `a`; 1: all `b`. */
export const mix = (a: Lab, b: Lab, share: number): Lab =>
  lab(a.l + (b.l - a.l) * share, a.a + (b.a - a.a) * share, a.b + (b.b - a.b) * share);

/** Lighter (up to +100) or darker (down to −100), same hue; stays within L* 3 to 99. */
export const shade = (colour: Lab, by: number): Lab =>
  lab(Math.min(99, Math.max(3, colour.l + by)), colour.a, colour.b);

const luminance = (l: number) => (l > 8 ? ((l + 16) / 116) ** 3 : l / (24389 / 27));
const lightness = (y: number) => (y > 216 / 24389 ? 116 * Math.cbrt(y) - 16 : y * (24389 / 27));

/**
 * The colour where two coats of a see-through ink lie on each other: absorbance adds.
 * @param depth 0: the second coat hides the first; 1: it adds all of itself
 * A near-black ink cannot get darker; doubled, it bronzes, so there the overlap is a little lighter.
 */
export function doubled(colour: Lab, depth: number): Lab {
  if (colour.l < 24) return lab(colour.l + 16 * depth, colour.a * 0.8, colour.b * 0.8);
  const l = lightness(luminance(colour.l) ** (1 + depth));
  const chroma = 1 + 0.35 * depth;
  return lab(l, colour.a * chroma, colour.b * chroma);
}
