import { expect, it } from "vitest";
import { readWorkbook } from "../../../src/engine/workbook/index.ts";
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
