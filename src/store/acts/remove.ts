import type { Workbook } from "../../engine/workbook/index.ts";
import { applyChanges, type Change, keyOf, type ListName, listNames, same } from "../journal/index.ts";
import { mend } from "./mend.ts";
import { set } from "./record.ts";

/** Field by field, so that another device's edit of another field stands. */
function fieldChanges(list: ListName | "book", id: string, before: object, after: object): readonly Change[] {
  const [olds, news] = [new Map(Object.entries(before)), new Map(Object.entries(after))];
  return [...new Set([...olds.keys(), ...news.keys()])]
    .filter((name) => !same(olds.get(name), news.get(name)))
    .map((name) => set(list, id, [name], news.get(name)));
}

function listChanges(list: ListName, before: Workbook, after: Workbook): readonly Change[] {
  if (before[list] === after[list]) return [];
  const kept = new Map((after[list] ?? []).map((record) => [keyOf(list, record), record] as const));
  return (before[list] ?? []).flatMap((record): readonly Change[] => {
    const id = keyOf(list, record);
    const next = kept.get(id);
    return next ? fieldChanges(list, id, record, next) : [{ op: "remove", list, id }];
  });
}

const mending = (before: Workbook, after: Workbook): readonly Change[] => [
  ...(same(before.home, after.home) ? [] : [set("book", "book", ["home"], after.home)]),
  ...listNames.flatMap((list) => listChanges(list, before, after)),
];

/** `changes` that take something away, and with them every mention of it. */
export function thenMend(book: Workbook, changes: readonly Change[]): readonly Change[] {
  const after = applyChanges(book, changes);
  if (!after.ok) return changes; // what is gone already is said when the act is done
  return [...changes, ...mending(after.value.book, mend(after.value.book))];
}

export const removal = (list: ListName, id: string): Change => ({ op: "remove", list, id });
