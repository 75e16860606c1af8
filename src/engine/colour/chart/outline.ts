import { homographyOf, project } from "./homography.ts";
import { stepOf } from "./layout.ts";
import type { ChartPhoto, Corners } from "./shapes.ts";

/** What says where the swatches of a chart lie in its photo. */
export type Marked = Pick<ChartPhoto, "corners" | "rows" | "columns" | "gap">;

/**
 * Where each swatch lies in the picture, row by row, by its own four corners in the order of the chart's: what a
 * person looks at while marking.
 * @returns none when the corners do not span an area
 */
export function swatchOutlines({ corners, rows, columns, gap = 0.25 }: Marked): readonly Corners[] {
  const map = homographyOf(corners);
  if (!map) return [];
  const [stepU, stepV] = [stepOf(columns, gap), stepOf(rows, gap)];
  return Array.from({ length: rows * columns }, (_, at): Corners => {
    const [u, v] = [(at % columns) * stepU, Math.floor(at / columns) * stepV];
    const [endU, endV] = [u + (1 - gap) * stepU, v + (1 - gap) * stepV];
    return [project(map, u, v), project(map, endU, v), project(map, endU, endV), project(map, u, endV)];
  });
}
