import type { Match } from "./change.ts";
import { same } from "./fields.ts";
import { keyBy, matchBy } from "./keys.ts";
import type { Ordered } from "./ordered.ts";

/** How to take back one edit of a list; null where there is nothing to take back. */
export type ListUndo =
  | Readonly<{ op: "remove" }>
  | Readonly<{ op: "put"; record: unknown; before?: Match | null }>
  | null;

const matchOrEnd = (fields: readonly string[], record: unknown): Match | null =>
  record === undefined ? null : matchBy(fields, record);

/** Puts `record` into `list`, which changes, and says how to take that back. */
export function putInto(
  list: Ordered,
  fields: readonly string[],
  record: unknown,
  before: Match | null | undefined,
): ListUndo {
  const key = keyBy(fields, record);
  const was = list.get(key);
  const next = matchOrEnd(fields, list.following(key));
  list.put(key, record, before ? keyBy(fields, before) : before);
  if (was === undefined) return { op: "remove" };
  const moved = !same(next, matchOrEnd(fields, list.following(key)));
  return moved ? { op: "put", record: was, before: next } : { op: "put", record: was };
}

/** Takes what has `key` out of `list`, which changes, and says how to take that back. */
export function takeFrom(list: Ordered, fields: readonly string[], key: string): ListUndo {
  if (!list.has(key)) return null;
  const record = list.get(key);
  const before = matchOrEnd(fields, list.following(key));
  list.remove(key);
  return { op: "put", record, before };
}
