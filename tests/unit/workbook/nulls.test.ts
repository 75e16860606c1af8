import { expect, it } from "vitest";
import { readWorkbook, textLanguage } from "../../../src/engine/workbook/index.ts";
import { smallWorkbook } from "./small.ts";

const placesIn = (book: unknown) => {
  const reading = readWorkbook(JSON.stringify(book));
  return reading.ok ? [] : reading.faults.map(({ place }) => place);
};

it.each([
  ["a weight", { weights: { marker: { colour: null }, paint: null } }],
  ["a quote", { rates: [{ date: "2026-03-31", base: "EUR", quotes: { SEK: null } }] }],
  [
    "published figures",
    { remakes: [{ id: "r", kit: "k1", started: "2026-05-02", published: [{ figures: null }] }] },
  ],
])("takes null for left out in %s", (_, change) => {
  expect(placesIn({ ...smallWorkbook(), ...change })).toEqual([]);
});

it("postage to a market may be null, and is then not given", () => {
  const book = smallWorkbook();
  const tiers = [{ id: "t1", kits: 1, price: { amount: "1", currency: "EUR" }, postageTo: { se: null } }];
  expect(placesIn({ ...book, kits: [{ ...book.kits[0], tiers }] })).toEqual([]);
});

it("says what else is wrong in a supply of no known family", () => {
  const stash = [{ id: "st-9", supply: { family: "glue", name: 5, colour: { hex: "green" } } }];
  expect(placesIn({ ...smallWorkbook(), stash, remakes: null }).toSorted()).toEqual([
    "stash[0].supply.colour.hex",
    "stash[0].supply.family",
    "stash[0].supply.name",
  ]);
});

it("says an empty id once, not also that it leads nowhere", () => {
  const stash = [{ id: "st-9", supply: { family: "other", name: "x" }, twinOf: [""] }];
  expect(placesIn({ ...smallWorkbook(), stash, remakes: null })).toEqual(["stash[0].twinOf[0]"]);
});

it("takes a claim without its value, and something published without its figures", () => {
  const book = smallWorkbook();
  const lines = [{ id: "l1", supply: { family: "other", name: "x" }, claims: [{ field: "gsm" }] }];
  const remakes = [{ id: "r", kit: "k1", started: "2026-05-02", published: [{ at: "2026-05-09" }] }];
  expect(placesIn({ ...book, kits: [{ ...book.kits[0], lines }], remakes })).toEqual([]);
});

it("says a list where an id should be once, not also that it is too short", () => {
  expect(placesIn({ ...smallWorkbook(), home: { market: [] } })).toEqual(["home.market"]);
});

it("says it where evidence names an empty line, or postage an empty market", () => {
  const book = smallWorkbook();
  const evidence = [{ id: "e1", kind: "precedent", line: "" }];
  const lines = [{ id: "l1", supply: { family: "other", name: "x" }, evidence }];
  const shops = [{ id: "s1", name: "x", market: "se", postageTo: { "": { amount: "1", currency: "SEK" } } }];
  expect(placesIn({ ...book, shops, kits: [{ ...book.kits[0], lines }] }).toSorted()).toEqual([
    "kits[0].lines[0].evidence[0].line",
    "shops[0].postageTo.",
  ]);
});

it("keeps whatever stands as a text's language, and takes only what is spoken here for one", () => {
  const withLanguage = (language: unknown) => ({
    ...smallWorkbook(),
    remakes: [{ id: "r", kit: "k1", started: "2026-05-02", episode: { title: "x", language } }],
  });
  const languageIn = (language: unknown) => {
    const reading = readWorkbook(JSON.stringify(withLanguage(language)));
    if (!reading.ok) return reading.faults;
    const [remake] = reading.workbook.remakes ?? [];
    expect(remake?.episode).toEqual(withLanguage(language).remakes[0]?.episode);
    return remake && textLanguage(remake);
  };
  expect(["sv", "en", null, undefined, "no", "SV", "", 5, {}, [], "constructor"].map(languageIn)).toEqual([
    "sv",
    "en",
    ...Array.from({ length: 9 }, () => null),
  ]);
});
