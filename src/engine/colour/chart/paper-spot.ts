import { checked } from "./check.ts";
import { homographyOf, project } from "./homography.ts";
import type { ChartPhoto, Point } from "./shapes.ts";
import { readStrips, type Strip, stripReader } from "./strips.ts";

const brightnessOf = ({ log }: Strip): number => log[0] + log[1] + log[2];

/**
 * A first guess at a spot of bare paper beside the swatches, for a person to look at: among the places where paper
 * may be, one of the even ones that is brighter than three quarters of them. The very brightest may be a glare.
 * @returns null where no such place is in the picture, or the marks are at fault
 */
export function paperSpot(photo: ChartPhoto): Point | null {
  const map = homographyOf(photo.corners);
  if (!map || !checked(photo).ok) return null;
  const { picture, rows, columns, gap = 0.25 } = photo;
  const { upright, level } = readStrips({ rows, columns, gap }, stripReader({ picture, map }));
  const bright = [...upright, ...level]
    .filter((strip): strip is Strip => strip !== null && !strip.clipped && strip.share >= 0.5)
    .map((strip) => ({ strip, at: project(map, strip.u, strip.v) }))
    .filter(({ at: { x, y } }) => x >= 0 && y >= 0 && x <= picture.width && y <= picture.height)
    .toSorted((a, b) => brightnessOf(a.strip) - brightnessOf(b.strip));
  return bright[Math.floor(0.75 * (bright.length - 1))]?.at ?? null;
}
