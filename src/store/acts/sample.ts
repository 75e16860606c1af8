import type { Workbook } from "../../engine/workbook/index.ts";
import { type ActDraft, type Change, keyOf, listNames, same } from "../journal/index.ts";
import { storeWords as words } from "../words/index.ts";
import { set } from "./record.ts";
import { removal, thenMend } from "./remove.ts";

/** What both hold as fields outside the lists: the sample's name, home, weights. */
const sampleFields = (book: Workbook, sample: Workbook): readonly Change[] =>
  (["name", "home", "weights"] as const)
    .filter((name) => book[name] !== undefined && same(book[name], sample[name]))
    .map((name) => set("book", "book", [name], undefined));

/** Removes everything that came with the sample, edited or not, and leaves what the person added. */
export function removeSample(book: Workbook, sample: Workbook): ActDraft {
  const removals = listNames.flatMap((list) => {
    const ids = new Set((sample[list] ?? []).map((record) => keyOf(list, record)));
    return (book[list] ?? [])
      .map((record) => keyOf(list, record))
      .filter((id) => ids.has(id))
      .map((id) => removal(list, id));
  });
  return {
    label: words.removeSample,
    changes: thenMend(book, [...sampleFields(book, sample), ...removals]),
  };
}
