import type { Workbook } from "../../engine/workbook/index.ts";
import { type Blank, type Change, type ListName, listNames } from "./change.ts";
import { blankOf } from "./edit-part.ts";
import { type Fields, own, same } from "./fields.ts";
import { keyFields, keyOf, matchBy } from "./keys.ts";
import { longestRun } from "./longest-run.ts";

/** The records of a list by key, in order. */
type Keyed = ReadonlyMap<string, unknown>;

const recordsOf = (book: Fields, list: ListName): readonly unknown[] => {
  const records = own(book, list);
  return Array.isArray(records) ? records : [];
};

const keyed = (list: ListName, records: readonly unknown[]): Keyed =>
  new Map(records.map((record) => [keyOf(list, record), record]));

/** The keys that need no moving: as many as stand in the same order before and after. */
function inStep(before: Keyed, after: Keyed): ReadonlySet<string> {
  const places = new Map([...before.keys()].map((key, index) => [key, index]));
  const staying = [...after.keys()].filter((key) => places.has(key));
  const run = longestRun(staying.map((key) => places.get(key) ?? 0));
  return new Set(run.map((index) => staying[index] ?? ""));
}

/** Puts from the last record to the first, so that each one's follower stands ready. */
function puts(list: ListName, before: Keyed, after: Keyed): readonly Change[] {
  const fixed = inStep(before, after);
  const records = [...after];
  return records
    .map(([id, record], index): Change | null => {
      const next = records[index + 1];
      const follower = next ? matchBy(keyFields(list), next[1]) : null;
      if (!fixed.has(id)) return { op: "put", list, id, record, before: follower };
      return same(record, before.get(id)) ? null : { op: "put", list, id, record };
    })
    .filter((change) => change !== null)
    .reverse();
}

const removals = (list: ListName, before: Keyed, after: Keyed, blank: { blank?: Blank }): readonly Change[] =>
  [...before.keys()]
    .filter((id) => !after.has(id))
    .map((id, index): Change => ({ op: "remove", list, id, ...(index === before.size - 1 && blank) }));

function ofField(name: string, before: Fields, after: Fields): readonly Change[] {
  const value = own(after, name);
  return same(own(before, name), value)
    ? []
    : [{ op: "set", list: "book", id: "book", path: [name], ...(value !== undefined && { value }) }];
}

function ofList(list: ListName, before: Fields, after: Fields): readonly Change[] {
  const [olds, news] = [recordsOf(before, list), recordsOf(after, list)];
  const [old, wanted] = [keyed(list, olds), keyed(list, news)];
  const repeats = old.size < olds.length || wanted.size < news.length;
  if (repeats || olds.length + news.length === 0) return ofField(list, before, after);
  return [...removals(list, old, wanted, blankOf(own(after, list))), ...puts(list, old, wanted)];
}

/**
 * The changes that make `after` out of `before`: what a restore, an import or the sample does, as an act that
 * can be undone and merged like any other. A record that differs is put whole.
 */
export function difference(before: Workbook, after: Workbook): readonly Change[] {
  const lists: readonly string[] = listNames;
  const fields = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  return [
    ...fields.filter((name) => !lists.includes(name)).flatMap((name) => ofField(name, before, after)),
    ...listNames.flatMap((list) => ofList(list, before, after)),
  ];
}
