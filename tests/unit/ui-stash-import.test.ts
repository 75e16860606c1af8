import { describe, expect, it } from "vitest";
import { fields, guessMapping, type Mapping, understand } from "../../src/engine/intake/index.ts";
import { isTable } from "../../src/ui/stash/import/pasted.ts";
import { fieldOptions, headOptions, withColumn } from "../../src/ui/stash/import/view/options.ts";
import { columnName, rowView } from "../../src/ui/stash/import/view/rows.ts";
import { importWords as en } from "../../src/ui/words/en/import.ts";
import { importWords as sv } from "../../src/ui/words/sv/import.ts";
import { around, tableOf } from "./intake/around.ts";

const heads = ["Name", "Type", "Qty", "Where"];
function viewOf(line: string) {
  const table = tableOf(`Name|Type|Qty|Where\n${line}`);
  const [read] = understand(table, guessMapping(table, "SEK"), around());
  if (!read) throw new Error("no row");
  return rowView({ read, cells: line.split("|") }, heads, 5);
}

describe("a row of a list, ready to print", () => {
  it("says what it was understood as, and shows each cell", () => {
    const view = viewOf("Moss|alcohol marker|2|blue tin");
    expect(view).toMatchObject({ row: "2", name: "Moss", reason: null, doubts: [] });
    expect(view.facts).toBe("2 of them, alcohol, blue tin");
    expect(view.cells.map(({ text }) => text)).toEqual(["Moss", "alcohol marker", "2", "blue tin", ""]);
  });
  it("says in words which cell to look at", () => {
    const { cells, doubts } = viewOf("Moss|marker|lots|");
    expect(cells[2]?.doubt).toBe("“lots” was not understood; it is kept in the note");
    expect(doubts).toEqual(["Qty: “lots” was not understood; it is kept in the note"]);
  });
  it("that is no thing is shown as it stands, with the reason", () => {
    expect(viewOf("Total|||9")).toMatchObject({
      swatch: null,
      name: "Total",
      reason: "a sum of the list, no thing",
    });
  });
});

it("a column without a head goes by its number", () => {
  expect(columnName(["Name"], 0)).toBe("Name");
  expect(columnName(["", "x"], 0)).toBe("Column 1");
});

describe("choosing what a column is", () => {
  const mapping: Mapping = { head: 0, columns: ["name", "note", null], currency: "SEK", family: null };
  it("takes it from the column that was it", () =>
    expect(withColumn(mapping, 2, "name").columns).toEqual([null, "note", "name"]));
  it("leaves notes and tags where they are", () =>
    expect(withColumn(mapping, 2, "note").columns).toEqual(["name", "note", "note"]));
  it("can leave it out", () => expect(withColumn(mapping, 0, null).columns).toEqual([null, "note", null]));
  it("offers every field, and no more head rows than there are rows", () => {
    expect(fieldOptions).toHaveLength(fields.length + 1);
    expect(headOptions(2)).toHaveLength(3);
    expect(headOptions(500)).toHaveLength(11);
  });
});

it("only a pasted block of cells is taken for a table", () => {
  expect(isTable("a\tb\nc\td")).toBe(true);
  expect(isTable("2 gouache tubes\t15 ml")).toBe(false);
  expect(isTable("moss\nbrick")).toBe(false);
});

it("says counts in both languages", () => {
  expect(en.counts("412", "8", "3")).toBe("412 to add, 8 already here and 3 not understood");
  expect(sv.counts("412", "8", "3")).toBe("412 att lägga till, 8 finns redan och 3 gick inte att förstå");
  expect([en.add("1", true), en.saveRest("1", true), sv.add("412", false)]).toEqual([
    "Add 1 thing",
    "Save the 1 row not added",
    "Lägg till 412 saker",
  ]);
});
