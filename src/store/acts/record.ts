import type { ActDraft, Change, ListName, Match, Path, RecordOf } from "../journal/index.ts";
import { keyOf } from "../journal/index.ts";

/** A change that puts a record into its list; where given, in front of another. */
export const put = <L extends ListName>(list: L, record: RecordOf<L>, before?: Match | null): Change => ({
  op: "put",
  list,
  id: keyOf(list, record),
  record,
  ...(before !== undefined && { before }),
});

/** A change of one field; `value` undefined leaves the field out. */
export const set = (list: ListName | "book", id: string, path: Path, value: unknown): Change => ({
  op: "set",
  list,
  id,
  path,
  ...(value !== undefined && { value }),
});

/** A change that puts an element into a list inside a record. */
export const putPart = (
  list: ListName,
  id: string,
  path: Path,
  record: object,
  before?: Match | null,
): Change => ({ op: "put", list, id, path, record, ...(before !== undefined && { before }) });

export const act = (label: string, ...changes: readonly Change[]): ActDraft => ({ label, changes });
