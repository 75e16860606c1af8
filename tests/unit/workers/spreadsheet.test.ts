import { readFileSync } from "node:fs";
import xlsx from "@e965/xlsx";
import { describe, expect, it } from "vitest";
import { type Cell, guessMapping, type Table, understand } from "../../../src/engine/intake/index.ts";
import { readFile } from "../../../src/workers/file/read-file.ts";
import { around } from "../intake/around.ts";

const read = async (bytes: Uint8Array, name = "list"): Promise<readonly Table[]> => {
  const read = await readFile(bytes, name);
  if (!read.ok) throw new Error(read.fault);
  return read.content.kind === "workbook" ? [] : read.content.tables;
};

// Source: each written by another program, see fixtures/lists/make.py.
const files = [
  "windows-1252-semicolon.csv",
  "utf-8-mark-comma.csv",
  "utf-16-tab.tsv",
  "utf-8-bar.txt",
  "xlsxwriter.xlsx",
  "openpyxl.xlsx",
  "by-hand.ods",
] as const;

const drafts = async (file: string, stash: Parameters<typeof around>[0] = {}) => {
  const [table] = await read(readFileSync(`fixtures/lists/${file}`), file);
  if (!table) throw new Error("no table");
  const rows = understand(table, guessMapping(table, "SEK", "sv"), around({ language: "sv", ...stash }));
  return rows.map((row) => ({ kind: row.kind, draft: row.kind === "refused" ? null : row.draft }));
};

describe("one list, as seven programs write it", () => {
  it.each(files)("%s says the same", async (file) => {
    const found = await drafts(file);
    expect(found).toEqual(await drafts("utf-8-bar.txt"));
    expect(found.map(({ draft }) => draft?.supply.family)).toEqual([
      "paint",
      "paint",
      "paint",
      "graphite",
      "liner",
      "paper",
    ]);
    expect(found[0]?.draft).toMatchObject({
      supply: {
        maker: "Fjällbrand",
        line: "Älv",
        code: "12",
        colour: { name: "mossa", hex: "#6b7d3a" },
        traits: { medium: "gouache", form: "tube" },
      },
      owned: 2,
      acquired: "2024-11-02",
      paid: { amount: "39.5", currency: "SEK" },
      place: "blå lådan",
      note: "=SUM(A1:A9)",
    });
    expect(found[2]?.draft).toMatchObject({ paid: { amount: "1039.5" }, note: "present, ”fin”" });
    expect(found[4]?.draft).toMatchObject({
      state: "dried",
      note: "+46 70",
      supply: { traits: { widthMm: 0.3 } },
    });
  });
  it.each(files)("brought in from %s, none of the others adds anything", async (file) => {
    const stash = (await drafts(file)).flatMap(({ draft }, at) =>
      draft ? [{ id: `st-${at}`, ...draft }] : [],
    );
    for (const other of files)
      expect((await drafts(other, { stash })).map(({ kind }) => kind)).toEqual(Array(6).fill("here"));
  });
});

/** A book by the library's own writer, which the app does not ship. */
function written(
  rows: readonly (readonly (Cell | boolean | Date)[])[],
  bookType: "xlsx" | "ods",
): Uint8Array {
  const book = xlsx.utils.book_new();
  xlsx.utils.book_append_sheet(
    book,
    xlsx.utils.aoa_to_sheet(
      rows.map((row) => [...row]),
      { UTC: true, cellDates: true },
    ),
    "One",
  );
  return new Uint8Array(xlsx.write(book, { type: "array", bookType, compression: true }) as ArrayBuffer);
}

describe.each(["xlsx", "ods"] as const)("%s", (kind) => {
  it("gives values of each sort", async () => {
    const rows = [
      ["Text", "Number", "Day", "Truth", "Gap", "After"],
      ["  å ä ö  ", 0.1, new Date(Date.UTC(2024, 1, 29)), true, null, "x"],
    ];
    const [table] = await read(written(rows, kind));
    expect(table?.rows).toEqual([
      ["Text", "Number", "Day", "Truth", "Gap", "After"],
      ["å ä ö", 0.1, { date: "2024-02-29" }, "true", null, "x"],
    ]);
  });
  it("keeps the number of a row below empty ones", async () => {
    const [table] = await read(written([["Name"], [null], [null], ["Moss"]], kind));
    expect(table?.rows.map((row) => row[0] ?? null)).toEqual(["Name", null, null, "Moss"]);
  });
});

it("hidden and empty sheets are left out", async () => {
  const tables = await read(readFileSync("fixtures/lists/xlsxwriter.xlsx"));
  expect(tables.map(({ name }) => name)).toEqual(["Förråd"]);
  expect((await read(readFileSync("fixtures/lists/openpyxl.xlsx"))).map(({ name }) => name)).toEqual([
    "Förråd",
  ]);
});
