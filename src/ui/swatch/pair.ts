import { labOf } from "../../engine/colour/index.ts";
import type { Supply, SupplyOf } from "../../engine/supply/index.ts";
import { edgeMark, groundMark, groundOf, marksOf, pageFor, type SwatchSize } from "./draw.ts";
import type { Mark, PairDrawing, Surface } from "./drawing.ts";
import { drawPaper, fitOf, sheetBox, sheetOf } from "./families/paper.ts";
import { dash, rectangle } from "./path.ts";
import { hex, lab } from "./shade.ts";

/** A supply with the id that its marks are seeded by. */
export type SwatchItem = Readonly<{ id: string; supply: Supply }>;

type Halves = Readonly<{ left: readonly Mark[]; right: readonly Mark[]; over: readonly Mark[] }>;

const cutLine = hex(lab(25, -2, 1));

/** Two sheets on one scale, both in the middle, the kit's outline dashed where they differ: that is the cut. */
function sheets(kit: SupplyOf<"paper">, standIn: SupplyOf<"paper">, size: SwatchSize, seed: string): Halves {
  const page = pageFor(kit, size, seed);
  const perMm = Math.min(fitOf(kit, page), fitOf(standIn, page));
  const draw = (supply: SupplyOf<"paper">) =>
    drawPaper(supply, labOf(supply.colour), pageFor(supply, size, seed), perMm);
  const [a, b] = [sheetOf(kit), sheetOf(standIn)];
  const differ = a && b && (a[0] !== b[0] || a[1] !== b[1]);
  const cut: Mark = {
    d: rectangle(sheetBox(kit, page, perMm)),
    stroke: cutLine,
    strokeWidth: 1,
    dash: "4 3",
  };
  return { left: draw(kit), right: differ ? [...draw(standIn), cut] : draw(standIn), over: [] };
}

/** A half for nothing: the bare page, dashed. */
const gap = (seam: number, { width, height }: SwatchSize): Mark => ({
  d: rectangle({ x: seam + 0.5, y: 0.5, w: width - seam - 1, h: height - 1 }),
  stroke: "rule",
  strokeWidth: 1,
  dash: "4 3",
});

function halves(
  kit: Supply,
  standIn: SwatchItem | null,
  size: SwatchSize,
  seed: string,
  ground: Surface,
): Halves {
  const left = () => marksOf(kit, pageFor(kit, size, seed, ground));
  if (!standIn) return { left: left(), right: [], over: [] };
  const other = standIn.supply;
  if (kit.family === "paper" && other.family === "paper") return sheets(kit, other, size, seed);
  const same = kit.family === other.family;
  return {
    left: left(),
    right: marksOf(other, pageFor(other, size, same ? seed : standIn.id, ground)),
    over: [],
  };
}

/** One ground for both halves: a board if either is too pale for the chip. */
function sharedGround(kit: Supply, standIn: SwatchItem | null): Surface {
  const grounds = [groundOf(kit), ...(standIn ? [groundOf(standIn.supply)] : [])];
  return grounds.includes("board") ? "board" : "chip";
}

/**
 * A kit's supply and its stand-in as one swatch cut down the middle. Two of one family share a seed: one
 * stroke that changes colour at the seam. Without a stand-in the right half stays bare.
 */
export function drawPair(kit: SwatchItem, standIn: SwatchItem | null, size: SwatchSize): PairDrawing {
  const { width, height } = size;
  const seam = Math.round(width / 2);
  const ground = sharedGround(kit.supply, standIn);
  const { left, right, over } = halves(kit.supply, standIn, size, kit.id, ground);
  return {
    width,
    height,
    seam,
    ground: [groundMark(ground, standIn ? width : seam, height)],
    left,
    right,
    over: [
      ...over,
      edgeMark(standIn ? width : seam, height),
      ...(standIn
        ? [{ d: dash(seam, 0, 0, height), stroke: "seam", strokeWidth: 1 } as const]
        : [gap(seam, size)]),
    ],
  };
}
