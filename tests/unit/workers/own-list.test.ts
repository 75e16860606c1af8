import { readFileSync } from "node:fs";
import xlsx from "@e965/xlsx";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { type Draft, notHeld, ownList, saidBy } from "../../../src/engine/intake/index.ts";
import type { Language } from "../../../src/engine/record/index.ts";
import type { StashItem } from "../../../src/engine/supply/index.ts";
import { readWorkbook } from "../../../src/engine/workbook/index.ts";
import { type ListKind, listKinds } from "../../../src/workers/out/kinds.ts";
import { listFile } from "../../../src/workers/out/list-file.ts";
import { createSession } from "../../../src/workers/session.ts";
import { around } from "../intake/around.ts";

const sample = (): readonly StashItem[] => {
  const read = readWorkbook(readFileSync("fixtures/sample.understudy.json", "utf8"));
  if (!read.ok) throw new Error("the sample does not read");
  return read.workbook.stash ?? [];
};
const kits = ["kit-a"];

/** What comes of a list when it is brought in. */
async function broughtIn(bytes: Uint8Array, stash: readonly StashItem[] = [], language: Language = "en") {
  const session = createSession();
  const opened = await session.openFile(bytes, "list");
  expect(opened).toMatchObject({ ok: true });
  expect(session.guess(0, "SEK", language)).toBe(null);
  const summary = session.readItems(around({ stash, kits, language }));
  return { drafts: session.drafts([]), summary };
}
const said = (items: readonly (StashItem | Draft)[]) => items.map((item) => saidBy(item));

/** Every trait that there is, and what is easily lost on the way. */
const odd: readonly StashItem[] = JSON.parse(readFileSync("fixtures/lists/odd-stash.json", "utf8"));

const cases = listKinds.flatMap((kind) =>
  (["en", "sv"] as const).map((language) => [kind, language] as const),
);

describe.each(cases)("%s, in %s", (kind: ListKind, language: Language) => {
  it("comes back in with every fact it had, under the same ids", async () => {
    for (const items of [odd, sample().map(({ fromKit: _, ...rest }) => rest)]) {
      const { drafts, summary } = await broughtIn(
        await listFile(kind, items, language, "Stash"),
        [],
        language,
      );
      expect(summary).toMatchObject({ fresh: items.length, here: 0, refused: 0, doubtful: 0 });
      expect(said(drafts)).toEqual(said(items));
    }
  });
  it("adds nothing where the things are here", async () => {
    const { summary } = await broughtIn(await listFile(kind, odd, language, "Stash"), odd, language);
    expect(summary).toMatchObject({ fresh: 0, here: odd.length, refused: 0 });
    expect(summary?.notAdded[0]?.read).toMatchObject({
      reason: language === "en" ? "already here" : "finns redan",
    });
  });
});

/** A cell as another program's reader has it. */
type Seen = Readonly<{ t: string; v?: unknown; w?: string; f?: string }>;

// Source: the npm package @e965/xlsx 0.20.3, whole: a reader of both formats that had no part in writing them.
describe.each(["xlsx", "ods"] as const)("%s, as another program reads it", (kind) => {
  const seen = async (items: readonly StashItem[], language: Language = "en") => {
    const book = xlsx.read(await listFile(kind, items, language, "Stash"), {
      UTC: true,
      cellDates: true,
      dense: true,
    });
    const [name = ""] = book.SheetNames;
    return { name, rows: (book.Sheets[name]?.["!data"] ?? []) as readonly (readonly Seen[])[] };
  };
  it("has its sheet, its heads, and a row for each thing", async () => {
    const { name, rows } = await seen(odd);
    expect(name).toBe("Stash");
    expect(rows[0]?.map(({ v }) => v)).toEqual(ownList(odd, "en").heads);
    expect(rows).toHaveLength(odd.length + 1);
  });
  it("has texts as texts, numbers as numbers, days as days, and no formula", async () => {
    const { rows } = await seen(odd);
    const { heads } = ownList(odd, "en");
    const column = (head: string) => rows.slice(1).map((row) => row[heads.indexOf(head)]);
    const types = (head: string) =>
      new Set(column(head).flatMap((cell) => (cell?.v === undefined ? [] : [cell.t])));
    for (const head of [
      "Kind",
      "Name",
      "Maker",
      "Series",
      "Code",
      "Bar code",
      "Size",
      "Currency",
      "Tags",
      "Note",
    ])
      expect([head, types(head)]).toEqual([head, new Set(["s"])]);
    for (const head of ["Pieces", "Volume, ml", "Width, mm", "Weight, g/m²", "Sheets in it", "Sheets left"])
      expect([head, types(head)]).toEqual([head, new Set(["n"])]);
    expect(types("Got on")).toEqual(new Set(["d"]));
    expect(column("Got on").find((cell) => cell?.v !== undefined)?.v).toEqual(
      new Date(Date.UTC(2024, 1, 29)),
    );
    expect(column("Price paid").flatMap((cell) => (cell?.t === "n" ? [cell.v] : []))).toEqual([39.5, 1000]);
    expect(rows.flat().filter((cell) => cell?.f !== undefined)).toEqual([]);
    expect(column("Name")[0]?.v).toBe("=SUM(A1:A9)");
    expect(column("Code")[1]?.v).toBe("007");
  });
  it("is the same bytes each time", async () => {
    expect(await listFile(kind, odd, "sv", "Förråd")).toEqual(await listFile(kind, odd, "sv", "Förråd"));
  });
});

