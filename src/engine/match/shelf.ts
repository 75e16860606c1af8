import { type Kinship, type Relations, relationsOf, type StashItem } from "../supply/index.ts";
import { type TraitValues, traitValuesOf } from "./traitValues.ts";

/** A stash made ready to be compared with many lines; items in order of id, so that place settles ties. */
export type Shelf = Readonly<{
  items: readonly StashItem[];
  values: readonly TraitValues[];
  relations: Relations;
  placeOf: ReadonlyMap<string, number>;
}>;

/** Plain order of code units: the same on every machine, whatever its language. */
export const byCodeUnits = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

export function shelfOf(stash: readonly StashItem[], kinships: readonly Kinship[]): Shelf {
  const items = stash.toSorted((a, b) => byCodeUnits(a.id, b.id));
  return {
    items,
    values: items.map(({ supply }) => traitValuesOf(supply)),
    relations: relationsOf(items, kinships),
    placeOf: new Map(items.map(({ id }, place) => [id, place])),
  };
}
