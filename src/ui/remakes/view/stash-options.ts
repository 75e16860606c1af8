import type { StashItem } from "../../../engine/supply/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import { factsText } from "./facts.ts";

/** Something to choose from the stash: its name, what tells it apart, and where it is. */
export type StashOption = Readonly<{ value: string; label: string; more: string }>;

const isThere = ({ state, owned, sheetsLeft }: StashItem): boolean =>
  state !== "empty" && state !== "dried" && owned !== 0 && sheetsLeft !== 0;

/** Everything on the shelves that has not run out. */
export const stashOptions = ({ stash }: Pick<Workbook, "stash">): readonly StashOption[] =>
  (stash ?? []).filter(isThere).map(({ id, supply, place }) => ({
    value: id,
    label: supply.name,
    more: [factsText(supply), place].filter(Boolean).join(", "),
  }));
