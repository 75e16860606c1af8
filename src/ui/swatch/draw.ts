import { deltaE2000, type Lab, labOf } from "../../engine/colour/index.ts";
import type { Supply } from "../../engine/supply/index.ts";
import type { Mark, Surface, SwatchDrawing } from "./drawing.ts";
import { drawBrush } from "./families/brush.ts";
import { drawColourPencil } from "./families/colour-pencil.ts";
import { drawEraser } from "./families/eraser.ts";
import { drawGraphite } from "./families/graphite.ts";
import { drawInk } from "./families/ink.ts";
import { drawLiner } from "./families/liner.ts";
import { drawMarker } from "./families/marker.ts";
import { drawOther } from "./families/other.ts";
import { drawPaint } from "./families/paint.ts";
import { drawPaper } from "./families/paper.ts";
import { drawPastel } from "./families/pastel.ts";
import { drawTool } from "./families/tool.ts";
import { type Page, pageOf, paper } from "./page.ts";
import { rectangle } from "./path.ts";
import { drawUnknown } from "./unknown.ts";

export type SwatchSize = Readonly<{
  width: number;
  height: number;
  /** How many times true size things measured in mm are shown; 1 unless on cards. */
  scale?: number | undefined;
}>;

/** Paper and erasers are pale themselves; so is a colour this near to the chip's paper. */
const paleWithin = 9;

/** What a supply is laid on, so that it can be seen: the chip's paper, or a darker board. */
export function groundOf(supply: Supply): Surface {
  if (supply.family === "paper" || supply.family === "eraser") return "board";
  const colour = labOf(supply.colour);
  return colour && deltaE2000(colour, paper) < paleWithin ? "board" : "chip";
}

function withColour(supply: Supply, colour: Lab, page: Page): readonly Mark[] | null {
  switch (supply.family) {
    case "marker":
      return drawMarker(supply, colour, page);
    case "liner":
      return drawLiner(supply, colour, page);
    case "colour-pencil":
      return drawColourPencil(supply, colour, page);
    case "paint":
      return drawPaint(supply, colour, page);
    case "ink":
      return drawInk(supply, colour, page);
    case "pastel":
      return drawPastel(supply, colour, page);
    default:
      return null;
  }
}

function withOrWithout(supply: Supply, colour: Lab | null, page: Page): readonly Mark[] | null {
  switch (supply.family) {
    case "graphite":
      return drawGraphite(supply, colour, page);
    case "brush":
      return drawBrush(supply, colour, page);
    case "eraser":
      return drawEraser(supply, colour, page);
    case "paper":
      return drawPaper(supply, colour, page);
    case "tool":
      return drawTool(supply, colour, page);
    case "other":
      return drawOther(supply, colour, page);
    default:
      return null;
  }
}

/** The marks of a supply on a page, without their ground. */
export function marksOf(supply: Supply, page: Page): readonly Mark[] {
  const colour = labOf(supply.colour);
  const coloured = colour ? withColour(supply, colour, page) : drawUnknown(supply, page);
  return coloured ?? withOrWithout(supply, colour, page) ?? [];
}

/** The page a supply is drawn on: the same seed and family always give the same chance. */
export const pageFor = (supply: Supply, size: SwatchSize, seed: string, ground = groundOf(supply)): Page =>
  pageOf(size, `${seed}/${supply.family}`, ground);

export const groundMark = (ground: Surface, width: number, height: number): Mark => ({
  d: rectangle({ x: 0, y: 0, w: width, h: height }),
  fill: ground,
});

/** The chip's edge. */
export const edgeMark = (width: number, height: number): Mark => ({
  d: rectangle({ x: 0.5, y: 0.5, w: width - 1, h: height - 1 }),
  stroke: "edge",
  strokeWidth: 1,
});

/**
 * One supply as it would mark paper, drawn by its family's hand from its traits.
 * @param options size in px, above 0; `seed` is the item's id, so that an item always has the same marks
 */
export function drawSwatch(supply: Supply, options: SwatchSize & Readonly<{ seed: string }>): SwatchDrawing {
  const page = pageFor(supply, options, options.seed);
  const { width, height } = options;
  return {
    width,
    height,
    marks: [groundMark(page.ground, width, height), ...marksOf(supply, page), edgeMark(width, height)],
  };
}
