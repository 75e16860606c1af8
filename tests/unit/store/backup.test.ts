import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { canonicalJson, readWorkbook } from "../../../src/engine/workbook/index.ts";
import { backupFile, restorable } from "../../../src/store/backup.ts";
import { crc32 } from "../../../src/store/checksum.ts";
import { bookOf, item, put, value } from "./books.ts";
import { newBook, newStorage, repositoryIn } from "./tools.ts";

const at = "2026-05-02T10:00:00.000Z";

it.each([
  // Source: the check value of CRC-32/ISO-HDLC, "123456789" → cbf43926 (RFC 3720 and the ZIP note use the same sum).
  { text: "123456789", expected: "cbf43926" },
  { text: "", expected: "00000000" },
  { text: "ÅÄÖ", expected: crcByZlibTable("ÅÄÖ") },
])("the checksum of “$text” is $expected", ({ text, expected }) => {
  expect(crc32(text)).toBe(expected);
});

/** The same sum bit by bit, without a table. */
function crcByZlibTable(text: string): string {
  let sum = ~0;
  for (const byte of Buffer.from(text, "utf8")) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (~sum >>> 0).toString(16).padStart(8, "0");
}

it("a backup is a workbook with a stamp, named after its time, and reads back whole", () => {
  const file = backupFile(bookOf({ stash: [item("a")] }), at);
  expect(file).toMatchObject({
    name: "understudy-2026-05-02-1000.json",
    type: "application/json",
    faults: [],
  });
  expect(readWorkbook(file.text)).toMatchObject({ ok: true, workbook: { backup: { at, records: 1 } } });
  expect(restorable(file.text)).toStrictEqual({
    ok: true,
    book: bookOf({ stash: [item("a")] }),
    writtenAt: at,
    records: 1,
    damaged: false,
  });
});

it("backup, wipe, restore gives the same book to the byte, again and again, and the restore can be undone", async () => {
  const text = readFileSync(new URL("../../../fixtures/sample.understudy.json", import.meta.url), "utf8");
  const sample = restorable(text);
  if (!sample.ok) throw new Error("the sample does not read");
  const first = newBook();
  await first.openBook(repositoryIn(newStorage()));
  await first.replaceBook(sample.book, "Load the sample");
  await first.perform({ label: "Add", changes: [put("my-own")] });
  const before = first.useBook.getState().book;
  const wiped = newBook();
  await wiped.openBook(repositoryIn(newStorage()));
  const restored = restorable(backupFile(before, at).text);
  if (!restored.ok) throw new Error("the backup does not read");
  await wiped.replaceBook(restored.book, "Restore a backup");
  expect(canonicalJson(wiped.useBook.getState().book)).toBe(canonicalJson(before));
  expect(backupFile(wiped.useBook.getState().book, at).text).toBe(backupFile(before, at).text);
  await wiped.undo();
  expect(wiped.useBook.getState().book).toStrictEqual(bookOf());
  expect(value(await wiped.snapshots())).toMatchObject([{ label: "Restore a backup", records: 0 }]);
});

it("the stamp of a file that was a backup before does not pile up", () => {
  const once = backupFile(bookOf({ name: "Marit's" }), at);
  const reading = readWorkbook(once.text);
  if (!reading.ok) throw new Error("does not read");
  expect(backupFile(reading.workbook, at).text).toBe(once.text);
});

it("a plain workbook restores as well, with no time of writing", () => {
  expect(restorable(JSON.stringify(bookOf()))).toMatchObject({ ok: true, writtenAt: null, damaged: false });
});

// Quality bar D9: each byte flipped, each length cut.
it("any one byte changed is refused, or noticed, or has changed nothing that is kept", () => {
  const book = bookOf({ name: "Åse", stash: [item("a", { owned: 2 })] });
  const whole = Buffer.from(backupFile(book, at).text, "utf8");
  for (let place = 0; place < whole.length; place += 1) {
    const bytes = Buffer.from(whole);
    bytes[place] = (bytes[place] ?? 0) ^ 0x04;
    const read = restorable(bytes.toString("utf8"));
    if (!read.ok || read.damaged) continue;
    const { backup: _, ...kept } = read.book;
    const own = Object.fromEntries(Object.entries(kept).filter(([name]) => Object.hasOwn(book, name)));
    expect(canonicalJson(own)).toBe(canonicalJson(book)); // only the stamp's own name or time was hit
  }
});

it("a backup cut short anywhere is refused", () => {
  const whole = backupFile(bookOf({ stash: [item("a")] }), at).text.trimEnd();
  for (let length = 0; length < whole.length; length += 1) {
    expect(restorable(whole.slice(0, length)).ok).toBe(false);
  }
});

it("a backup says what a restore would refuse, and is written all the same", () => {
  const file = backupFile(bookOf({ stash: [item("a", { twinOf: ["gone"] })] }), at);
  expect(file.faults).toMatchObject([{ place: "stash[0].twinOf[0]" }]);
  expect(JSON.parse(file.text)).toMatchObject({ stash: [{ twinOf: ["gone"] }] });
});

it("a stamp that is not one counts as damage", () => {
  expect(restorable(JSON.stringify({ ...bookOf(), backup: { crc32: 5 } }))).toMatchObject({
    ok: true,
    damaged: true,
  });
});

it("refuses what is too large by the file's size", () => {
  expect(restorable(JSON.stringify(bookOf()), 60_000_000)).toMatchObject({ ok: false });
});
