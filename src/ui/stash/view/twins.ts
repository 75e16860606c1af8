import type { StashItem } from "../../../engine/supply/index.ts";
import { type ActDraft, editStashItem } from "../../../store/index.ts";

/** The twins of an item, whichever of the two says so. */
export const twinsOf = (item: StashItem, stash: readonly StashItem[]): readonly StashItem[] =>
  stash.filter(
    (other) => other.id !== item.id && (item.twinOf?.includes(other.id) || other.twinOf?.includes(item.id)),
  );

/** What can still be made a twin of the item. */
export function twinOptions(item: StashItem, stash: readonly StashItem[]) {
  const twins = new Set(twinsOf(item, stash));
  return stash
    .filter(
      (other) => other.id !== item.id && other.supply.family === item.supply.family && !twins.has(other),
    )
    .map(({ id, supply }) => ({ value: id, label: supply.name, more: supply.maker ?? "" }));
}

export const addTwin = (item: StashItem, other: string): ActDraft =>
  editStashItem(item, ["twinOf"], [...(item.twinOf ?? []), other]);

const without = (item: StashItem, other: string): ActDraft => {
  const rest = (item.twinOf ?? []).filter((id) => id !== other);
  return editStashItem(item, ["twinOf"], rest.length > 0 ? rest : undefined);
};

/** Parts two twins, whichever of them says so; both may. */
export function removeTwin(item: StashItem, other: StashItem): ActDraft {
  const drafts = [
    ...(item.twinOf?.includes(other.id) ? [without(item, other.id)] : []),
    ...(other.twinOf?.includes(item.id) ? [without(other, item.id)] : []),
  ];
  return { label: without(item, other.id).label, changes: drafts.flatMap(({ changes }) => changes) };
}
