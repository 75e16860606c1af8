import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { guessMapping, understand } from "../../../src/engine/intake/index.ts";
import { readFile } from "../../../src/workers/file/read-file.ts";
import { around } from "../intake/around.ts";

// Source: written by LibreOffice 7.4 out of libreoffice.fods, with figures, days and sums as a Swedish office program
// shows them; how is said in fixtures/lists/make.py.
const files = ["libreoffice.xlsx", "libreoffice.ods", "libreoffice-windows-1252.csv"] as const;

async function rowsOf(file: string, more: Parameters<typeof around>[0] = {}) {
  const read = await readFile(readFileSync(`fixtures/lists/${file}`), file);
  const [table] = read.ok && read.content.kind !== "workbook" ? read.content.tables : [];
  if (!table) throw new Error("no table");
  return understand(table, guessMapping(table, "SEK", "sv"), around({ language: "sv", ...more }));
}

const draftsOf = async (file: string) =>
  (await rowsOf(file)).flatMap((row) => (row.kind === "refused" ? [] : [row.draft]));

describe("a list as LibreOffice writes it", () => {
  it.each(files)("%s: what stands above the heads and the sums below are no things", async (file) => {
    const rows = await rowsOf(file);
    expect(rows.map(({ kind }) => kind)).toEqual([...Array(6).fill("new"), "refused"]);
    expect(rows.at(-1)).toMatchObject({ reason: "en summa i listan, ingen sak" });
  });
  it.each(files)("%s: each cell is what was typed", async (file) => {
    const [moss, , dusk, pencil, liner, block] = await draftsOf(file);
    expect(moss).toMatchObject({
      supply: {
        family: "paint",
        maker: "Fjällbrand",
        line: "Älv",
        code: "012",
        colour: { name: "mossa", hex: "#6b7d3a", from: "typed" },
      },
      owned: 2,
      acquired: "2024-11-02",
      place: "blå lådan",
      note: "=1+1 är inte 3",
    });
    expect(
      [moss, dusk, pencil, block].map((draft) => [Number(draft?.paid?.amount), draft?.paid?.currency]),
    ).toEqual([39.5, 1039.5, 12, 129].map((amount) => [amount, "SEK"]));
    expect(dusk).toMatchObject({ acquired: "2025-01-31", note: "present, ”fin”; köpt i €" });
    expect(liner).toMatchObject({ state: "dried", note: "+46 70", supply: { traits: { widthMm: 0.3 } } });
    expect(block).toMatchObject({ acquired: "2023-05-06", supply: { traits: { gsm: 300, bound: "block" } } });
  });
  it.each(files)("brought in from %s, none of the others adds anything", async (file) => {
    const stash = (await draftsOf(file)).map((draft, at) => ({ id: `st-${at}`, ...draft }));
    for (const other of files)
      expect((await rowsOf(other, { stash })).filter(({ kind }) => kind === "new")).toEqual([]);
  });
});
