import type { StashItem, Supply } from "../../../engine/supply/index.ts";

/** What a written line came to, as far as a new item asks. */
export type Written = Readonly<{ qty: number; supply: Supply }>;

/**
 * New items for what was written. When it was got stays open: most of a stash is older than its list.
 * @param makeId gives a fresh id, told those taken so far
 */
export function newItems(
  written: readonly Written[],
  place: string | null,
  stash: readonly StashItem[],
  makeId: (taken: readonly Readonly<{ id: string }>[]) => string,
): readonly StashItem[] {
  const made: StashItem[] = [];
  for (const { qty, supply } of written) {
    const id = makeId([...stash, ...made]);
    made.push({ id, supply, ...(qty === 1 ? {} : { owned: qty }), ...(place ? { place } : {}) });
  }
  return made;
}

/** Another of the same make to change what differs on: without what belongs to this one piece alone. */
export function anotherLike({ supply, place }: StashItem, id: string): StashItem {
  const { code: _, gtin: __, ...rest } = supply;
  return { id, supply: rest, ...(place ? { place } : {}) };
}
