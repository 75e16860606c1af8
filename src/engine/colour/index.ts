/**
 * Colour: spaces, difference, plain names, how one colour misses another, in words, and the colours of a swatch
 * chart from a photo of it (`chart/`).
 *
 * Units    L* 0–100; a*, b* about −128…127 for sRGB; hue in degrees. Always D65, 2° observer.
 * Sources  IEC 61966-2-1 (sRGB), CIE 15 and ISO/CIE 11664-4 (CIELAB), Bradford adaptation (ICC.1),
 *          Sharma, Wu & Dalal 2005 (CIEDE2000), Ottosson 2020 (Oklab, for hue names only),
 *          Hartley & Zisserman 2004 (homography), Huber 1964 and Beaton & Tukey 1974 (robust means).
 * Not here Which item plays a part: `match/`.
 */
export { swatchOutlines } from "./chart/outline.ts";
export { paperSpot } from "./chart/paper-spot.ts";
export { readChart } from "./chart/read-chart.ts";
export type {
  CellReading,
  ChartLight,
  ChartPhoto,
  ChartReading,
  Corners,
  Doubt,
  Picture,
  Point,
} from "./chart/shapes.ts";
export { deltaE2000, differenceWord } from "./difference.ts";
export {
  hexFromLab,
  type Lab,
  labFromHex,
  labFromLinear,
  labOf,
  lchOf,
  linearFromHex,
  xyzFromLinear,
} from "./lab.ts";
export { missWords } from "./miss.ts";
export {
  type HueGroup,
  type HueName,
  hueGroup,
  hueGroups,
  hueOf,
  type LightnessBand,
  lightnessBand,
  lightnessBands,
  plainName,
} from "./names.ts";
export { oklabOf } from "./oklab.ts";
export { parseColour } from "./parse.ts";
export { type Colour, ColourSchema } from "./schema.ts";
