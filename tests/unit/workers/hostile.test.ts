import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { crc32 } from "../../../src/workers/file/crc32.ts";
import type { FileFault } from "../../../src/workers/file/fault.ts";
import { readFile } from "../../../src/workers/file/read-file.ts";
import { sampleBook } from "../sample.ts";
import { odsOf, textCell, xlsxOf, zipOf } from "./zipped.ts";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const noughts = (count: number): Uint8Array => new Uint8Array(count);
const xlsxFile = readFileSync("fixtures/lists/xlsxwriter.xlsx");
const cut = (file: Uint8Array, at: number): Uint8Array => file.slice(0, at);
const row = (cells: string, more = "") => `<row${more}>${cells}</row>`;
const odsRow = (cells: string, more = "") => `<table:table-row${more}>${cells}</table:table-row>`;
const odsCell = (more = "") =>
  `<table:table-cell office:value-type="string"${more}><text:p>x</text:p></table:table-cell>`;
const lying = { name: "xl/worksheets/sheet1.xml", content: noughts(300_000_000 / 10) };

// Quality bar X3: type by content, caps before unpacking, a reason, and at most two seconds for each.
const refused: readonly (readonly [string, () => Uint8Array, FileFault])[] = [
  ["an empty file", () => noughts(0), "empty"],
  ["a file of spaces", () => bytes(" \r\n\t \n"), "empty"],
  ["noughts", () => noughts(5_000), "empty"],
  ["a PDF called a list", () => bytes("%PDF-1.7\n1 0 obj"), "pdf"],
  ["a PNG", () => new Uint8Array([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13]), "picture"],
  ["a JPEG", () => new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0, 16]), "picture"],
  ["rich text", () => bytes("{\\rtf1 hello}"), "no-table"],
  [
    "an old spreadsheet",
    () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0]),
    "old-spreadsheet",
  ],
  ["a web page", () => bytes("<!DOCTYPE html><table><tr><td>Moss</td></tr></table>"), "web-page"],
  [
    "a drawing with a script",
    () => bytes('<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>'),
    "web-page",
  ],
  [
    "XML with entities",
    () => bytes('<?xml version="1.0"?><!DOCTYPE a [<!ENTITY b "c">]><a>&b;</a>'),
    "web-page",
  ],
  ["gzip", () => new Uint8Array([0x1f, 0x8b, 8, 0, 0, 0]), "archive"],
  ["a program", () => Uint8Array.from({ length: 4_000 }, (_, at) => (at * 7) % 251), "no-table"],
  ["JSON of another kind", () => bytes('{"format":"other","stash":[]}'), "other-json"],
  [
    "a workbook of a newer version",
    () => bytes('{"format":"understudy-workbook","version":9}'),
    "other-json",
  ],
  [
    "a workbook with nothing in its stash",
    () => bytes('{"format":"understudy-workbook","version":1}'),
    "empty",
  ],
  ["JSON nested without end", () => bytes('{"a":'.repeat(200_000)), "other-json"],
  ["50,000,001 bytes", () => noughts(50_000_001), "too-large"],
  ["101,000 lines", () => bytes("Name,Qty\n".repeat(101_000)), "too-many-rows"],
  ["one line of 201 cells", () => bytes(`${"x,".repeat(201)}\n`.repeat(2)), "too-many-columns"],
  ["one endless cell", () => bytes(`Name,Qty\n${"x".repeat(10_000_000)},1`), "too-much"],
  ["a zip of pictures", () => zipOf([{ name: "a.png", content: noughts(10) }]), "archive"],
  [
    "a zip with steps up in its names",
    () => zipOf([{ name: "../../etc/passwd", content: noughts(10) }]),
    "archive",
  ],
  ["an empty zip", () => zipOf([]), "archive"],
  ["a zip that is cut off", () => cut(xlsxFile, 3_000), "damaged"],
  ["a zip whose directory leads nowhere", () => zipOf([{ name: "a", content: noughts(1) }], 5), "damaged"],
  [
    "a sheet that does not fit its sum",
    () => xlsxOf("", [{ name: "xl/worksheets/sheet9.xml", content: noughts(9), says: { crc: 1 } }]),
    "damaged",
  ],
  [
    "2,001 files",
    () => zipOf(Array.from({ length: 2_001 }, (_, at) => ({ name: `${at}`, content: noughts(0) }))),
    "bomb",
  ],
  [
    "a thousandfold bomb",
    () => xlsxOf("", [{ name: "xl/worksheets/sheet2.xml", content: noughts(30_000_000) }]),
    "bomb",
  ],
  [
    "unpacked over 200 MB by its own account",
    () => xlsxOf("", [{ ...lying, says: { unpacked: 201_000_000 } }]),
    "bomb",
  ],
  ["a bomb that lies about its size", () => xlsxOf("", [{ ...lying, says: { unpacked: 1_000 } }]), "bomb"],
  [
    "files laid over each other",
    () =>
      xlsxOf(
        "",
        Array.from({ length: 50 }, (_, at) => ({
          name: `xl/worksheets/sheet${at + 2}.xml`,
          content: noughts(9_000_000),
          says: { offset: 0 },
        })),
      ),
    "bomb",
  ],
  [
    "a locked file in the archive",
    () => xlsxOf("", [{ name: "xl/worksheets/sheet9.xml", content: noughts(9), says: { flags: 1 } }]),
    "locked",
  ],
  [
    "an ODS file with a password",
    () =>
      zipOf([
        { name: "META-INF/manifest.xml", content: bytes("<m><manifest:encryption-data/></m>") },
        { name: "content.xml", content: noughts(99) },
      ]),
    "locked",
  ],
  [
    "packing nobody knows",
    () => xlsxOf("", [{ name: "xl/worksheets/sheet9.xml", content: noughts(9), says: { method: 99 } }]),
    "damaged",
  ],
  ["a sheet without rows", () => xlsxOf(""), "empty"],
  ["a sheet of 100,001 rows", () => xlsxOf(row(textCell("x")).repeat(100_020)), "too-many-rows"],
  [
    "a row numbered beyond all",
    () => xlsxOf(`${row(textCell("x"))}${row(textCell("y", "A100001"), ' r="100001"')}`),
    "too-many-rows",
  ],
  [
    "a cell in the last column there is",
    () => xlsxOf(row(textCell("x", "XFD1"), ' r="1"')),
    "too-many-columns",
  ],
  ["a cell of many letters", () => xlsxOf(row(textCell("x".repeat(40_000)))), "too-much"],
  [
    "an ODS row that stands for a million",
    () => odsOf(odsRow(odsCell(), ' table:number-rows-repeated="1000000"')),
    "too-many-rows",
  ],
  [
    "an ODS cell that stands for 16,384",
    () => odsOf(odsRow(odsCell(' table:number-columns-repeated="16384"'))),
    "too-many-columns",
  ],
  [
    "ODS cells that stand for twenty million",
    () =>
      odsOf(odsRow(odsCell(' table:number-columns-repeated="200"'), ' table:number-rows-repeated="100000"')),
    "too-much",
  ],
];

