import { type Corners, type Lab, type Point, swatchOutlines } from "../../../../engine/colour/index.ts";
import type { ChartMarks } from "../../../../workers/index.ts";

/** A photo's size in pixels, the right way up; all places are in these pixels. */
export type Size = Readonly<{ width: number; height: number }>;

/** The bare share of the way between two swatches, by name: nobody measures it, and the reading takes it coarsely. */
const gaps = { none: 0, little: 0.1, some: 0.25, much: 0.4 } as const;
export type Gap = keyof typeof gaps;
export const gapNames: readonly Gap[] = ["none", "little", "some", "much"];

/** What paper for painting on looks like; common practice, no source. */
const whites = {
  white: { white: "D65", l: 96, a: 0, b: 0 },
  cream: { white: "D65", l: 93, a: 1, b: 8 },
} as const satisfies Readonly<Record<string, Lab>>;
export type White = keyof typeof whites;
export const whiteNames: readonly White[] = ["white", "cream"];

/** What a person says of a photo, as it stands in the fields. */
export type Marks = Readonly<{
  corners: Corners;
  paper: readonly Point[];
  rows: string;
  columns: string;
  gap: Gap;
  white: White;
}>;

const inset = 0.12;

/** Where marking starts: the corners a little inside the photo's own, so that all of them are in sight. */
export function firstMarks({ width, height }: Size): Marks {
  const [left, top, right, foot] = [inset * width, inset * height, (1 - inset) * width, (1 - inset) * height];
  return {
    corners: [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: foot },
      { x: left, y: foot },
    ],
    paper: [],
    ...{ rows: "4", columns: "6", gap: "some", white: "white" },
  };
}

const mostSwatches = 60;

/** A count as typed; null where it is none from 1 to 60. */
export function countIn(text: string): number | null {
  const count = /^\s*\d{1,3}\s*$/.test(text) ? Number(text) : 0;
  return count >= 1 && count <= mostSwatches ? count : null;
}

/** What the reader asks; null where rows or columns are not said. */
export function asked({ corners, paper, rows, columns, gap, white }: Marks): ChartMarks | null {
  const [down, across] = [countIn(rows), countIn(columns)];
  if (down === null || across === null) return null;
  return { corners, paper, rows: down, columns: across, gap: gaps[gap], white: whites[white] };
}

/** Where each swatch lies by the marks; none while they say too little. */
export function outlinesOf(marks: Marks): readonly Corners[] {
  const said = asked(marks);
  return said ? swatchOutlines(said) : [];
}

const within = (value: number, most: number): number => Math.min(most, Math.max(0, value));

/** A place in the photo, the nearest one where it lies outside. */
export const keptIn = ({ width, height }: Size, { x, y }: Point): Point => ({
  x: within(x, width),
  y: within(y, height),
});

/** The mark that is meant: one of the four corners, or a spot of bare paper. */
export type Mark = Readonly<{ kind: "corner" | "paper"; at: number }>;

export const placeOf = ({ corners, paper }: Marks, { kind, at }: Mark): Point | null =>
  (kind === "corner" ? corners[at] : paper[at]) ?? null;

/** The marks with one of them elsewhere. */
export function withMark(marks: Marks, { kind, at }: Mark, to: Point): Marks {
  if (kind === "paper") return { ...marks, paper: marks.paper.with(at, to) };
  const [a, b, c, d] = marks.corners;
  return { ...marks, corners: [at === 0 ? to : a, at === 1 ? to : b, at === 2 ? to : c, at === 3 ? to : d] };
}

/** The corner that lies nearest to a place. */
export function nearestCorner({ corners }: Marks, { x, y }: Point): Mark {
  const away = corners.map((corner) => Math.hypot(corner.x - x, corner.y - y));
  return { kind: "corner", at: away.indexOf(Math.min(...away)) };
}

const directions: ReadonlyMap<string, Point> = new Map([
  ["ArrowLeft", { x: -1, y: 0 }],
  ["ArrowRight", { x: 1, y: 0 }],
  ["ArrowUp", { x: 0, y: -1 }],
  ["ArrowDown", { x: 0, y: 1 }],
]);

/** A step is a five-hundredth of the photo's longer side; a long one, with Shift, ten of them. */
const [step, longStep] = [1 / 500, 1 / 50];

/** Where an arrow key takes a mark; null for other keys. */
export function steppedBy(key: string, isLong: boolean, from: Point, size: Size): Point | null {
  const to = directions.get(key);
  if (!to) return null;
  const by = (isLong ? longStep : step) * Math.max(size.width, size.height);
  return keptIn(size, { x: from.x + to.x * by, y: from.y + to.y * by });
}
