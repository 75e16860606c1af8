import type { Workbook } from "../../../src/engine/workbook/index.ts";
import type { Change, ListName, Match } from "../../../src/store/journal/index.ts";
import fc from "../../chance.ts";

// Ids that would lead astray if they were looked up as names of inherited fields.
const id = fc.constantFrom("a", "b", "c", "d", "e", "__proto__", "constructor");
const text = fc.constantFrom("moss", "rust", "ash", "");
const optional = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const maybeField = <T>(name: string, value: fc.Arbitrary<T>) =>
  fc.record({ [name]: optional(value) }, { requiredKeys: [] });

const merged = (...parts: fc.Arbitrary<object>[]) =>
  fc.tuple(...parts).map((all) => Object.assign({}, ...all) as Record<string, unknown>);

const uniqueBy = <T>(value: fc.Arbitrary<T>, key: (one: T) => string) =>
  fc.uniqueArray(value, { selector: key, maxLength: 5 });

const supply = merged(
  fc.record({ family: fc.constant("paper"), name: text }),
  maybeField("traits", fc.record({ sheets: fc.integer({ min: 1, max: 40 }) })),
  maybeField("colour", merged(maybeField("name", text))),
);

export const stashItem = merged(
  fc.record({ id, supply }),
  maybeField("owned", fc.nat(3)),
  maybeField("sheetsLeft", fc.nat(30)),
  maybeField("place", text),
  maybeField("x-own", fc.jsonValue({ maxDepth: 1 })),
);

const evidence = fc.record({ id, kind: fc.constant("not-sold"), source: text });
const line = merged(
  fc.record({ id, supply }),
  maybeField(
    "evidence",
    uniqueBy(evidence, (one) => one.id),
  ),
);
const kit = merged(
  fc.record({ id, maker: text, period: fc.constant("2026-04") }),
  maybeField(
    "lines",
    uniqueBy(line, (one) => String(one.id)),
  ),
);
const pick = merged(fc.record({ line: id }), maybeField("note", text));
const remake = merged(
  fc.record({ id, kit: id, started: fc.constant("2026-05-02") }),
  maybeField("picks", fc.array(pick, { maxLength: 4 })), // may repeat: nothing but the person keeps them apart
);
const rates = fc.record({
  base: fc.constantFrom("EUR", "SEK"),
  date: fc.constantFrom("2026-03-31", "2026-04-30"),
  quotes: fc.constant({ JPY: "163.45" }),
  source: text,
});

const records: Partial<Record<ListName, fc.Arbitrary<Record<string, unknown>>>> = {
  stash: stashItem,
  kits: kit,
  remakes: remake,
};

const listField = (name: ListName) =>
  maybeField(
    name,
    uniqueBy(records[name] ?? fc.record({ id }), (one) => String(one.id)),
  );

export const book = merged(
  fc.constant({ format: "understudy-workbook", version: 1 }),
  maybeField("name", text),
  maybeField("home", merged(maybeField("market", id))),
  listField("stash"),
  listField("kits"),
  listField("remakes"),
  listField("requests"),
  maybeField("rates", fc.array(rates, { maxLength: 3 })), // two tables of one day may stand side by side
  maybeField("x-own", fc.jsonValue({ maxDepth: 1 })),
) as unknown as fc.Arbitrary<Workbook>; // built to the format; the store's own check is tested elsewhere

const match = (key: string): fc.Arbitrary<Match> => id.map((value) => ({ [key]: value }));
const before = fc.option(match("id"), { nil: null });
const withBefore = fc.record({ before }, { requiredKeys: [] });

const putRecord = (list: ListName, record: fc.Arbitrary<Record<string, unknown>>) =>
  fc
    .tuple(record, withBefore)
    .map(([value, place]): Change => ({ op: "put", list, id: String(value.id), record: value, ...place }));

const part = (
  list: ListName,
  path: (key: Match) => (string | Match)[],
  key: string,
  record: fc.Arbitrary<object>,
) =>
  fc
    .tuple(id, match(key), record, withBefore, fc.boolean())
    .map(
      ([owner, element, value, place, put]): Change =>
        put
          ? { op: "put", list, id: owner, path: path(element), record: { ...value, ...element }, ...place }
          : { op: "remove", list, id: owner, path: path(element) },
    );

const setField = fc
  .tuple(
    id,
    fc.constantFrom(
      ["place"],
      ["supply", "colour", "name"],
      ["supply", "name"],
      ["deep", "er"],
      ["__proto__"],
    ),
    optional(text),
    fc.boolean(),
  )
  .map(
    ([owner, path, value, leaveOut]): Change =>
      leaveOut
        ? { op: "set", list: "stash", id: owner, path }
        : { op: "set", list: "stash", id: owner, path, value },
  );

const setInLine = fc.tuple(id, id, text).map(
  ([owner, element, value]): Change => ({
    op: "set",
    list: "kits",
    id: owner,
    path: ["lines", { id: element }, "supply", "name"],
    value,
  }),
);

const setInBook = fc
  .tuple(
    fc.constantFrom(["name"], ["home", "market"], ["x-own"], ["weights", "marker", "colour"]),
    optional(text),
  )
  .map(([path, value]): Change => ({ op: "set", list: "book", id: "book", path, value }));

const setList = fc
  .option(fc.array(fc.record({ id }), { maxLength: 2 }), { nil: null })
  .map((value): Change => ({ op: "set", list: "book", id: "book", path: ["requests"], value }));

const add = fc
  .tuple(id, fc.constantFrom("owned" as const, "sheetsLeft" as const), fc.integer({ min: -3, max: 3 }))
  .map(([owner, field, by]): Change => ({ op: "add", list: "stash", id: owner, field, by }));

const remove = fc
  .tuple(fc.constantFrom<ListName>("stash", "kits", "remakes", "requests"), id)
  .map(([list, owner]): Change => ({ op: "remove", list, id: owner }));

const rateChange = fc.tuple(rates, fc.boolean()).map(([table, put]): Change => {
  const key = JSON.stringify([table.base, table.date]);
  return put
    ? { op: "put", list: "rates", id: key, record: table }
    : { op: "remove", list: "rates", id: key };
});

export const change: fc.Arbitrary<Change> = fc.oneof(
  putRecord("stash", stashItem),
  putRecord("kits", kit),
  putRecord("remakes", remake),
  part("kits", (key) => ["lines", key], "id", line),
  part("kits", (key) => ["lines", { id: "a" }, "evidence", key], "id", evidence),
  part("remakes", (key) => ["picks", key], "line", pick),
  part("remakes", (key) => ["episode", "links", key], "text", fc.record({ url: text })),
  setField,
  setInLine,
  setInBook,
  setList,
  add,
  remove,
  rateChange,
);