describe("refused, with its reason, in under two seconds", () => {
  it.each(refused)("%s", async (_, make, fault) => {
    const file = make();
    const start = performance.now();
    expect(await readFile(file, "list.csv")).toEqual({ ok: false, fault });
    expect(performance.now() - start).toBeLessThan(2_000);
  });
});

describe("read for what it is", () => {
  const rowsOf = async (file: Uint8Array, name = "x") => {
    const read = await readFile(file, name);
    return read.ok && read.content.kind !== "workbook" ? read.content.tables[0]?.rows : read;
  };
  it("a spreadsheet that is called a picture", async () =>
    expect(await rowsOf(xlsxOf(row(textCell("Moss"))), "moss.png")).toEqual([["Moss"]]));
  it("entities are the five of XML, and never more", async () => {
    const sheet = row(`${textCell("a &amp; b &lt;c&gt; &lol;")}`);
    expect(await rowsOf(xlsxOf(sheet))).toEqual([["a & b <c> &lol;"]]);
  });
  it("a formula is its value, or nothing", async () =>
    expect(
      await rowsOf(xlsxOf(row(`<c><f>1+1</f><v>2</v></c><c><f>HYPERLINK("x")</f></c>${textCell("y")}`))),
    ).toEqual([[2, null, "y"]]));
  it("an error is nothing", async () =>
    expect(await rowsOf(xlsxOf(row(`${textCell("a")}<c t="e"><v>#DIV/0!</v></c>`)))).toEqual([["a", null]]));
  it("sheets and heads named like the insides of objects are only names", async () => {
    expect(await rowsOf(bytes("__proto__,constructor\n1,2\n3,4"))).toEqual([
      ["__proto__", "constructor"],
      ["1", "2"],
      ["3", "4"],
    ]);
    expect(({} as Record<string, unknown>)["1"]).toBeUndefined();
  });
  it("text that only begins like JSON", async () =>
    expect(await rowsOf(bytes("{moss},2\n{brick},1"))).toEqual([
      ["{moss}", "2"],
      ["{brick}", "1"],
    ]));
  it("the stash of a workbook", async () => {
    const book = sampleBook();
    const read = await readFile(bytes(JSON.stringify(book)), "book.json");
    expect(read.ok && read.content.kind === "workbook" && read.content.items.length).toBe(book.stash?.length);
  });
});

// Source: the check value of CRC-32/ISO-HDLC, "123456789" -> cbf43926.
it("sums as ZIP does", () => {
  expect(crc32(bytes("123456789"))).toBe(0xcbf43926);
  expect(crc32(noughts(0))).toBe(0);
});
