import { type Lab, xyzFromLab } from "./lab.ts";
import { apply, type Matrix } from "./matrix.ts";

const toCones: Matrix = [
  [0.8189330101, 0.3618667424, -0.1288597137],
  [0.0329845436, 0.9293118715, 0.0361456387],
  [0.0482003018, 0.2643662691, 0.633851707],
];
const toOklab: Matrix = [
  [0.2104542553, 0.793617785, -0.0040720468],
  [1.9779984951, -2.428592205, 0.4505937099],
  [0.0259040371, 0.7827717662, -0.808675766],
];

/**
 * A colour in Oklab, as lightness 0–1, chroma 0–0.4 and hue in degrees. Its hues keep their name as they
 * lighten, where CIELAB's blues turn violet; so it names colours, and only that.
 * @see B. Ottosson, A perceptual color space for image processing (2020)
 */
export function oklabOf(lab: Lab): Readonly<{ l: number; c: number; h: number }> {
  const [l, m, s] = apply(toCones, xyzFromLab(lab));
  const [light, a, b] = apply(toOklab, [Math.cbrt(l), Math.cbrt(m), Math.cbrt(s)]);
  const degrees = (Math.atan2(b, a) * 180) / Math.PI;
  return { l: light, c: Math.hypot(a, b), h: degrees < 0 ? degrees + 360 : degrees };
}
