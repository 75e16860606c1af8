import { describe, expect, it } from "vitest";
import { noticesOf, readWorkbook, sizeLimitBytes } from "../../../src/engine/workbook/index.ts";
import { smallWorkbook } from "./small.ts";

/** The small workbook with the value at a path replaced (`undefined`: taken out). */
function broken(path: string, value: unknown): string {
  const book: unknown = smallWorkbook();
  const steps = path.split(/[.[\]]+/).filter((step) => step !== "");
  const last = steps.pop() ?? "";
  const holder = steps.reduce<unknown>((inner, step) => Reflect.get(Object(inner), step), book);
  if (value === undefined) Reflect.deleteProperty(Object(holder), last);
  else Reflect.set(Object(holder), last, value);
  return JSON.stringify(book);
}

const faultsIn = (text: string) => {
  const reading = readWorkbook(text);
  return reading.ok ? [] : reading.faults;
};
const placesIn = (text: string) => faultsIn(text).map((fault) => fault.place);

it("accepts the small workbook", () => expect(faultsIn(JSON.stringify(smallWorkbook()))).toEqual([]));

it("accepts a workbook of nothing but its required fields", () => {
  expect(faultsIn('{"format":"understudy-workbook","version":1}')).toEqual([]);
});

it("takes null for left out everywhere it may be left out", () => {
  const lists = [
    "markets",
    "rates",
    "shops",
    "parcels",
    "kinships",
    "photos",
    "stash",
    "kits",
    "remakes",
    "requests",
  ];
  const nulls = Object.fromEntries(lists.map((list) => [list, null]));
  expect(
    faultsIn(
      JSON.stringify({ format: "understudy-workbook", version: 1, home: null, weights: null, ...nulls }),
    ),
  ).toEqual([]);
});

