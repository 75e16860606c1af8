import type { Workbook } from "../engine/workbook/index.ts";
import { failed, fromOutcome, type Stored, storeFault } from "./faults.ts";
import { type Act, applyChanges, type Change, checkTouched } from "./journal/index.ts";
import type { Draft } from "./repository.ts";

/** An act worked out, before anything is written. */
export type Prepared = Readonly<{ book: Workbook; act: Act }>;

/** Where the book is kept, as its writer must know it. */
export type Place = Readonly<{ device: string; counter: number; revision: number }>;

function workedOut(book: Workbook, changes: readonly Change[]) {
  const applied = fromOutcome(applyChanges(book, changes));
  if (!applied.ok) return applied;
  const checked = fromOutcome(checkTouched(applied.value.book, changes));
  return checked.ok ? applied : checked;
}

/** `work`, which is pure, with its last answer kept: an act is worked out to be shown, and then once more to be kept. */
function remembering<A, B, R>(work: (a: A, b: B) => R): (a: A, b: B) => R {
  let last: Readonly<{ a: A; b: B; answer: R }> | null = null;
  return (a, b) => {
    if (last?.a !== a || last.b !== b) last = { a, b, answer: work(a, b) };
    return last.answer;
  };
}

/** `book` after `changes`, checked against the format. */
export const changed = remembering(workedOut);

/** Works out what keeping `draft` in `book` comes to, and under which name the journal has it. */
export function prepare(book: Workbook, draft: Draft, place: Place): Stored<Prepared> {
  const { label, kind, of, at } = draft;
  if (draft.onlyAt !== undefined && draft.onlyAt !== place.revision) return failed(storeFault("stale"));
  const changes = typeof draft.changes === "function" ? draft.changes(book) : draft.changes;
  const after = changed(book, changes);
  if (!after.ok) return after;
  const counter = place.counter + 1;
  const { device } = place;
  const name = {
    id: `${device}:${counter}`,
    device,
    counter,
    at,
    label,
    kind,
    ...(of !== undefined && { of }),
  };
  return {
    ok: true,
    value: { book: after.value.book, act: { ...name, changes, inverse: after.value.inverse } },
  };
}
