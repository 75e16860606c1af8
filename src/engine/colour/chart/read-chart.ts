import { type Language, type Outcome, ok } from "../../record/index.ts";
import { type Lab, labFromLinear, linearFromLab } from "../lab.ts";
import type { Triple } from "../matrix.ts";
import { type Around, lightAround } from "./around.ts";
import { chartFault, checked } from "./check.ts";
import { homographyOf } from "./homography.ts";
import { judge } from "./judge.ts";
import { cellBox, type Grid } from "./layout.ts";
import { isPaper, type Light, readLight } from "./light.ts";
import { type Level, partReader } from "./parts.ts";
import type { CellReading, ChartLight, ChartPhoto, ChartReading } from "./shapes.ts";
import type { Scene } from "./sites.ts";
import type { Strip } from "./strips.ts";
import { departure } from "./surface.ts";

const usualGap = 0.25;
/** Uncoated drawing paper is about this light; common practice, no source. */
const usualWhite: Lab = { white: "D65", l: 96, a: 0, b: 0 };

const exponents = ([r, g, b]: Triple): Triple => [Math.exp(r), Math.exp(g), Math.exp(b)];

/** What to multiply linear light by, so that bare paper comes to its white. */
const levelFor =
  ({ surface }: Light, { factor }: Around, white: Triple): Level =>
  (u, v) => {
    const light = exponents(surface(u, v));
    return [
      white[0] / (light[0] * factor[0]),
      white[1] / (light[1] * factor[1]),
      white[2] / (light[2] * factor[2]),
    ];
  };

const cellsOf = ({ rows, columns }: Grid) =>
  Array.from({ length: rows * columns }, (_, at) => ({
    row: Math.floor(at / columns),
    column: at % columns,
  }));

type Sight = Readonly<{ scene: Scene; grid: Grid; light: Light; white: Lab }>;

function readCells({ scene, grid, light, white }: Sight) {
  const read = partReader(scene);
  const linearWhite = linearFromLab(white);
  return cellsOf(grid).map(({ row, column }) => {
    const around = lightAround(grid, light, row, column);
    const seen = read(cellBox(grid, row, column), levelFor(light, around, linearWhite));
    const cell: CellReading = { row, column, ...judge({ ...seen, around, white }) };
    return { cell, around };
  });
}

/** What the light was: how many places told it, its tint, and how unevenly it fell. */
function lightOf({ grid, light }: Sight, arounds: readonly Around[]): ChartLight {
  const strips = [...light.strips.upright, ...light.strips.level].filter((strip): strip is Strip => !!strip);
  const greens = cellsOf(grid).map(({ row, column }, at) => {
    const [, green] = light.surface((column + 0.5) / grid.columns, (row + 0.5) / grid.rows);
    return Math.exp(green) * (arounds[at]?.factor[1] ?? 1);
  });
  return {
    places: strips.length,
    used: strips.filter((strip) => !strip.clipped && isPaper(departure(strip, light.surface))).length,
    paper: labFromLinear(exponents(light.surface(0.5, 0.5))),
    ratio: Math.max(...greens) / Math.min(...greens),
    between: light.between,
  };
}

/**
 * The colours of a swatch chart, from one photo of it. The chart is squared up by its corners; the light is told
 * from the bare paper around each swatch, in linear light and channel by channel, so that its fall-off, its
 * tint and a shadow over whole swatches are levelled; each swatch is the robust mean of its parts, which glare,
 * an edge of a shadow, bare paper and specks do not pull. Reads some hundreds of pixels a swatch, whatever the
 * picture's size, and is safe to run in a worker: what goes in and comes out can be cloned.
 *
 * Lab is under D65, as elsewhere. Takes the picture's bytes for sRGB; a camera's own contrast curve or beautifying is
 * not undone, nor is a lens's barrel.
 * @returns every swatch, row by row; one with any doubt has no `lab`. Or a fault at `photo`, `corners`, `rows`,
 *   `columns`, `gap`, `white` or `paper`: a picture that is not whole, corners that cross or lie outside, swatches
 *   under 10 pixels wide, no bare paper, or paper that the camera cut off
 * @see Hartley & Zisserman (2004), Multiple View Geometry, 2nd ed., section 4.1; IEC 61966-2-1 (sRGB);
 *   Huber (1964) and Beaton & Tukey (1974) for the robust means
 */
export function readChart(photo: ChartPhoto, language: Language = "en"): Outcome<ChartReading> {
  const { gap = usualGap, white = usualWhite, paper = [], picture, rows, columns } = photo;
  const whole = checked(photo, language);
  if (!whole.ok) return whole;
  const map = homographyOf(photo.corners);
  if (!map) return chartFault("corners-cross", language);

  const [scene, grid] = [
    { picture, map },
    { rows, columns, gap },
  ];
  const light = readLight(scene, grid, paper);
  if (typeof light === "string") return chartFault(light, language);
  const sight = { scene, grid, light, white };
  const read = readCells(sight);
  return ok({
    cells: read.map(({ cell }) => cell),
    light: lightOf(
      sight,
      read.map(({ around }) => around),
    ),
  });
}