describe("one wrong field is one fault, at the innermost wrong field", () => {
  it.each([
    ["format", "another-format", "format"],
    ["version", 2, "version"],
    ["version", "1", "version"],
    ["version", undefined, "version"],
    ["home.market", "no", "home.market"],
    ["home.reportMarkets[1]", "no", "home.reportMarkets[1]"],
    ["markets[0].currency", "SEX", "markets[0].currency"],
    ["markets[0].currency", undefined, "markets[0].currency"],
    ["markets[0].name", undefined, "markets[0].name"],
    ["markets[0].import[0].from[0]", "xx", "markets[0].import[0].from[0]"],
    ["markets[0].import[0].from", "some", "markets[0].import[0].from"],
    ["markets[0].import[0].taxRate", 0.25, "markets[0].import[0].taxRate"],
    ["markets[1].id", "se", "markets[1].id"],
    ["rates[0].quotes.SEK", "-1", "rates[0].quotes.SEK"],
    ["rates[0].quotes.SEK", "0", "rates[0].quotes.SEK"],
    ["rates[0].quotes.SEK", 11.02, "rates[0].quotes.SEK"],
    ["rates[0].quotes.ABC", "1.5", "rates[0].quotes.ABC"],
    ["rates[0].date", "2026-02-30", "rates[0].date"],
    ["rates[0].base", undefined, "rates[0].base"],
    ["shops[0].postageTo.xx", { amount: "1", currency: "SEK" }, "shops[0].postageTo.xx"],
    ["shops[0].market", undefined, "shops[0].market"],
    ["stash[0].id", "", "stash[0].id"],
    ["stash[0].id", "a/b", "stash[0].id"],
    ["stash[1].id", "st-1", "stash[1].id"],
    ["stash[0].supply", undefined, "stash[0].supply"],
    ["stash[0].supply.family", "glue", "stash[0].supply.family"],
    ["stash[0].supply.family", undefined, "stash[0].supply.family"],
    ["stash[0].supply.name", 5, "stash[0].supply.name"],
    ["stash[0].supply.colour.hex", "green", "stash[0].supply.colour.hex"],
    ["stash[0].supply.traits.medium", "goache", "stash[0].supply.traits.medium"],
    ["stash[0].supply.traits.ml", "15", "stash[0].supply.traits.ml"],
    ["stash[1].supply.traits.size", [210, "297"], "stash[1].supply.traits.size[1]"],
    ["stash[0].owned", -1, "stash[0].owned"],
    ["stash[0].owned", 1.5, "stash[0].owned"],
    ["stash[0].state", "lost", "stash[0].state"],
    ["stash[0].acquired", "2025-13-01", "stash[0].acquired"],
    ["stash[0].twinOf[0]", "st-9", "stash[0].twinOf[0]"],
    ["stash[0].photos[0]", "ph-9", "stash[0].photos[0]"],
    ["stash[1].fromKit", "k9", "stash[1].fromKit"],
    ["kits[0].maker", undefined, "kits[0].maker"],
    ["kits[0].period", "2026-13", "kits[0].period"],
    ["kits[0].shipsFrom", "xx", "kits[0].shipsFrom"],
    ["kits[0].tiers[0].kits", 0, "kits[0].tiers[0].kits"],
    ["kits[0].tiers[0].price", undefined, "kits[0].tiers[0].price"],
    ["kits[0].tiers[0].price.amount", "-24.00", "kits[0].tiers[0].price.amount"],
    ["kits[0].tiers[0].price.amount", "2.4e1", "kits[0].tiers[0].price.amount"],
    ["kits[0].tiers[0].price.amount", 24, "kits[0].tiers[0].price.amount"],
    ["kits[0].tiers[0].markets[0]", "xx", "kits[0].tiers[0].markets[0]"],
    ["kits[0].lines[0].want", "1.2", "kits[0].lines[0].want"],
    ["kits[0].lines[0].qty", 0, "kits[0].lines[0].qty"],
    ["kits[0].lines[0].evidence[0].price", undefined, "kits[0].lines[0].evidence[0].price"],
    ["kits[0].lines[0].evidence[0].kind", "rumour", "kits[0].lines[0].evidence[0].kind"],
    ["kits[0].lines[0].evidence[0].shop", "s9", "kits[0].lines[0].evidence[0].shop"],
    ["kits[0].lines[0].evidence[1].line", "k1/l9", "kits[0].lines[0].evidence[1].line"],
    ["kits[0].lines[0].evidence[1].id", "e1", "kits[0].lines[0].evidence[1].id"],
    ["kits[0].lines[0].settled[0].market", "xx", "kits[0].lines[0].settled[0].market"],
    ["kits[0].errata[0].lines[0]", "l9", "kits[0].errata[0].lines[0]"],
    ["remakes[0].kit", "k9", "remakes[0].kit"],
    ["remakes[0].started", undefined, "remakes[0].started"],
    ["remakes[0].picks[0].line", "l9", "remakes[0].picks[0].line"],
    ["remakes[0].picks[0].uses[0].stash", "st-9", "remakes[0].picks[0].uses[0].stash"],
    ["remakes[0].essentials[0].stash", "st-9", "remakes[0].essentials[0].stash"],
    ["stash", { id: "st-1" }, "stash"],
  ])("%s = %j", (path, value, place) => {
    const places = placesIn(broken(path, value));
    // A list that is gone takes with it what others name in it; the fault itself must stand once.
    expect(places.filter((found) => found === place)).toHaveLength(1);
    if (path !== "stash" && !/\.id$/.test(path)) expect(places).toEqual([place]);
  });
});

it("lists every fault at once", () => {
  const book = JSON.parse(broken("kits[0].tiers[0].kits", 0));
  book.stash[0].owned = "two";
  book.remakes[0].kit = "k9";
  expect(placesIn(JSON.stringify(book)).toSorted()).toEqual([
    "kits[0].tiers[0].kits",
    "remakes[0].kit",
    "stash[0].owned",
  ]);
});

