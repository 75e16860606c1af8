import { labOf, lchOf } from "../../../../engine/colour/index.ts";
import type { StashItem } from "../../../../engine/supply/index.ts";

// Numbers within codes count as numbers: B2 goes before B10.
const { compare } = new Intl.Collator(undefined, { numeric: true });

/** Texts as people order them; an empty one last. */
export const compareTexts = (a: string, b: string): number =>
  a === "" || b === "" ? Number(a === "") - Number(b === "") : compare(a, b);

/** How the cells of a chart follow each other. */
export const chartOrders = ["code", "name", "hue"] as const;
export type ChartOrder = (typeof chartOrders)[number];

type Compare = (a: StashItem, b: StashItem) => number;

const byName: Compare = (a, b) => compareTexts(a.supply.name, b.supply.name) || (a.id < b.id ? -1 : 1);

const byCode: Compare = (a, b) =>
  compareTexts(a.supply.maker ?? "", b.supply.maker ?? "") ||
  compareTexts(a.supply.line ?? "", b.supply.line ?? "") ||
  compareTexts(a.supply.code ?? "", b.supply.code ?? "") ||
  byName(a, b);

/** C* below which a colour counts as a grey, without a hue to go by. The limit is ours. */
const greyBelow = 8;

type Place = Readonly<{ rank: number; hue: number; light: number }>;

/** Colours by hue from red on, then greys from light to dark, then what has no colour. */
function placeInHues({ supply }: StashItem): Place {
  const lab = labOf(supply.colour);
  if (!lab) return { rank: 2, hue: 0, light: 0 };
  const { c, h } = lchOf(lab);
  return c < greyBelow ? { rank: 1, hue: 0, light: -lab.l } : { rank: 0, hue: h, light: -lab.l };
}

function byHue(items: readonly StashItem[]): readonly StashItem[] {
  return items
    .map((item) => ({ item, at: placeInHues(item) }))
    .toSorted(
      (a, b) =>
        a.at.rank - b.at.rank || a.at.hue - b.at.hue || a.at.light - b.at.light || byName(a.item, b.item),
    )
    .map(({ item }) => item);
}

/** Things in the order their cells take. By code: maker by maker, line by line. */
export const inChartOrder = (items: readonly StashItem[], order: ChartOrder): readonly StashItem[] =>
  order === "hue" ? byHue(items) : items.toSorted(order === "code" ? byCode : byName);
