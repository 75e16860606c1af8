import type { StashItem } from "../../../engine/supply/index.ts";
import { stockOf } from "../../../store/index.ts";
import { format } from "../../words/index.ts";
import { stashWords as words } from "../../words/stash.ts";
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

/** A row of the list, made when it is drawn: of thousands but a few are. */
export function rowOf({ item, facts, colour }: Known, apart: number | undefined): Row {
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
