import { fail, type Language, type Outcome, ok } from "../../record/index.ts";
import type { ChartPhoto, Point } from "./shapes.ts";
import { type ChartFault, chartFaultsIn, chartPlaces } from "./words/index.ts";

/** What is wrong; null if nothing is. */
type Wrong = ChartFault | null;

/** What is wrong as a fault, in words. */
export function chartFault(what: ChartFault, language: Language) {
  const { problem, remedy } = chartFaultsIn[language][what];
  return fail(chartPlaces[what], problem, remedy);
}

/** A chart this long either way is no swatch chart; it also bounds the work. */
const mostSwatches = 60;
const widestGap = 0.6;

const isCount = (value: number): boolean => Number.isInteger(value) && value >= 1;

function wrongCount(of: "rows" | "columns", count: number): Wrong {
  if (!isCount(count)) return `no-${of}`;
  return count > mostSwatches ? `many-${of}` : null;
}

function wrongPicture({ picture: { width, height, data } }: ChartPhoto): Wrong {
  const isWhole = isCount(width) && isCount(height) && data.length === 4 * width * height;
  return isWhole ? null : "broken-photo";
}

const isIn = ({ picture }: ChartPhoto, { x, y }: Point): boolean =>
  x >= 0 && y >= 0 && x <= picture.width && y <= picture.height;

function outside(photo: ChartPhoto): Wrong {
  if (!photo.corners.every((corner) => isIn(photo, corner))) return "corner-outside";
  return (photo.paper ?? []).every((spot) => isIn(photo, spot)) ? null : "spot-outside";
}

/** Twice the signed area of a corner's triangle with its neighbours: above 0 where the outline turns clockwise. */
function turn(before: Point, at: Point, after: Point): number {
  return (at.x - before.x) * (after.y - at.y) - (at.y - before.y) * (after.x - at.x);
}

/** An outline that turns the same way at every corner neither crosses itself nor has a dent. */
function crossing({ corners: [a, b, c, d] }: ChartPhoto): Wrong {
  const turns = [turn(d, a, b), turn(a, b, c), turn(b, c, d), turn(c, d, a)];
  if (turns.every((one) => one > 0) || turns.every((one) => one < 0)) return null;
  return "corners-cross";
}

/** Under 36 pixels there is no steady mean: at the least 6 either way, of the middle 64 % of a swatch. */
const fewestPixelsAcross = 9.5;

function tooSmall({ corners: [a, b, c, d], rows, columns, gap = 0.25 }: ChartPhoto): Wrong {
  const length = (p: Point, q: Point) => Math.hypot(p.x - q.x, p.y - q.y);
  const width = ((length(a, b) + length(d, c)) / 2 / (columns - gap)) * (1 - gap);
  const height = ((length(b, c) + length(a, d)) / 2 / (rows - gap)) * (1 - gap);
  return Math.min(width, height) >= fewestPixelsAcross ? null : "too-small";
}

function wrongMeasures({ gap = 0, white }: ChartPhoto): Wrong {
  if (!(gap >= 0 && gap <= widestGap)) return "wrong-gap";
  return white && !(white.l >= 50 && white.l <= 100) ? "dark-white" : null;
}

/** @returns the photo as it is, or the first thing about it that a person has to put right */
export function checked(photo: ChartPhoto, language: Language = "en"): Outcome<ChartPhoto> {
  const wrong =
    wrongPicture(photo) ??
    wrongCount("rows", photo.rows) ??
    wrongCount("columns", photo.columns) ??
    wrongMeasures(photo) ??
    outside(photo) ??
    crossing(photo) ??
    tooSmall(photo);
  return wrong ? chartFault(wrong, language) : ok(photo);
}
