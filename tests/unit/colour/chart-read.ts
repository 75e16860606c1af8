import {
  type CellReading,
  type ChartPhoto,
  type ChartReading,
  deltaE2000,
  type Picture,
  readChart,
} from "../../../src/engine/colour/index.ts";
import { type ChartScene, cameraOf, glareAt, photograph, shadowAt } from "./chart-scene.ts";

/** What a person would say of a scene's photo. */
export const photoOf = (scene: ChartScene, picture: Picture = photograph(scene)): ChartPhoto => ({
  picture,
  corners: cameraOf(scene).corners,
  rows: scene.rows,
  columns: scene.columns,
  gap: scene.gap,
});

/** The reading of a photo that has to be readable. */
export function readingOf(photo: ChartPhoto): ChartReading {
  const read = readChart(photo);
  if (!read.ok) throw new Error(`${read.fault.place}: ${read.fault.problem}`);
  return read.value;
}

/** CIEDE2000 between each swatch as read and as it is; those in doubt are left out. */
export const missesOf = (scene: ChartScene, cells: readonly CellReading[]): readonly number[] =>
  cells.flatMap(({ lab }, at) => {
    const truth = scene.labs[at];
    return lab && truth ? deltaE2000(lab, truth) : [];
  });

/** The value that a share of all lie below. */
export const quantile = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[Math.floor(share * values.length)] ?? Number.NaN;

/** Whether glare lies on a swatch, an edge of the shadow on or beside it, or its colour in this light is beyond sRGB. */
export function isSpoilt(scene: ChartScene, { row, column }: CellReading): boolean {
  const places = Array.from({ length: 400 }, (_, at) => [at % 20, Math.floor(at / 20)] as const);
  const margin = scene.gap;
  const reach = 1 - scene.gap + 2 * margin;
  const shadows = places.map(([i, j]) =>
    shadowAt(scene, column - margin + (reach * (i + 0.5)) / 20, row - margin + (reach * (j + 0.5)) / 20),
  );
  const glared = places.some(([i, j]) =>
    scene.glare.some(
      (one) =>
        glareAt(one, column + ((1 - scene.gap) * (i + 0.5)) / 20, row + ((1 - scene.gap) * (j + 0.5)) / 20) >
        0.05,
    ),
  );
  return glared || Math.max(...shadows) - Math.min(...shadows) > 0.1;
}
