import type { StashItem } from "../../../../engine/supply/index.ts";
import { printWords as words } from "../../../words/print.ts";
import { stashWords } from "../../../words/stash.ts";
import { factsText, placeOf, stateOf } from "../../view/known.ts";
import { haveText } from "../../view/rows.ts";
import { compareTexts } from "./order.ts";

/** What the list goes by: where things live, or who made them. */
export type By = "place" | "maker";

/** A thing on the list, ready to print. `where`: the maker on a list by place, the place on one by maker. */
export type ListRow = Readonly<{
  id: string;
  name: string;
  facts: string;
  code: string;
  where: string;
  have: string;
  /** "" for what is fine. */
  state: string;
}>;

/** What stands together under one head that comes again on each sheet. */
export type ListGroup = Readonly<{ key: string; title: string; rows: readonly ListRow[] }>;

const makerOf = ({ supply }: StashItem): string =>
  [supply.maker, supply.line].filter((part) => (part ?? "").trim() !== "").join(", ");

function rowOf(item: StashItem, by: By): ListRow {
  const state = stateOf(item);
  return {
    id: item.id,
    name: item.supply.name,
    facts: factsText(item.supply),
    code: item.supply.code ?? "",
    where: by === "place" ? makerOf(item) : placeOf(item),
    have: haveText(item),
    state: state === "ok" ? "" : stashWords.states[state],
  };
}

const orders: Readonly<Record<By, (a: ListRow, b: ListRow) => number>> = {
  place: (a, b) => compareTexts(a.name, b.name) || compareTexts(a.code, b.code) || (a.id < b.id ? -1 : 1),
  maker: (a, b) => compareTexts(a.code, b.code) || compareTexts(a.name, b.name) || (a.id < b.id ? -1 : 1),
};

/** What has no place, or nobody is known to have made, comes last. */
const byTitle = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number =>
  a === "" || b === "" ? Number(a === "") - Number(b === "") : compareTexts(a, b);

/** The list by place, each by name; or by maker and line, each by code. */
export function listGroups(items: readonly StashItem[], by: By): readonly ListGroup[] {
  const groups = new Map<string, ListRow[]>();
  for (const item of items) {
    const key = by === "place" ? placeOf(item) : makerOf(item);
    const rows = groups.get(key);
    if (rows) rows.push(rowOf(item, by));
    else groups.set(key, [rowOf(item, by)]);
  }
  return [...groups].toSorted(byTitle).map(([key, rows]) => ({
    key,
    title: key || words.list.without[by],
    rows: rows.toSorted(orders[by]),
  }));
}

/** The first `limit` rows, with the heads they stand under. */
export function firstRows(groups: readonly ListGroup[], limit: number): readonly ListGroup[] {
  let left = limit;
  return groups.flatMap((group) => {
    const rows = group.rows.slice(0, left);
    left -= rows.length;
    return rows.length > 0 ? [{ ...group, rows }] : [];
  });
}
