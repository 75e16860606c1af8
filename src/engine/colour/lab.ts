import { apply, type Matrix, type Triple } from "./matrix.ts";
import type { Colour } from "./schema.ts";

/** A CIELAB colour under D65. `white` makes mixing it up with D50 values a compile error. */
export type Lab = Readonly<{ white: "D65"; l: number; a: number; b: number }>;

/** The same colour as lightness, chroma and hue angle in degrees, 0 to 360. */
export type Lch = Readonly<{ l: number; c: number; h: number }>;

const whiteFrom = (x: number, y: number): Triple => [x / y, 1, (1 - x - y) / y];
const d65 = whiteFrom(0.3127, 0.329);
const d50 = whiteFrom(0.3457, 0.3585);

/** Linear sRGB to XYZ and back, as the fractions that the ITU-R BT.709 primaries and D65 give. */
const toXyz: Matrix = [
  [506752 / 1228815, 87881 / 245763, 12673 / 70218],
  [87098 / 409605, 175762 / 245763, 12673 / 175545],
  [7918 / 409605, 87881 / 737289, 1001167 / 1053270],
];
const toLinear: Matrix = [
  [12831 / 3959, -329 / 214, -1974 / 3959],
  [-851781 / 878810, 1648619 / 878810, 36519 / 878810],
  [705 / 12673, -2585 / 12673, 705 / 667],
];

/** Linear Bradford adaptation between the two whites above (Lam 1985; ICC.1 Annex E). */
const d50ToD65: Matrix = [
  [0.9554734215, -0.0230984549, 0.0632592432],
  [-0.0283697093, 1.0099953981, 0.0210414412],
  [0.0123140149, -0.0205076493, 1.3303659262],
];

const decode = (c: number): number => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
const encode = (v: number): number => (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055);

const epsilon = 216 / 24389;
const kappa = 24389 / 27;
const f = (t: number): number => (t > epsilon ? Math.cbrt(t) : (kappa * t + 16) / 116);
const unf = (t: number): number => (t ** 3 > epsilon ? t ** 3 : (116 * t - 16) / kappa);

/** Linear-light sRGB channels, 0 to 1, of a `#rrggbb` text. */
export function linearFromHex(hex: string): Triple {
  const channel = (at: number) => decode(Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  return [channel(1), channel(3), channel(5)];
}

/** XYZ under D65, Y of white 1. */
export const xyzFromLinear = (rgb: Triple): Triple => apply(toXyz, rgb);

/** @see CIE 15:2018; ISO/CIE 11664-4:2019 */
function labFromXyz(xyz: Triple): Lab {
  const [x, y, z] = [f(xyz[0] / d65[0]), f(xyz[1] / d65[1]), f(xyz[2] / d65[2])];
  return { white: "D65", l: 116 * y - 16, a: 500 * (x - y), b: 200 * (y - z) };
}

function xyzUnder(white: Triple, l: number, a: number, b: number): Triple {
  const y = (l + 16) / 116;
  return [unf(y + a / 500) * white[0], unf(y) * white[1], unf(y - b / 200) * white[2]];
}

/** XYZ under D65, Y of white 1. */
export const xyzFromLab = (lab: Lab): Triple => xyzUnder(d65, lab.l, lab.a, lab.b);

/** CIELAB (D65) of linear-light sRGB channels, white 1. */
export const labFromLinear = (rgb: Triple): Lab => labFromXyz(xyzFromLinear(rgb));

/** Linear-light sRGB channels, white 1; below 0 or above 1 where the colour lies outside sRGB. */
export const linearFromLab = (lab: Lab): Triple => apply(toLinear, xyzFromLab(lab));

/** CIELAB (D65) of an sRGB colour written `#rrggbb`. */
export const labFromHex = (hex: string): Lab => labFromLinear(linearFromHex(hex));

/** The nearest `#rrggbb` text; what lies outside sRGB is clipped channel by channel. */
export function hexFromLab(lab: Lab): string {
  const byte = (v: number) => Math.round(255 * Math.min(1, Math.max(0, encode(v))));
  const hex = linearFromLab(lab).map((v) => byte(v).toString(16).padStart(2, "0"));
  return `#${hex.join("")}`;
}

/** Lightness, chroma and hue. The hue of a pure grey is 0. */
export function lchOf(lab: Lab): Lch {
  const degrees = (Math.atan2(lab.b, lab.a) * 180) / Math.PI;
  return { l: lab.l, c: Math.hypot(lab.a, lab.b), h: degrees < 0 ? degrees + 360 : degrees };
}

/**
 * The colour of a supply under D65: its Lab values where it has them (D50 ones adapted), else its hex.
 * @returns null when only words, or nothing, are known of it
 */
export function labOf(colour: Colour | null | undefined): Lab | null {
  if (colour?.lab) {
    const [l, a, b] = colour.lab;
    if (colour.white !== "D50") return { white: "D65", l, a, b };
    return labFromXyz(apply(d50ToD65, xyzUnder(d50, l, a, b)));
  }
  return colour?.hex ? labFromHex(colour.hex) : null;
}
