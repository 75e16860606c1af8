import { describe, expect, it } from "vitest";
import { isGtinSlip } from "../../src/engine/supply/index.ts";
import { entriesOf } from "../../src/ui/app/entries.ts";
import { findEntries } from "../../src/ui/app/find-entries.ts";
import { lookUp } from "../../src/ui/stash/code/look-up.ts";
import { anything } from "../../src/ui/stash/view/asked.ts";
import { findIn } from "../../src/ui/stash/view/find.ts";
import { knownStash } from "../../src/ui/stash/view/known.ts";
import { item } from "./store/books.ts";

// The numbers are of the ranges for use inside a shop; their check digits are those of tests/reference/gtin.test.ts' rule.
const withCode = (id: string, gtin: string) => {
  const plain = item(id);
  return { ...plain, supply: { ...plain.supply, gtin } };
};
const stash = [withCode("ean", "2001234567893"), withCode("upc", "423456789013"), item("none")];

describe("a bar code's number", () => {
  it.each([
    ["2001234567893", "ean"],
    ["2 001234 567893", "ean"],
    ["2-001234-567893", "ean"],
    ["02001234567893", "ean"],
    ["423456789013", "upc"],
    ["0423456789013", "upc"],
    ["00423456789013", "upc"],
  ])("%s finds what has it, in the stash's search, the search field and by itself", (typed, id) => {
    expect(lookUp(typed, stash)).toMatchObject({ kind: "found", items: [{ id }] });
    expect([...findIn(knownStash(stash), { ...anything, text: typed }).ids]).toEqual([id]);
    expect(findEntries(entriesOf({ stash }), typed).map(({ key }) => key)).toEqual([`stash ${id}`]);
  });

  it.each([
    ["", { kind: "empty" }],
    ["  ", { kind: "empty" }],
    ["moss 12", { kind: "letters" }],
    ["12345", { kind: "length", count: 5 }],
    ["2001234567894", { kind: "slip" }],
    ["2001234567891", { kind: "slip" }],
    ["2999999999991", { kind: "unknown", code: "2999999999991" }],
  ])("%j is answered", (typed, answer) => expect(lookUp(typed, stash)).toEqual(answer));

  it("is only called a slip where it looks like one", () => {
    expect(isGtinSlip("2001 2345 6789 4")).toBe(true);
    for (const text of ["2001234567893", "moss 2001234567894", "123456", "#12345678", ""])
      expect(isGtinSlip(text)).toBe(false);
  });
});
