import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Cell, cleanText, fields, guessMapping, understand } from "../../src/engine/intake/index.ts";
import { StashItemSchema } from "../../src/engine/supply/index.ts";
import { csvLine } from "../../src/workers/csv.ts";
import { decodeText } from "../../src/workers/file/decode.ts";
import { readFile } from "../../src/workers/file/read-file.ts";
import { readText } from "../../src/workers/file/text.ts";
import { around } from "../unit/intake/around.ts";

const words = [
  "Moss",
  "marker",
  "gouache tube 15 ml",
  "#6b7d3a",
  "39,50 kr",
  "2",
  "2024-11-02",
  "A4",
  "Total",
  "låg",
  "",
  "HB",
];
const text = fc.oneof(fc.constantFrom(...words), fc.string({ unit: "binary", maxLength: 12 }));
const cell: fc.Arbitrary<Cell> = fc.oneof(
  { weight: 6, arbitrary: text.map((one) => cleanText(one) || null) },
  { weight: 1, arbitrary: fc.double() },
  { weight: 1, arbitrary: fc.constant({ date: "2024-02-29" }) },
);
const rows = fc.array(fc.array(cell, { maxLength: 6 }), { minLength: 1, maxLength: 12 });
const columns = fc.array(fc.option(fc.constantFrom(...fields)), { maxLength: 6 });
const mapping = fc.record({
  head: fc.option(fc.nat(3)),
  columns,
  currency: fc.constantFrom("SEK", "EUR"),
  family: fc.constantFrom(null, "marker", "paper"),
});

describe("any table at all", () => {
  it("comes to things that the format takes, under any mapping", () => {
    fc.assert(
      fc.property(rows, mapping, (all, how) => {
        for (const row of understand({ name: "", rows: all }, how, around())) {
          if (row.kind === "refused") continue;
          const item = { id: "st-1", ...row.draft };
          expect(StashItemSchema.safeParse(item).error?.issues ?? []).toEqual([]);
          expect(item.supply.name).not.toBe("");
        }
      }),
      { numRuns: 400 },
    );
  });

  it("brought in twice adds nothing twice, whatever the second mapping", () => {
    fc.assert(
      fc.property(rows, mapping, mapping, (all, one, other) => {
        const table = { name: "", rows: all };
        const first = understand(table, one, around());
        const stash = first.flatMap((row, at) =>
          row.kind === "refused" ? [] : [{ id: `st-${at}`, ...row.draft }],
        );
        const added = new Set(first.filter(({ kind }) => kind === "new").map(({ row }) => row));
        const again = understand(table, { ...other, head: one.head }, around({ stash }));
        expect(again.filter(({ kind, row }) => kind === "new" && added.has(row))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it("is read the same way each time", () => {
    fc.assert(
      fc.property(rows, (all) => {
        const table = { name: "", rows: all };
        const how = guessMapping(table, "SEK");
        expect(how.columns).toHaveLength(Math.max(...all.map((row) => row.length)));
        expect(understand(table, how, around())).toEqual(understand(table, how, around()));
      }),
      { numRuns: 200 },
    );
  });
});

describe("CSV", () => {
  // Quality bar X5: importing our export gives back the original text.
  it("that we write reads back as the text it was, 50,000 cells of it", () => {
    const hard = fc.oneof(
      fc.string({ unit: "binary", maxLength: 20 }),
      fc
        .tuple(fc.constantFrom("=", "+", "-", "@", "'", '"', ",", ";", "\t"), fc.string({ maxLength: 8 }))
        .map(([sign, rest]) => sign + rest),
    );
    const line = fc.array(hard, { minLength: 10, maxLength: 10 });
    let cells = 0;
    fc.assert(
      fc.property(fc.array(line, { minLength: 25, maxLength: 25 }), (lines) => {
        const kept = lines.map((row) => row.map((one) => cleanText(one) || "x"));
        const { table } = readText(kept.map(csvLine).join(""), "list", ",");
        expect(table.rows).toEqual(kept);
        cells += kept.length * 10;
      }),
      { numRuns: 200 },
    );
    expect(cells).toBe(50_000);
  });

  it("in any encoding is the same text", () => {
    const letters = fc.string({ unit: fc.constantFrom(..."abcåäöÅÄÖé ;,\n"), minLength: 20, maxLength: 60 });
    fc.assert(
      fc.property(letters, (written) => {
        expect(decodeText(Buffer.from(written, "utf16le"))).toBe(written);
        expect(decodeText(Buffer.from(written))).toBe(written);
        expect(decodeText(Buffer.from(`${written}é `, "latin1"))).toBe(`${written}é `);
      }),
      { numRuns: 300 },
    );
  });
});

// Quality bar X3: whatever comes, an answer and no crash.
it("bytes of any sort are read or refused", async () => {
  const start = fc.constantFrom("", "PK\u0003\u0004", "{", "<", "\uFEFFName,Qty\n", '"', "sep=;\n");
  await fc.assert(
    fc.asyncProperty(start, fc.uint8Array({ maxLength: 400 }), async (first, rest) => {
      const bytes = new Uint8Array([...Buffer.from(first), ...rest]);
      const read = await readFile(bytes, "x");
      expect(typeof read.ok).toBe("boolean");
    }),
    { numRuns: 2_000 },
  );
});
