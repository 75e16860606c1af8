import { describe, expect, it } from "vitest";
import type { StashItem } from "../../../src/engine/supply/index.ts";
import type { Workbook } from "../../../src/engine/workbook/index.ts";
import { editStashItems } from "../../../src/store/acts/index.ts";
import { applyChanges } from "../../../src/store/journal/index.ts";
import { subjectOf } from "../../../src/ui/remakes/view/solve.ts";
import {
  type BulkEdit,
  bulkEdits,
  commonFamily,
  commonOf,
  noEdit,
  tagsIn,
} from "../../../src/ui/stash/view/bulk.ts";
import { leansOn } from "../../../src/ui/stash/view/leans-on.ts";
import { unusedSince, usedIn, yearBefore } from "../../../src/ui/stash/view/unused.ts";
import { sampleBook } from "../sample.ts";

const book: Workbook = sampleBook();
const stash = book.stash ?? [];
const [one, other] = stash;
if (!one || !other) throw new Error("the sample has no things");

function changed(items: readonly StashItem[], edit: Partial<BulkEdit>) {
  const draft = editStashItems(bulkEdits(items, { ...noEdit, ...edit }));
  const done = applyChanges(book, draft.changes);
  if (!done.ok) throw new Error(done.fault.problem);
  const undone = applyChanges(done.value.book, done.value.inverse);
  expect(undone.ok && undone.value.book).toStrictEqual(book);
  const ids = new Set(items.map(({ id }) => id));
  const others = (given: Workbook) => (given.stash ?? []).filter(({ id }) => !ids.has(id));
  expect(others(done.value.book)).toStrictEqual(others(book));
  return { label: draft.label, items: (done.value.book.stash ?? []).filter(({ id }) => ids.has(id)) };
}

describe("changing several things at once", () => {
  const some = stash.slice(0, 6);

  it("makes what is filled in the same for all, and says so as one act", () => {
    const { label, items } = changed(some, { place: "attic" });
    expect(new Set(items.map(({ place }) => place))).toEqual(new Set(["attic"]));
    expect(label).toBe("Change the place of 6 items");
    const two = changed(some, { place: "attic", maker: "Kvist" });
    expect(new Set(two.items.map(({ supply }) => supply.maker))).toEqual(new Set(["Kvist"]));
    expect(two.label).toBe("Change 6 items");
  });

  it("leaves alone what has it already, and takes fine as nothing said", () => {
    expect(
      bulkEdits(some, { ...noEdit, place: some[0]?.place ?? null }).map(({ item }) => item.id),
    ).not.toContain(some[0]?.id);
    expect(bulkEdits([{ ...one, state: "ok" }], { ...noEdit, state: "ok" })).toEqual([]);
    const { items } = changed(
      stash.filter(({ state }) => state === "dried"),
      { state: "ok" },
    );
    expect(items.every((item) => item.state === undefined)).toBe(true);
  });

  it("puts tags on and takes tags off, each thing keeping its others", () => {
    const tagged = stash
      .map((item, at) => (at < 2 ? { ...item, tags: ["field", "gift"] } : item))
      .slice(0, 3);
    const edits = bulkEdits(tagged, { ...noEdit, tagsOn: ["sea"], tagsOff: ["gift"] });
    expect(edits.map(({ value }) => value)).toEqual([
      ["field", "sea"],
      ["field", "sea"],
      [...(tagged[2]?.tags ?? []), "sea"],
    ]);
    expect(tagsIn(tagged)).toEqual([...new Set(["field", "gift", ...(tagged[2]?.tags ?? [])])].toSorted());
  });

  it("changes traits that all of one family have", () => {
    const paints = stash.filter(({ supply }) => supply.family === "paint").slice(0, 4);
    expect(commonFamily(paints)).toBe("paint");
    expect(commonFamily(stash)).toBeNull();
    const { items } = changed(paints, { traits: new Map([["opacity", "semi"]]) });
    expect(items.map(({ supply }) => supply.traits)).toEqual(
      paints.map(({ supply }) => ({ ...supply.traits, opacity: "semi" })),
    );
  });

  it("knows what all share", () => {
    expect(commonOf(some, () => "x")).toEqual({ value: "x", differ: false });
    expect(commonOf(some, ({ id }) => id)).toEqual({ value: null, differ: true });
    expect(commonOf<string>([], () => "x")).toEqual({ value: null, differ: false });
  });
});

it("what leans on things is counted once a remake and once a twin", () => {
  const [remake] = book.remakes ?? [];
  const used = remake?.picks?.flatMap(({ uses }) => uses ?? []).find(({ stash: id }) => id)?.stash ?? "";
  expect(leansOn(book, new Set([used])).remakes).toBeGreaterThan(0);
  expect(leansOn(book, new Set())).toEqual({ remakes: 0, twins: 0 });
  const twins = [{ ...one, twinOf: [other.id] }, other];
  expect(leansOn({ ...book, stash: twins }, new Set([other.id])).twins).toBe(1);
  expect(leansOn({ ...book, stash: twins }, new Set(twins.map(({ id }) => id))).twins).toBe(0);
});

describe("what no remake of the last year has used", () => {
  it.each([
    ["2026-11-25", "2025-11-25"],
    ["2024-02-29", "2023-02-28"],
    ["2025-02-28", "2024-02-28"],
  ])("a year before %s is %s", (day, before) => expect(yearBefore(day)).toBe(before));

  const day =
    (book.remakes ?? [])
      .map(({ started, finished }) => finished ?? started)
      .toSorted()
      .at(-1) ?? "";
  const later = `${Number(day.slice(0, 4)) + 2}${day.slice(4)}`;

  it("holds nothing that plays a part, until the remake is more than a year ago", () => {
    const used = new Set(
      (book.remakes ?? []).flatMap(({ id }) => {
        const subject = subjectOf(book, id);
        return subject ? usedIn(subject) : [];
      }),
    );
    expect(used.size).toBeGreaterThan(0);
    for (const { id } of unusedSince(book, day)) expect(used.has(id)).toBe(false);
    expect(unusedSince(book, later).some(({ id }) => used.has(id))).toBe(true);
  });

  it("leaves out what was got within the year, and what is used up or dried out", () => {
    const [first, ...rest] = unusedSince(book, later);
    if (!first) throw new Error("the sample has no unused thing");
    const given = (more: Partial<StashItem>): Workbook => ({
      ...book,
      stash: [{ ...first, ...more }, ...rest],
    });
    const has = (more: Partial<StashItem>) =>
      unusedSince(given(more), later).some(({ id }) => id === first.id);
    expect(has({ acquired: yearBefore(later) })).toBe(false);
    expect(has({ acquired: "2001-01-01" })).toBe(true);
    expect(has({ state: "empty" })).toBe(false);
    expect(has({ state: "low" })).toBe(true);
  });
});
