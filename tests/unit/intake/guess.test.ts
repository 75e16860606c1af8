import { describe, expect, it } from "vitest";
import { guessMapping } from "../../../src/engine/intake/index.ts";
import { tableOf } from "./around.ts";

// What people head columns by: common practice, no source.
describe("heads", () => {
  it.each([
    ["Brand|Range|Colour|No.|Type|Qty|Where", "maker line colour code kind owned place"],
    ["Name|Condition|Notes|Tags|Date", "name state note tags acquired"],
    ["Manufacturer|Product name|Colour name|Hex code|Barcode", "maker name colour hex gtin"],
    ["Paper size|Weight|Sheets|Sheets left|Name", "size gsm sheets sheetsLeft name"],
    ["Tillverkare|Serie|Färg|Nr|Slag|Antal|Plats", "maker line colour code kind owned place"],
    ["Namn|Skick|Anteckning|Taggar|Inköpsdatum", "name state note tags acquired"],
    ["Märke|Benämning|Kulör|Hexkod|Streckkod", "maker name colour hex gtin"],
    ["Format|Vikt (g/m²)|Antal ark|Ark kvar|Namn", "size gsm sheets sheetsLeft name"],
    ["Price (EUR)|Currency|Cost centre|Name", "paid currency  name"],
    ["NAME |qty_owned|Storage location", "name owned place"],
  ])("%s", (heads, expected) => {
    const { head, columns } = guessMapping(tableOf(heads), "SEK");
    expect(head).toBe(0);
    expect(columns.map((field) => field ?? "")).toEqual(expected.split(" "));
  });

  it("stand under a title and an empty line as well", () => {
    const table = tableOf("My things\n|\nName|Qty\nMoss|2");
    expect(guessMapping(table, "SEK").head).toBe(2);
  });
  it("are none where the first row is a thing", () => {
    const { head, columns } = guessMapping(tableOf("2 gouache tubes moss\nalcohol marker brick"), "SEK");
    expect([head, columns]).toEqual([null, ["text"]]);
  });
  it("in an unknown language are told by what stands below", () => {
    const { head, columns } = guessMapping(tableOf("Merkki|Väri\nKvist|#6b7d3a\nKvist|#aa3322"), "EUR");
    expect(head).toBe(0);
    expect(columns[1]).toBe("hex");
  });
  it("name the currency of their prices", () => {
    expect(guessMapping(tableOf("Name|Price (JPY)\na|5"), "SEK").currency).toBe("JPY");
    expect(guessMapping(tableOf("Name|Pris kr\na|5"), "NOK").currency).toBe("NOK");
    expect(guessMapping(tableOf("Name|Price\na|5"), "SEK").currency).toBe("SEK");
  });
  it("that lie are not believed", () => {
    expect(guessMapping(tableOf("Name|Colour\nMoss|#6b7d3a\nBrick|#aa3322"), "SEK").columns[1]).toBe("hex");
    expect(guessMapping(tableOf("Format|Name\ntube|Moss\npan|Sky"), "SEK").columns[0]).toBe("size");
  });
  it.each(["__proto__|Quantity|constructor|Name", "valueOf|Qty|Name"])("%s are only words", (heads) =>
    expect(guessMapping(tableOf(heads), "SEK").columns.at(-1)).toBe("name"),
  );
});

describe("cells without heads", () => {
  it.each([
    [
      "#6b7d3a|6291041500213|2024-11-02|5 kr|Moss thing\n#aa3322|6291041500213|2024-11-03|7 kr|Brick thing",
      "hex gtin acquired paid text",
    ],
    ["Moss|marker|2\nBrick|marker|1\nSky|marker|1", "name kind owned"],
    ["A4|300 gsm|Good block\nA5|120 gsm|Other block", "size gsm text"],
    ["HB|Soft one\n2B|Softer one", "grade text"],
  ])("%s", (lines, expected) =>
    expect(guessMapping(tableOf(lines), "SEK").columns).toEqual(expected.split(" ")),
  );
});

it("a person's own head row goes before the guess", () => {
  const table = tableOf("Name|Qty\nMoss|2\nBrick|1");
  expect(guessMapping(table, "SEK", "en", null).head).toBeNull();
  expect(guessMapping(table, "SEK", "en", 1).head).toBe(1);
});
it("an empty table has no columns", () =>
  expect(guessMapping({ name: "", rows: [] }, "SEK").columns).toEqual([]));