// Source: RFC 4180, read by the npm package papaparse 5.7.1; OWASP, "CSV Injection", for what must not begin a cell.
describe("csv, as another program reads it", () => {
  it("is UTF-8 with its mark, lines end in CR LF, and no cell begins a formula", async () => {
    const bytes = await listFile("csv", odd, "sv", "Förråd");
    expect([...bytes.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    const { data, errors } = Papa.parse<string[]>(text, { delimiter: ",", newline: "\r\n" });
    expect(errors).toEqual([]);
    expect(data).toHaveLength(odd.length + 2);
    expect(data.flat().filter((cell) => /^[=+\-@\t\r\0]/.test(cell) && !/^-\d+$/.test(cell))).toEqual([]);
    expect(data[1]?.[1]).toBe("'=SUM(A1:A9)");
    expect(data[18]?.slice(data[0]?.indexOf("Skaffad"))).toEqual(
      expect.arrayContaining(["2024-02-29", "39.50", "SEK"]),
    );
  });
});

describe("a list that somebody worked on", () => {
  const rowsOf = async (items: readonly StashItem[]) =>
    Papa.parse<string[]>(new TextDecoder().decode(await listFile("csv", items, "en", "")), {
      skipEmptyLines: true,
    }).data;
  const bytesOf = (rows: readonly (readonly string[])[]) =>
    new TextEncoder().encode(Papa.unparse(rows as string[][]));
  const plain: StashItem = { id: "a", supply: { family: "paint", name: "Moss" }, place: "tin" };

  it("may have its columns in another order, a title above, and some left out", async () => {
    const rows = (await rowsOf([plain])).map((row) => row.toReversed());
    const code = rows[0]?.indexOf("Code");
    const moved = rows.map((row) => row.filter((_, i) => i !== code));
    const title = (moved[0] ?? []).map((_, i) => (i === 0 ? "My things" : ""));
    const { drafts } = await broughtIn(bytesOf([title, ...moved]));
    expect(said(drafts)).toEqual(said([plain]));
  });
  it("keeps in the note what no column of ours holds, or nothing was made of, and marks it", async () => {
    const [heads = [], row = []] = await rowsOf([plain]);
    const pieces = heads.indexOf("Pieces");
    const { drafts, summary } = await broughtIn(
      bytesOf([
        [...heads, "Shelf life"],
        [...row.map((cell, i) => (i === pieces ? "lots" : cell)), "2 years"],
      ]),
    );
    expect(drafts[0]?.note).toBe("Pieces: lots\nShelf life: 2 years");
    expect(summary).toMatchObject({ fresh: 1, doubtful: 1 });
  });
  it("takes a row that was added by hand, and tells a copied one from the one it was copied from", async () => {
    const rows = await rowsOf([plain]);
    const [heads = [], row = []] = rows;
    const id = heads.indexOf("Understudy id");
    const added = row.map((cell, i) => (i === id ? "" : i === heads.indexOf("Name") ? "Brick" : cell));
    const copied = row.map((cell, i) => (i === heads.indexOf("Name") ? "Dusk" : cell));
    const { drafts, summary } = await broughtIn(bytesOf([...rows, added, copied]));
    expect(drafts.map((draft) => [draft.id, draft.supply.name])).toEqual([
      ["a", "Moss"],
      [undefined, "Brick"],
      [undefined, "Dusk"],
    ]);
    expect(summary?.toLookAt.map(({ read }) => (read.kind === "new" ? read.doubts[0]?.reason : ""))).toEqual([
      "the same id as row 2: taken as a thing of its own",
    ]);
  });
  it("changes nothing that is here, and says so where it says otherwise", async () => {
    const bytes = await listFile("xlsx", [{ ...plain, place: "box" }], "en", "Stash");
    const { drafts, summary } = await broughtIn(bytes, [plain]);
    expect(drafts).toEqual([]);
    expect(summary?.notAdded[0]?.read).toMatchObject({
      reason: "already here; it stays as you have it, though the list says otherwise",
    });
  });
  it("leads only to twins and kits that are there", async () => {
    const items = [
      { ...plain, twinOf: ["gone", "b"], fromKit: "gone" },
      { ...plain, id: "b", place: "box", fromKit: "kit-a" },
    ];
    const { drafts } = await broughtIn(await listFile("ods", items, "sv", "Förråd"), [], "sv");
    expect(drafts.map(({ twinOf, fromKit }) => [twinOf, fromKit])).toEqual([
      [["b"], undefined],
      [undefined, "kit-a"],
    ]);
  });
  it("refuses rows that say nothing, and half a price is none", async () => {
    const [heads = [], row = []] = await rowsOf([{ ...plain, paid: { amount: "5", currency: "EUR" } }]);
    const without = (...names: string[]) =>
      row.map((cell, i) => (names.includes(heads[i] ?? "") ? "" : cell));
    const { drafts, summary } = await broughtIn(
      bytesOf([heads, without("Name", "Understudy id"), without("Currency")]),
    );
    expect(summary).toMatchObject({ fresh: 1, refused: 1 });
    expect([drafts[0]?.paid, drafts[0]?.note]).toEqual([undefined, "Price paid: 5"]);
  });
});

describe("what a list does not hold", () => {
  it("is counted: pictures, fields of nobody's, and texts longer than a cell takes", () => {
    const plain: StashItem = {
      id: "a",
      supply: { family: "paint", name: "Moss", traits: {}, colour: null },
      owned: 1,
      tags: [],
    };
    const long = "x".repeat(32_768);
    expect(notHeld([plain, ...odd], "sv")).toEqual({ pictures: 0, others: 0 });
    expect(
      notHeld(
        [plain, { ...plain, photos: ["ph-1"] }, { ...plain, mood: "blue" }, { ...plain, note: long }],
        "en",
      ),
    ).toEqual({ pictures: 1, others: 2 });
  });
});
