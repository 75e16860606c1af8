import { describe, expect, it } from "vitest";
import type { StashItem } from "../../../src/engine/supply/index.ts";
import { readWorkbook, type Workbook, writeWorkbook } from "../../../src/engine/workbook/index.ts";
import * as acts from "../../../src/store/acts/index.ts";
import { applyChanges, checkTouched, stockOf } from "../../../src/store/journal/index.ts";
import { byFullness, differences, mergedItem } from "../../../src/ui/stash/view/merge.ts";
import { partsOf } from "../../../src/ui/stash/view/unused.ts";
import fc from "../../chance.ts";
import { sampleBook } from "../sample.ts";
import { value } from "./books.ts";

const book: Workbook = sampleBook();
const stash = book.stash ?? [];
const papers = stash.filter(({ supply }) => supply.family === "paper");
const paints = stash.filter(({ supply }) => supply.family === "paint");

const withId = (id: string): StashItem => {
  const item = stash.find((one) => one.id === id);
  if (!item) throw new Error(`the sample lacks ${id}`);
  return item;
};

/** The book after several became one: it reads without a fault, and undo gives back what was. */
function merged(given: Workbook, items: readonly [StashItem, ...StashItem[]]): Workbook {
  const [, ...gone] = items;
  const { changes } = acts.mergeStashItems(given, mergedItem(items, new Map()), gone);
  const done = value(applyChanges(given, changes));
  expect(checkTouched(done.book, changes)).toEqual({ ok: true, value: null });
  const reading = readWorkbook(writeWorkbook(done.book));
  expect(reading.ok ? [] : reading.faults).toEqual([]);
  expect(value(applyChanges(done.book, done.inverse)).book).toStrictEqual(given);
  return done.book;
}

const total = (items: readonly StashItem[], field: "owned" | "sheetsLeft") =>
  items.reduce((sum, item) => sum + stockOf(item, field), 0);

describe("several things made one", () => {
  it("keeps every piece and every sheet, and leaves no mention of what is gone", () => {
    const some = (from: readonly StashItem[]) =>
      fc.shuffledSubarray([...from], { minLength: 2, maxLength: 4 });
    fc.assert(
      fc.property(fc.oneof(some(papers), some(paints)), ([first, ...others]) => {
        if (!first) return;
        const after = merged(book, [first, ...others]);
        expect(total(after.stash ?? [], "owned")).toBe(total(stash, "owned"));
        expect(total(after.stash ?? [], "sheetsLeft")).toBe(total(stash, "sheetsLeft"));
        expect(after.stash?.length).toBe(stash.length - others.length);
        const text = JSON.stringify({ ...after, requests: null });
        for (const { id } of others) expect(text).not.toContain(`"${id}"`);
      }),
      { numRuns: 40 },
    );
  });

  it("unites tags, photos, twins and notes, and takes the earliest day and the best state", () => {
    const a: StashItem = {
      ...withId("st-001"),
      tags: ["field"],
      note: "dents",
      photos: ["p1"],
      acquired: "2024-05-01",
      state: "low",
      twinOf: ["st-002", "st-005"],
    };
    const b: StashItem = {
      ...withId("st-002"),
      tags: ["gift", "field"],
      note: "new",
      photos: ["p2", "p1"],
      acquired: "2023-01-02",
    };
    const one = mergedItem([a, b], new Map());
    expect(one).toMatchObject({
      id: "st-001",
      tags: ["field", "gift"],
      note: "dents\nnew",
      photos: ["p1", "p2"],
      acquired: "2023-01-02",
      twinOf: ["st-005"],
    });
    expect(one.state).toBeUndefined();
  });

  it("lets the first win where they differ, and another where it is chosen", () => {
    const a: StashItem = {
      id: "a",
      supply: { family: "paint", name: "Moss", traits: { ml: 5 } },
      place: "tin",
    };
    const b: StashItem = {
      id: "b",
      supply: { family: "paint", name: "moss", maker: "Torrin", traits: { ml: 15 } },
      place: "box",
    };
    expect(differences([a, b]).map(({ field }) => field)).toEqual(["owned", "name", "traits.ml", "place"]);
    expect(mergedItem([a, b], new Map())).toMatchObject({
      supply: { name: "Moss", maker: "Torrin", traits: { ml: 5 } },
      place: "tin",
      owned: 2,
    });
    const chosen = mergedItem(
      [a, b],
      new Map([
        ["traits.ml", 1],
        ["place", 1],
      ]),
    );
    expect(chosen).toMatchObject({ supply: { name: "Moss", traits: { ml: 15 } }, place: "box" });
    // One thing that was written down twice is counted once.
    expect(mergedItem([a, b], new Map([["owned", 1]])).owned ?? 1).toBe(1);
  });

  it("joins two shares of what is one now, and names it once beside a remake", () => {
    const kit = book.kits?.[0];
    const line = kit?.lines?.[0];
    if (!kit || !line) throw new Error("the sample lacks a kit");
    const given: Workbook = {
      ...book,
      stash: stash.map((item) =>
        item.id === "st-010" ? { ...item, twinOf: ["st-002"], keptApart: ["st-002"] } : item,
      ),
      remakes: [
        {
          id: "r",
          kit: kit.id,
          started: "2026-01-01",
          picks: [
            {
              line: line.id,
              uses: [
                { stash: "st-001", share: "0.3" },
                { stash: "st-002", share: "0.7" },
              ],
            },
          ],
          essentials: [{ stash: "st-002" }, { stash: "st-001" }],
          shownOnly: [{ stash: "st-002", why: "blend" }],
          fetched: ["st-002", "st-003"],
        },
      ],
    };
    const after = merged(given, [withId("st-001"), withId("st-002")]);
    expect(after.remakes?.[0]).toMatchObject({
      picks: [{ uses: [{ stash: "st-001", share: "1" }] }],
      essentials: [{ stash: "st-001" }],
      shownOnly: [{ stash: "st-001", why: "blend" }],
      fetched: ["st-001", "st-003"],
    });
    expect(after.remakes?.[0]?.picks?.[0]?.uses).toHaveLength(1);
    expect(after.stash?.find(({ id }) => id === "st-010")).toMatchObject({
      twinOf: ["st-001"],
      keptApart: ["st-001"],
    });
  });

  it("goes into the one that has parts in remakes, else into the fuller one", () => {
    const [a, b] = [
      { ...withId("st-001"), id: "a", note: "x" },
      { ...withId("st-001"), id: "b" },
    ];
    const first = (parts: ReadonlyMap<string, number>) => byFullness([b, a], parts)[0]?.id;
    expect(first(new Map())).toBe("a");
    expect(first(new Map([["b", 1]]))).toBe("b");
    const kit = book.kits?.[0]?.id ?? "";
    const remakes = [
      {
        id: "r",
        kit,
        started: "2026-01-01",
        picks: [{ uses: [{ stash: "b" }] }],
        essentials: [{ stash: "b" }],
      },
    ];
    expect(partsOf({ remakes })).toEqual(new Map([["b", 2]]));
  });
});

it("what was kept apart is remembered on all of them but the last", () => {
  const items = [withId("st-001"), withId("st-002"), withId("st-003")];
  const { changes } = acts.keepItemsApart(items);
  const after = value(applyChanges(book, changes)).book;
  const apart = (id: string) => after.stash?.find((item) => item.id === id)?.keptApart;
  expect([apart("st-001"), apart("st-002"), apart("st-003")]).toEqual([
    ["st-002", "st-003"],
    ["st-003"],
    undefined,
  ]);
});
