import { describe, expect, it } from "vitest";
import { applyChanges, type Change, checkTouched, difference } from "../../../src/store/journal/index.ts";
import { bookOf, item, put, setPlace, stashOf, value } from "./books.ts";

const kit = { id: "k", maker: "m", period: "2026-04", lines: [item("l1"), item("l2")] };
const book = bookOf({ stash: [item("a"), item("b")], kits: [kit], remakes: [] });

const faultOf = (change: Change) => {
  const done = applyChanges(book, [change]);
  return done.ok ? null : done.fault.problem;
};

const gone = "it is no longer there";

it.each<[string, Change, string]>([
  ["a field of a record that is gone", setPlace("z", "tin"), gone],
  [
    "a field of a part that is gone",
    { op: "set", list: "kits", id: "k", path: ["lines", { id: "l9" }, "qty"], value: 2 },
    gone,
  ],
  [
    "a part of what is no list",
    { op: "set", list: "kits", id: "k", path: ["maker", { id: "l1" }, "qty"], value: 2 },
    gone,
  ],
  [
    "a field of what is no record",
    { op: "set", list: "kits", id: "k", path: ["maker", "name"], value: "x" },
    gone,
  ],
  [
    "a part in a part that is gone",
    {
      op: "put",
      list: "kits",
      id: "k",
      path: ["lines", { id: "l9" }, "evidence", { id: "e" }],
      record: { id: "e" },
    },
    gone,
  ],
  [
    "no field at all",
    { op: "set", list: "kits", id: "k", path: [], value: 2 },
    "a field was to be set, and none was named",
  ],
  [
    "a part as if it were a field",
    { op: "set", list: "kits", id: "k", path: ["lines", { id: "l1" }], value: 2 },
    "a field was to be set, and none was named",
  ],
  [
    "the id of a record",
    { op: "set", list: "stash", id: "a", path: ["id"], value: "c" },
    "the field that names a record cannot be changed",
  ],
  [
    "the id of a part",
    { op: "set", list: "kits", id: "k", path: ["lines", { id: "l1" }, "id"], value: "c" },
    "the field that names a part cannot be changed",
  ],
  [
    "a record under another id",
    { op: "put", list: "stash", id: "a", record: item("c") },
    "a record was to be put in under another name",
  ],
  [
    "a part under another id",
    { op: "put", list: "kits", id: "k", path: ["lines", { id: "l1" }], record: item("c") },
    "a part was to be put in under another name",
  ],
  [
    "a part without a name",
    { op: "put", list: "kits", id: "k", path: ["lines"], record: item("c") },
    "a part was to be changed, and none was named",
  ],
  [
    "a part without a list",
    { op: "remove", list: "kits", id: "k", path: [{ id: "l1" }] },
    "a part was to be changed, and none was named",
  ],
  [
    "a record by way of the book",
    { op: "set", list: "book", id: "book", path: ["stash", { id: "a" }, "place"], value: "x" },
    "a record was to be changed through the whole book",
  ],
])("refuses to change %s", (_, change, problem) => {
  expect(faultOf(change)).toBe(problem);
});

it.each<[string, Change]>([
  ["a record that is gone", { op: "remove", list: "stash", id: "z" }],
  ["a record of a list that never was", { op: "remove", list: "photos", id: "z" }],
  ["a part that is gone", { op: "remove", list: "kits", id: "k", path: ["lines", { id: "l9" }] }],
  ["a part of a list that never was", { op: "remove", list: "kits", id: "k", path: ["tiers", { id: "t" }] }],
])("has nothing to do to remove %s", (_, change) => {
  expect(value(applyChanges(book, [change]))).toStrictEqual({ book, inverse: [] });
});

it("puts last what was to come before something that is gone, or before itself", () => {
  const [a, b] = [item("a"), item("b")];
  for (const id of ["z", "c"]) {
    const done = value(applyChanges(book, [{ ...put("c"), before: { id } } as Change]));
    expect(done.book.stash).toStrictEqual([a, b, item("c")]);
  }
});

