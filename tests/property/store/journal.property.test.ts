import { expect, it } from "vitest";
import { canonicalJson, type Workbook } from "../../../src/engine/workbook/index.ts";
import { applyChanges, type Change, difference } from "../../../src/store/journal/index.ts";
import fc from "../../chance.ts";
import { book, change } from "./arbitraries.ts";

function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null) {
    Object.values(value).forEach(frozen);
    Object.freeze(value);
  }
  return value;
}

/** The changes of the list that this book can take, one after another. */
function takeable(start: Workbook, changes: readonly Change[]): readonly Change[] {
  let reached = start;
  return changes.filter((one) => {
    const taken = applyChanges(reached, [one]);
    if (taken.ok) reached = taken.value.book;
    return taken.ok;
  });
}

it("any act, taken back, leaves the book exactly as it was, and neither changes the book it was given", () => {
  fc.assert(
    fc.property(book, fc.array(change, { minLength: 1, maxLength: 6 }), (start, wanted) => {
      const changes = takeable(frozen(start), frozen(wanted));
      const done = applyChanges(start, changes);
      if (!done.ok) throw new Error(done.fault.problem);
      const back = applyChanges(frozen(done.value.book), frozen(done.value.inverse));
      if (!back.ok) throw new Error(back.fault.problem);
      expect(back.value.book).toStrictEqual(start);
      const again = applyChanges(back.value.book, back.value.inverse);
      if (!again.ok) throw new Error(again.fault.problem);
      expect(again.value.book).toStrictEqual(done.value.book);
    }),
    { numRuns: 1_500 },
  );
});

it("an act is taken whole or not at all, and as if its changes came one by one", () => {
  fc.assert(
    fc.property(book, fc.array(change, { maxLength: 6 }), (start, wanted) => {
      const changes = takeable(start, wanted);
      const oneByOne = changes.reduce((reached, one) => {
        const taken = applyChanges(reached, [one]);
        if (!taken.ok) throw new Error(taken.fault.problem);
        return taken.value.book;
      }, start);
      const whole = applyChanges(start, changes);
      expect(whole.ok && whole.value.book).toStrictEqual(oneByOne);
    }),
    { numRuns: 500 },
  );
});

it("the difference of two books makes the second out of the first, and back", () => {
  fc.assert(
    fc.property(book, book, (before, after) => {
      const done = applyChanges(frozen(before), frozen(difference(before, after)));
      if (!done.ok) throw new Error(done.fault.problem);
      expect(canonicalJson(done.value.book)).toBe(canonicalJson(after));
      const back = applyChanges(done.value.book, done.value.inverse);
      expect(back.ok && back.value.book).toStrictEqual(before);
    }),
    { numRuns: 1_000 },
  );
});

it("a book does not differ from itself", () => {
  fc.assert(
    fc.property(book, (one) => {
      expect(difference(one, structuredClone(one))).toEqual([]);
    }),
  );
});
