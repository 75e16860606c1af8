import type { Lab } from "../lab.ts";

/** A place in a picture, in pixels from its left and upper edge; pixel column 0 reaches from 0 to 1. */
export type Point = Readonly<{ x: number; y: number }>;

/** sRGB pixels, four bytes each (red, green, blue, alpha), row by row from the top: what a canvas gives. */
export type Picture = Readonly<{ width: number; height: number; data: Uint8ClampedArray }>;

export type Corners = readonly [Point, Point, Point, Point];

/** What a person says of the photo of a swatch chart. */
export type ChartPhoto = Readonly<{
  picture: Picture;
  /**
   * The outer corners of the four corner swatches, in order around the chart: where the first row starts, where
   * it ends, where the last row ends, where it starts. The photo may lie on its side or upside down.
   */
  corners: Corners;
  rows: number;
  columns: number;
  /** The bare space between two swatches ÷ the way from one swatch's start to the next one's; 0 to 0.6. */
  gap?: number | undefined;
  /** Spots of bare paper that the person pointed at; any number. */
  paper?: readonly Point[] | undefined;
  /** The paper's own colour; else a neutral L* of 96, as uncoated drawing paper often has. */
  white?: Lab | undefined;
}>;

/**
 * Why a swatch is not to be relied on.
 * `few-pixels` too small in the photo · `glare` light mirrored in it, or brighter than white · `shadow` an
 * edge of a shadow on it · `uneven` two colours in it, or one that varies widely · `clipped` a channel at its
 * end, so that the true colour lies beyond it · `empty` nothing but paper.
 */
export type Doubt = "few-pixels" | "glare" | "shadow" | "uneven" | "clipped" | "empty";

/** One swatch of a chart, as read. */
export type CellReading = Readonly<{
  /** From 0. */
  row: number;
  /** From 0. */
  column: number;
  /** The colour; null where there is any doubt. */
  lab: Lab | null;
  /** What the pixels came to even so, to be shown beside the doubts and kept only if the person says so. */
  seen: Lab | null;
  /** Root mean square CIEDE2000 from `seen` to the parts of the swatch that count, 0 up; null with `seen`. */
  spread: number | null;
  /** How far to rely on it, 0 to 1: share of parts that count × their evenness × agreement of the paper around. */
  certainty: number;
  doubts: readonly Doubt[];
}>;

/** What the light on the chart was, for whoever asks why. */
export type ChartLight = Readonly<{
  /** Places where bare paper was looked for, and how many of them the light rests on. */
  places: number;
  used: number;
  /** The paper as the photo shows it in the middle of the chart, before levelling: its tint is the light's. */
  paper: Lab;
  /** The brightest swatch's light ÷ the dimmest one's, 1 up. */
  ratio: number;
  /** Whether paper between the swatches was found; if not, the light was told from around the chart. */
  between: boolean;
}>;

/** Row by row, every swatch of the chart. */
export type ChartReading = Readonly<{ cells: readonly CellReading[]; light: ChartLight }>;