it("says what is wrong and what would be right", () => {
  expect(faultsIn(broken("kits[0].tiers[0].price.amount", "-24.00"))).toEqual([
    {
      place: "kits[0].tiers[0].price.amount",
      problem: "not a plain decimal without sign or exponent",
      remedy: 'write digits as text, such as "12.50"',
    },
  ]);
  expect(faultsIn(broken("stash[0].state", "lost"))[0]?.remedy).toContain('"dried"');
  expect(faultsIn(broken("stash[0].supply.family", "glue"))[0]?.remedy).toContain('"colour-pencil"');
});

describe("what is no workbook at all has one fault, at file", () => {
  it.each(["", "{", "[]", "3", "null", '"text"', "{'format':1}", "\u0000"])("%j", (text) => {
    expect(placesIn(text)).toEqual(["file"]);
  });
  it("over 50 MB", () => {
    expect(readWorkbook("{}", sizeLimitBytes + 1)).toMatchObject({ ok: false, faults: [{ place: "file" }] });
  });
  it("nested a million deep, without a crash", () => {
    expect(placesIn("[".repeat(1_000_000))).toEqual(["file"]);
    expect(placesIn(`{"a":${"[".repeat(70)}${"]".repeat(70)}}`)).toEqual(["file"]);
  });
});

it("does not count brackets inside texts as depth", () => {
  expect(faultsIn(broken("name", `\\"${"[{".repeat(200)}`))).toEqual([]);
});

it("reads past a byte-order mark", () => {
  expect(faultsIn(`\uFEFF${JSON.stringify(smallWorkbook())}`)).toEqual([]);
});

it("a newer version is said alone: its fields may mean other things", () => {
  expect(placesIn('{"format":"understudy-workbook","version":2,"stash":7}')).toEqual(["version"]);
});

it("keeps __proto__ and its like as data, and nothing is polluted", () => {
  const text = JSON.stringify(smallWorkbook()).replace(
    '"name":"Test"',
    '"__proto__":{"polluted":1},"name":"Test"',
  );
  const reading = readWorkbook(text);
  expect(reading.ok).toBe(true);
  expect(Reflect.get({}, "polluted")).toBeUndefined();
  const ids = broken("stash[0].twinOf[0]", "constructor");
  expect(placesIn(ids)).toEqual(["stash[0].twinOf[0]"]);
  expect(placesIn(broken("home.market", "__proto__"))).toEqual(["home.market"]);
});

it("refuses numbers that JSON can write and a measure cannot be", () => {
  expect(placesIn(JSON.stringify(smallWorkbook()).replace('"ml":15', '"ml":1e400'))).toEqual([
    "stash[0].supply.traits.ml",
  ]);
});

describe("notices", () => {
  const noticed = (text: string) => {
    const reading = readWorkbook(text);
    return reading.ok ? noticesOf(reading.workbook, "2026-06-01") : "refused";
  };
  it("has none for the small workbook", () => expect(noticed(JSON.stringify(smallWorkbook()))).toEqual([]));
  it("notices a date and a month still to come", () => {
    expect(noticed(broken("stash[0].acquired", "2026-06-02"))).toEqual([
      { place: "stash[0].acquired", notice: "2026-06-02 is still to come" },
    ]);
    expect(noticed(broken("kits[0].period", "2026-07"))).toMatchObject([{ place: "kits[0].period" }]);
    expect(noticed(broken("kits[0].period", "2026-06"))).toEqual([]);
  });
  it("notices a rate that jumps, and a base that is not 1", () => {
    const later = { date: "2026-04-30", base: "EUR", quotes: { SEK: "110.25", EUR: "2" } };
    const places = noticed(broken("rates[1]", later));
    expect(places).toMatchObject([{ place: "rates[1].quotes.SEK" }, { place: "rates[1].quotes.EUR" }]);
  });
  it("notices shares that do not come to the whole", () => {
    const uses = [
      { stash: "st-1", share: "0.5" },
      { stash: "st-2", share: "0.4" },
    ];
    expect(noticed(broken("remakes[0].picks[0].uses", uses))).toMatchObject([
      { place: "remakes[0].picks[0].uses" },
    ]);
  });
});
