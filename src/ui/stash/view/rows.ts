import type { StashItem } from "../../../engine/supply/index.ts";
import { stockOf } from "../../../store/index.ts";
import { format } from "../../words/index.ts";
import { stashWords as words } from "../../words/stash.ts";
import type { Found } from "./find.ts";
import { type Known, placeOf, stateOf } from "./known.ts";

/** One row of the list. */
export type Row = Readonly<{
  item: StashItem;
  name: string;
  facts: string;
  where: string;
  have: string;
  state: string;
  isWorn: boolean;
}>;

const sheetsText = (item: StashItem): string => {
  if (item.supply.family !== "paper") return "";
  const sheets = stockOf(item, "sheetsLeft");
  return sheets > 0 || item.sheetsLeft === 0 ? words.item.sheets(format.count(sheets), sheets === 1) : "";
};

/** "1", "2, 14 sheets left". */
export const haveText = (item: StashItem): string =>
  [format.count(stockOf(item, "owned")), sheetsText(item)].filter((part) => part !== "").join(", ");

function rowOf({ item, facts, colour }: Known, apart: number | undefined): Row {
  const more = [
    facts,
    colour?.said ?? "",
    apart === undefined ? "" : words.apart(format.number(apart, 1, true)),
  ];
  return {
    item,
    name: item.supply.name,
    facts: [item.supply.maker ?? "", ...more].filter((part) => part !== "").join(", "),
    where: placeOf(item),
    have: haveText(item),
    state: words.states[stateOf(item)],
    isWorn: stateOf(item) !== "ok",
  };
}

const byName = (a: Known, b: Known): number =>
  a.item.supply.name.localeCompare(b.item.supply.name) || (a.item.id < b.item.id ? -1 : 1);

/** What fits, by name; nearest first where a colour was typed. */
export function rowsOf(stash: readonly Known[], found: Found): readonly Row[] {
  const fitting = stash.filter(({ item }) => found.ids.has(item.id));
  const { apart } = found;
  const ordered = apart
    ? fitting.toSorted((a, b) => (apart.get(a.item.id) ?? 0) - (apart.get(b.item.id) ?? 0))
    : fitting.toSorted(byName);
  return ordered.map((known) => rowOf(known, apart?.get(known.item.id)));
}
