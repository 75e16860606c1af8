import { fail, type Outcome, ok } from "../../record/index.ts";
import type { ChartPhoto, Point } from "./shapes.ts";

/** What is wrong; null if nothing is. */
type Wrong = ReturnType<typeof fail> | null;

/** A chart this long either way is no swatch chart; it also bounds the work. */
const mostSwatches = 60;
const widestGap = 0.6;

const isCount = (value: number): boolean => Number.isInteger(value) && value >= 1;

function wrongCount(place: string, count: number): Wrong {
  if (!isCount(count)) return fail(place, "less than one", "write a whole number from 1 up");
  return count > mostSwatches
    ? fail(place, "more than 60", "photograph the chart in parts, and read one after the other")
    : null;
}

function wrongPicture({ picture: { width, height, data } }: ChartPhoto): Wrong {
  const isWhole = isCount(width) && isCount(height) && data.length === 4 * width * height;
  return isWhole ? null : fail("photo", "the picture is not whole", "choose it again, or take it again");
}

const isIn = ({ picture }: ChartPhoto, { x, y }: Point): boolean =>
  x >= 0 && y >= 0 && x <= picture.width && y <= picture.height;

function outside(photo: ChartPhoto): Wrong {
  if (!photo.corners.every((corner) => isIn(photo, corner)))
    return fail("corners", "a corner lies outside the picture", "mark all four inside it");
  if (!(photo.paper ?? []).every((spot) => isIn(photo, spot)))
    return fail("paper", "a spot lies outside the picture", "mark bare paper inside it");
  return null;
}

/** Twice the signed area of a corner's triangle with its neighbours: above 0 where the outline turns clockwise. */
function turn(before: Point, at: Point, after: Point): number {
  return (at.x - before.x) * (after.y - at.y) - (at.y - before.y) * (after.x - at.x);
}

/** An outline that turns the same way at every corner neither crosses itself nor has a dent. */
function crossing({ corners: [a, b, c, d] }: ChartPhoto): Wrong {
  const turns = [turn(d, a, b), turn(a, b, c), turn(b, c, d), turn(c, d, a)];
  if (turns.every((one) => one > 0) || turns.every((one) => one < 0)) return null;
  return fail("corners", "the corners cross, or lie on one line", "mark them in order around the chart");
}

/** Under 36 pixels there is no steady mean: at the least 6 either way, of the middle 64 % of a swatch. */
const fewestPixelsAcross = 9.5;

function tooSmall({ corners: [a, b, c, d], rows, columns, gap = 0.25 }: ChartPhoto): Wrong {
  const length = (p: Point, q: Point) => Math.hypot(p.x - q.x, p.y - q.y);
  const width = ((length(a, b) + length(d, c)) / 2 / (columns - gap)) * (1 - gap);
  const height = ((length(b, c) + length(a, d)) / 2 / (rows - gap)) * (1 - gap);
  if (Math.min(width, height) >= fewestPixelsAcross) return null;
  return fail("corners", "the swatches are too small in this picture", "take it from nearer by");
}

function wrongMeasures({ gap = 0, white }: ChartPhoto): Wrong {
  if (!(gap >= 0 && gap <= widestGap))
    return fail("gap", "not between 0 and 0.6", "write the bare share of the way between two swatches");
  if (white && !(white.l >= 50 && white.l <= 100))
    return fail("white", "too dark for white paper", "write a lightness from 50 to 100");
  return null;
}

/** @returns the photo as it is, or the first thing about it that a person has to put right */
export function checked(photo: ChartPhoto): Outcome<ChartPhoto> {
  const wrong =
    wrongPicture(photo) ??
    wrongCount("rows", photo.rows) ??
    wrongCount("columns", photo.columns) ??
    wrongMeasures(photo) ??
    outside(photo) ??
    crossing(photo) ??
    tooSmall(photo);
  return wrong ?? ok(photo);
}
