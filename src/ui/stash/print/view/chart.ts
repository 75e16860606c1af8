import { type Family, families, type StashItem } from "../../../../engine/supply/index.ts";
import { stashWords } from "../../../words/stash.ts";
import { placeOf } from "../../view/known.ts";
import { brokenInto } from "./label.ts";
import type { Grid } from "./layout.ts";
import { type ChartOrder, inChartOrder } from "./order.ts";

/** What stands below a cell, line by line; nothing for a blank one. */
export type CellLabel = readonly string[];

/** One sheet: the labels of its cells, row by row. Cells beyond them are blank. */
export type ChartSheet = readonly CellLabel[];

/** What leaves a colour behind. */
const colouring: ReadonlySet<Family> = new Set(
  families.filter((family) => !["brush", "eraser", "paper", "tool"].includes(family)),
);

export const leavesColour = ({ supply }: StashItem): boolean => colouring.has(supply.family);

/** The size of a label's letters in mm (6.5 pt), and the room to its neighbour. */
export const letterMm = 2.3;
const apartMm = 1.6;

function labelOf(item: StashItem, { step }: Grid): CellLabel {
  const room = (step.x - apartMm) / letterMm;
  const code = (item.supply.code ?? "").trim();
  const facts = [code === "" ? "" : stashWords.item.code(code), placeOf(item)].filter(Boolean).join(", ");
  const below = brokenInto(facts, room, 1);
  return [...brokenInto(item.supply.name, room, 3 - below.length), ...below];
}

/** Things sheet by sheet, in order, each with its label. */
export function chartSheets(
  items: readonly StashItem[],
  order: ChartOrder,
  grid: Grid,
): readonly ChartSheet[] {
  const labels = inChartOrder(items, order).map((item) => labelOf(item, grid));
  const size = grid.rows * grid.columns;
  return Array.from({ length: Math.ceil(labels.length / size) }, (_, at) =>
    labels.slice(at * size, (at + 1) * size),
  );
}

/** One sheet of blank cells. */
export const blankSheets: readonly ChartSheet[] = [[]];