it("leaves out fields that are undefined, as JSON would", () => {
  const change: Change = {
    op: "put",
    list: "stash",
    id: "c",
    record: { ...item("c"), note: undefined, tags: [{ x: undefined }] },
  };
  expect(value(applyChanges(book, [change])).book.stash?.[2]).toStrictEqual({ ...item("c"), tags: [{}] });
});

// Found by the property "as if its changes came one by one".
it.each<[string, Parameters<typeof bookOf>[0], readonly Change[], Parameters<typeof bookOf>[0]]>([
  [
    "a list that came and went stays a list",
    {},
    [put("a"), { op: "remove", list: "stash", id: "a" }],
    { stash: [] },
  ],
  [
    "of two tables of one day each removal takes one",
    { rates: [1, 2].map((one) => ({ base: "SEK", date: "2026-03-31", quotes: { JPY: `${one}` } })) },
    [1, 2].map(() => ({ op: "remove", list: "rates", id: '["SEK","2026-03-31"]' })),
    { rates: [] },
  ],
])("within one act, %s", (_, before, changes, after) => {
  const done = value(applyChanges(bookOf(before), changes));
  expect(done.book).toStrictEqual(bookOf(after));
  expect(value(applyChanges(done.book, done.inverse)).book).toStrictEqual(bookOf(before));
});

describe("an inverse", () => {
  it("of a list whose keys repeat is the whole list as it was", () => {
    const rates = [
      { base: "EUR", date: "2026-03-31", quotes: { SEK: "11" }, source: "one" },
      { base: "EUR", date: "2026-03-31", quotes: { SEK: "12" }, source: "two" },
    ];
    const twice = bookOf({ rates });
    const id = '["EUR","2026-03-31"]';
    for (const change of [
      { op: "remove", list: "rates", id },
      { op: "put", list: "rates", id, record: { ...rates[0], source: "three" } },
    ] as const) {
      const done = value(applyChanges(twice, [change]));
      expect(done.inverse).toStrictEqual([
        { op: "set", list: "book", id: "book", path: ["rates"], value: rates },
      ]);
      expect(value(applyChanges(done.book, done.inverse)).book).toStrictEqual(twice);
    }
    expect(difference(twice, bookOf({ rates: [...rates].reverse() }))).toHaveLength(1);
  });
});

describe("a check", () => {
  it("looks only at what was touched", () => {
    const broken = bookOf({ stash: [item("a", { owned: -1 }), item("b")] });
    expect(checkTouched(broken, [put("b")])).toEqual({ ok: true, value: null });
    expect(checkTouched(broken, [put("a")])).toMatchObject({ ok: false, fault: { place: "a: owned" } });
  });
  it.each<[string, Parameters<typeof bookOf>[0], Change, string]>([
    [
      "a part",
      { kits: [{ ...kit, lines: [item("l1", { want: "2" })] }] },
      { op: "set", list: "kits", id: "k", path: ["x"] },
      "k: lines[0].want",
    ],
    [
      "a whole record",
      { stash: ["text"] as never },
      { op: "set", list: "book", id: "book", path: ["stash"] },
      "[null]",
    ],
    [
      "a whole list",
      { stash: "text" as never },
      { op: "set", list: "book", id: "book", path: ["stash"] },
      "stash",
    ],
    [
      "a field of the book",
      { home: { market: 3 } as never },
      { op: "set", list: "book", id: "book", path: ["home"] },
      "home",
    ],
  ])("names the place of %s", (_, fields, change, place) => {
    const checked = checkTouched(bookOf(fields), [change]);
    expect(checked).toMatchObject({ ok: false, fault: { place } });
  });
});

it("thousands of records go in, change places and come out in a moment", () => {
  const many = bookOf({ stash: stashOf(10_000) });
  const turned = bookOf({ stash: stashOf(10_000).reverse() });
  const began = performance.now();
  const done = value(applyChanges(bookOf(), difference(bookOf(), many)));
  const moved = value(applyChanges(done.book, difference(done.book, turned)));
  expect(moved.book).toStrictEqual(turned);
  const back = value(applyChanges(moved.book, moved.inverse));
  expect(value(applyChanges(back.book, done.inverse)).book).toStrictEqual(bookOf());
  expect(performance.now() - began).toBeLessThan(5_000); // walking the list for each would take minutes
});
