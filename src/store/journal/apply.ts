import { type Outcome, ok } from "../../engine/record/index.ts";
import type { Workbook } from "../../engine/workbook/index.ts";
import { type Change, type ChangeOf, type ListName, listNames } from "./change.ts";
import { putInto, takeFrom } from "./edit-list.ts";
import { blankOf, type Edited, editPart, emptied, misfit, setField } from "./edit-part.ts";
import { type Fields, own, tidy, withField } from "./fields.ts";
import { keyFields, keyOf } from "./keys.ts";
import { type Ordered, ordered } from "./ordered.ts";
import { recordGone } from "./path.ts";
import { addStock } from "./stock.ts";

/** A workbook after changes, and what takes them back, in the order to apply it. */
export type Applied = Readonly<{ book: Workbook; inverse: readonly Change[] }>;

/** A working copy: the fields of the book, and the lists that were touched so far. */
type Draft = { fields: Fields; readonly lists: Map<ListName, Ordered>; readonly few: boolean };

/** Up to so many changes it costs less to look a record up than to make a list ready for looking up thousands. */
const few = 8;

type Step = Outcome<Change | null>;

const isList = (name: unknown): name is ListName => listNames.some((list) => list === name);

function listOf(draft: Draft, name: ListName): Ordered {
  const known = draft.lists.get(name);
  if (known) return known;
  const records = own(draft.fields, name);
  const fresh = ordered(Array.isArray(records) ? records : [], (record) => keyOf(name, record));
  draft.lists.set(name, fresh);
  return fresh;
}

/** Writes a touched list back into the fields. */
function settle(draft: Draft, name: ListName): void {
  const list = draft.lists.get(name);
  if (!list) return;
  const records = list.toArray();
  const wasList = Array.isArray(own(draft.fields, name));
  if (wasList || records.length > 0) draft.fields = withField(draft.fields, name, records);
  draft.lists.delete(name);
}

function setInBook(draft: Draft, change: ChangeOf<"set">): Step {
  const [name] = change.path;
  if (isList(name)) {
    if (change.path.length > 1) return misfit(change.id, "a record was to be changed through the whole book");
    settle(draft, name);
  }
  const edited = setField(draft.fields, change);
  if (!edited.ok) return edited;
  draft.fields = edited.value.record as Fields; // setting a field of an object gives an object
  return ok(edited.value.inverse);
}

/** Where keys repeat, "the one with this key" is ambiguous: only the whole list can be put back for sure. */
function wholeList(draft: Draft, name: ListName): Change | null {
  const list = listOf(draft, name);
  return list.repeats ? { op: "set", list: "book", id: "book", path: [name], value: list.toArray() } : null;
}

/** Where keys repeated, what is left goes by new ones: the next change must look afresh. */
function renamed(draft: Draft, list: ListName, inverse: Change): Step {
  settle(draft, list);
  return ok<Change | null>(inverse);
}

function putRecord(draft: Draft, change: ChangeOf<"put">): Step {
  const { list, id, record, before } = change;
  if (keyOf(list, record) !== id) return misfit(id, "a record was to be put in under another name");
  const whole = wholeList(draft, list);
  const held = own(draft.fields, list);
  const undo = putInto(listOf(draft, list), keyFields(list), record, before);
  if (!Array.isArray(held)) draft.fields = withField(draft.fields, list, []); // a list from now on, also if emptied
  if (whole) return renamed(draft, list, whole);
  return ok(undo && (undo.op === "remove" ? { ...undo, list, id, ...blankOf(held) } : { ...undo, list, id }));
}

function removeRecord(draft: Draft, change: ChangeOf<"remove">): Step {
  const { list, id, blank } = change;
  const whole = wholeList(draft, list);
  const undo = takeFrom(listOf(draft, list), keyFields(list), id);
  if (blank && listOf(draft, list).size() === 0) {
    draft.lists.delete(list);
    draft.fields = withField(draft.fields, list, emptied(blank, []));
  }
  if (whole) return renamed(draft, list, whole);
  return ok(undo && { ...undo, list, id });
}

function edit(record: unknown, change: Change): Outcome<Edited> {
  if (change.op === "set") return setField(record, change);
  if (change.op === "add") return addStock(record, change);
  return editPart(record, change, change.path ?? []);
}

/** A list in which one record is looked up and then replaced, and which is not otherwise touched. */
function plainList(draft: Draft, name: ListName): Pick<Ordered, "get" | "put"> {
  const held = own(draft.fields, name);
  const records: readonly unknown[] = Array.isArray(held) ? held : [];
  let place = -1;
  return {
    get: (key) => {
      place = records.findIndex((record) => keyOf(name, record) === key);
      return records[place];
    },
    put: (_, record) => {
      draft.fields = withField(draft.fields, name, records.with(place, record));
    },
  };
}

function changeRecord(draft: Draft, change: Change, name: ListName): Step {
  const list = draft.few && !draft.lists.has(name) ? plainList(draft, name) : listOf(draft, name);
  const record = list.get(change.id);
  if (record === undefined) return recordGone(change.id);
  const edited = edit(record, change);
  if (!edited.ok) return edited;
  if (keyOf(name, edited.value.record) !== keyOf(name, record)) {
    return misfit(change.id, "the field that names a record cannot be changed");
  }
  list.put(change.id, edited.value.record);
  return ok(edited.value.inverse);
}

function step(draft: Draft, change: Change): Step {
  if (change.list === "book") return setInBook(draft, change);
  if (change.op === "put" && !change.path) return putRecord(draft, change);
  if (change.op === "remove" && !change.path) return removeRecord(draft, change);
  return changeRecord(draft, change, change.list);
}

/**
 * `book` after `changes`, in order; all of them or none.
 * @returns a fault when a change is for something that is no longer there. Removing what is gone already is
 *   no fault: there is nothing to do.
 */
export function applyChanges(book: Workbook, changes: readonly Change[]): Outcome<Applied> {
  const draft: Draft = { fields: book, lists: new Map(), few: changes.length <= few };
  const inverse: Change[] = [];
  for (const change of changes) {
    const taken = step(draft, tidy(change) as Change); // tidy only leaves out fields that are undefined
    if (!taken.ok) return taken;
    if (taken.value) inverse.push(tidy(taken.value) as Change);
  }
  for (const name of [...draft.lists.keys()]) settle(draft, name);
  return ok({ book: draft.fields as Workbook, inverse: inverse.reverse() }); // each change keeps a book a book
}
