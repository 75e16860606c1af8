import type { Language } from "../record/index.ts";
import type { StashItem } from "../supply/index.ts";
import { fnv1a } from "./hash.ts";
import { standings } from "./here.ts";
import type { Draft, Understood } from "./understand.ts";
import { wordsIn } from "./words/index.ts";

/** Fields that lead to other records, which stay where they are. */
const leadsElsewhere = ["id", "twinOf", "fromKit", "photos"];

/**
 * Things out of somebody's workbook as if they were rows of a list: without what ties them to the rest of it.
 * Those that are here already, under their key or as the same product in the same place, are told apart.
 */
export function understandItems(
  items: readonly StashItem[],
  stash: readonly StashItem[],
  language: Language,
): readonly Understood[] {
  const words = wordsIn[language];
  const standing = standings(stash);
  return items.map((item, row) => {
    const own = Object.fromEntries(Object.entries(item).filter(([field]) => !leadsElsewhere.includes(field)));
    const importKey = item.importKey ? String(item.importKey) : fnv1a(JSON.stringify(own));
    const draft = { ...own, supply: item.supply, importKey } as Draft; // a checked item with fewer fields
    const stands = standing(importKey, item.supply, item.place ?? undefined);
    if (!stands) return { kind: "new", row, draft, doubts: [] };
    return { kind: "here", row, draft, reason: stands.by === "key" ? words.before : words.here, doubts: [] };
  });
}
