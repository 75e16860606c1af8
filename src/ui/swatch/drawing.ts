/** A colour as written in a drawing, or the name of a surface whose tone the theme decides. */
export type Paint = `#${string}` | Surface;

/** What swatches lie on and are ruled with; everything else in a drawing is the same in every theme. */
export type Surface = "chip" | "board" | "edge" | "rule" | "seam";

/** One path. Lengths in px of the drawing; no fill or stroke means none. */
export type Mark = Readonly<{
  d: string;
  fill?: Paint;
  /** Rings cut holes in each other instead of adding up. */
  evenOdd?: true;
  stroke?: Paint;
  strokeWidth?: number;
  /** Round ends and corners, as a pen leaves them. */
  round?: true;
  dash?: string;
}>;

/** A finished swatch: the ground first, then marks from the bottom up. */
export type SwatchDrawing = Readonly<{ width: number; height: number; marks: readonly Mark[] }>;

/** Two drawings of full width, each seen through its own window, joined at `seam` px from the left. */
export type PairDrawing = Readonly<{
  width: number;
  height: number;
  seam: number;
  /** What both halves lie on, under both windows: a ground of its own for each would show at the seam. */
  ground: readonly Mark[];
  left: readonly Mark[];
  right: readonly Mark[];
  /** Drawn over both: edges and the cut. */
  over: readonly Mark[];
}>;
