import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { decodeText } from "../../../src/workers/file/decode.ts";
import { guessDelimiter, readText } from "../../../src/workers/file/text.ts";

const rowsOf = (text: string) => readText(text, "list").table.rows;
const published = JSON.parse(readFileSync("fixtures/reference/csv.json", "utf8"));

describe("CSV", () => {
  // Source: RFC 4180, section 2, by way of fixtures/reference/csv.json. Spaces around a cell are no part of it here.
  it.each(published.rfc4180.cases as { rule: string; text: string; rows: string[][] }[])(
    "$rule",
    ({ text, rows }) => {
      const { table } = readText(text, "list", ",");
      expect(table.rows).toEqual(rows.map((row) => row.map((cell) => cell.trim() || null)));
    },
  );
  it.each(published.rfc4180.malformed as { text: string; why: string }[])(
    "$why: nothing is lost",
    ({ text }) => {
      const letters = (any: string) => any.replace(/[^abc]/g, "");
      expect(letters(JSON.stringify(readText(text, "list", ",").table.rows))).toBe(letters(text));
    },
  );
  it("an inch sign swallows no rows", () => {
    expect(rowsOf('Name,Size\nPad,"9 x 12\nBlock,A4\nBook,A5')).toHaveLength(4);
  });

  // Source: OWASP, "CSV Injection", by way of the same file: the apostrophe before such a cell is taken off again.
  it.each(published.formulaInjection.examples as { input: string; output: string }[])(
    "$input",
    ({ input, output }) => expect(readText(`${output},x`, "list", ",").table.rows[0]?.[0]).toBe(input),
  );
  it("cells that begin like a formula are text", () =>
    expect(rowsOf("Name,Note\n=1+1,+46 70\n-x,@you")).toEqual([
      ["Name", "Note"],
      ["=1+1", "+46 70"],
      ["-x", "@you"],
    ]));
});

// Which sign parts cells: common practice, no source.
describe("dialects", () => {
  it.each([
    ["a,b,c\n1,2,3\n4,5,6", ","],
    ["a;b;c\n1,5;2;3\n4,5;5;6", ";"],
    ["a\tb\tc\n1,5\t2, 3\t3\n4\t5\t6", "\t"],
    ["a|b|c\n1|2, 3|3\n4|5|6", "|"],
    ["2 gouache tubes, moss, 15 ml\nalcohol marker, brick\nkneaded eraser", ""],
    ["moss\nbrick", ""],
    ["Name\tQty", "\t"],
    ['"a;b",c\n"d;e;f",g\n"h",i', ","],
  ])("%j is parted by %j", (text, delimiter) => expect(guessDelimiter(text)).toBe(delimiter));
  it("the file may say it itself", () => {
    expect(readText("sep=;\r\na,b;c\r\n1;2", "list")).toMatchObject({
      delimiter: ";",
      table: {
        rows: [
          ["a,b", "c"],
          ["1", "2"],
        ],
      },
    });
  });
  it.each(["\n", "\r\n", "\r"])("lines may end in %j", (end) =>
    expect(rowsOf(["a,b", "c,d", "e,f", ""].join(end))).toEqual([
      ["a", "b"],
      ["c", "d"],
      ["e", "f"],
    ]),
  );
  it("a person may say otherwise", () =>
    expect(readText("a,b;c\nd,e;f", "list", ",").table.rows).toEqual([
      ["a", "b;c"],
      ["d", "e;f"],
    ]));
});

// Source: WHATWG Encoding for the names and the bytes (Buffer's latin1 agrees with windows-1252 but for 80–9F).
describe("encodings", () => {
  const text = "Namn;Färg\r\nÅlandspenna;grön “fin”\r\n";
  const utf16be = Buffer.from(text, "utf16le").swap16();
  it.each([
    ["UTF-8", Buffer.from(text)],
    ["UTF-8 with its mark", Buffer.from(`\uFEFF${text}`)],
    ["UTF-16 little end first, with its mark", Buffer.from(`\uFEFF${text}`, "utf16le")],
    ["UTF-16 little end first", Buffer.from(text, "utf16le")],
    ["UTF-16 big end first, with its mark", Buffer.concat([Buffer.from([0xfe, 0xff]), utf16be])],
    ["UTF-16 big end first", utf16be],
    ["Windows-1252", Buffer.from(text.replace("“", "\u0093").replace("”", "\u0094"), "latin1")],
  ])("%s", (_, bytes) => expect(decodeText(bytes).replace("\uFEFF", "")).toBe(text));
});

describe("caps", () => {
  const fault = (text: string) => {
    try {
      return readText(text, "list").table.rows.length;
    } catch (error) {
      return error instanceof Error ? error.message : error;
    }
  };
  const lines = (count: number, line = "a,b") => `${line}\n`.repeat(count);
  it("100,000 rows are read, one more is not", () => {
    expect(fault(lines(100_000))).toBe(100_000);
    expect(fault(lines(100_001))).toBe("too-many-rows");
    expect(fault(lines(200_000))).toBe("too-many-rows");
  });
  it("200 columns are read, one more is not", () => {
    expect(fault(lines(2, Array(200).fill("x").join(",")))).toBe(2);
    expect(fault(lines(2, Array(201).fill("x").join(",")))).toBe("too-many-columns");
  });
  it("a cell holds as much as a spreadsheet's", () => {
    expect(fault(`a,b\n${"x".repeat(32_767)},y`)).toBe(2);
    expect(fault(`a,b\n${"x".repeat(32_768)},y`)).toBe("too-much");
  });
  it("nothing but signs is nothing", () => expect(fault(",,,\n,,,\n")).toBe("empty"));
});

it("halves of characters, control characters and odd spaces become plain text", () =>
  expect(rowsOf("a\ud800b,c\u0000\u0007d\ne\u00a0f,\ufeffg")).toEqual([
    ["a\ufffdb", "cd"],
    ["e f", "g"],
  ]));
