import { fail, type Outcome, ok } from "../../engine/record/index.ts";
import type { Blank, Change, ChangeOf, Match, Path } from "./change.ts";
import { type ListUndo, putInto, takeFrom } from "./edit-list.ts";
import { keyBy } from "./keys.ts";
import { ordered } from "./ordered.ts";
import { matches, read, renames, rewrite, untilGap } from "./path.ts";

/** A record after a change, and the change that takes it back (null: nothing happened). */
export type Edited = Readonly<{ record: unknown; inverse: Change | null }>;

type PartChange = ChangeOf<"put" | "remove">;

export const misfit = (place: string, problem: string) =>
  fail(place, problem, "this is a fault of the app; please tell its makers");

/** `blank` of a list or field that held nothing. */
export const blankOf = (value: unknown): { blank?: Blank } => {
  if (value === undefined) return { blank: "absent" };
  return value === null ? { blank: "null" } : {};
};

/** What `blank` stands for, or `otherwise` where none is given. */
export const emptied = (blank: Blank | undefined, otherwise: unknown): unknown => {
  if (blank === undefined) return otherwise;
  return blank === "null" ? null : undefined;
};

/** Sets one field of a record. */
export function setField(record: unknown, change: ChangeOf<"set">): Outcome<Edited> {
  const { list, id, path, value } = change;
  if (typeof path.at(-1) !== "string") return misfit(id, "a field was to be set, and none was named");
  if (renames(path, value)) return misfit(id, "the field that names a part cannot be changed");
  const gap = untilGap(record, path);
  const inverse: Change = { op: "set", list, id, path: gap.path, value: gap.value };
  const changed = rewrite(record, path, () => ok(value));
  return changed.ok ? ok<Edited>({ record: changed.value, inverse }) : changed;
}

function inverseOf(change: PartChange, path: Path, undo: ListUndo, was: unknown): Change | null {
  const { list, id } = change;
  if (!undo) return null;
  return undo.op === "remove"
    ? { op: "remove", list, id, path, ...blankOf(was) }
    : { ...undo, list, id, path };
}

type Part = Readonly<{ record: unknown; path: Path; match: Match; listPath: Path; was: unknown }>;

function partOf(record: unknown, path: Path): Part | null {
  const match = path.at(-1);
  const listPath = path.slice(0, -1);
  if (typeof match !== "object" || typeof listPath.at(-1) !== "string") return null;
  return { record, path, match, listPath, was: read(record, listPath) };
}

/** What takes an edit back where the list itself did not stand ready: its parent was missing, or keys repeat. */
function wholeInverse({ record, listPath, was }: Part, repeats: boolean, change: PartChange): Change | null {
  const gap = untilGap(record, listPath);
  const parentMissing = gap.path.length < listPath.length;
  if (!parentMissing && !repeats) return null;
  const { list, id } = change;
  return parentMissing
    ? { op: "set", list, id, path: gap.path, value: gap.value }
    : { op: "set", list, id, path: listPath, value: was };
}

/** Puts or removes one element of a list inside a record. */
export function editPart(record: unknown, change: PartChange, path: Path): Outcome<Edited> {
  const part = partOf(record, path);
  if (!part) return misfit(change.id, "a part was to be changed, and none was named");
  if (change.op === "put" && !matches(change.record, part.match)) {
    return misfit(change.id, "a part was to be put in under another name");
  }
  const fields = Object.keys(part.match);
  const list = ordered(Array.isArray(part.was) ? part.was : [], (element) => keyBy(fields, element));
  const undo =
    change.op === "put"
      ? putInto(list, fields, change.record, change.before)
      : takeFrom(list, fields, keyBy(fields, part.match));
  if (!undo) return ok<Edited>({ record, inverse: null });
  const left = list.toArray();
  const blank = change.op === "remove" ? change.blank : undefined;
  const next = left.length === 0 ? emptied(blank, left) : left;
  const changed = rewrite(record, part.listPath, () => ok(next));
  if (!changed.ok) return changed;
  const inverse = wholeInverse(part, list.repeats, change) ?? inverseOf(change, path, undo, part.was);
  return ok<Edited>({ record: changed.value, inverse });
}
