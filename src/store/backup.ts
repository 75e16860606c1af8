import * as z from "zod/mini";
import type { Fault } from "../engine/record/index.ts";
import { canonicalJson, readWorkbook, type Workbook, writeWorkbook } from "../engine/workbook/index.ts";
import { crc32 } from "./checksum.ts";
import { recordsIn } from "./count.ts";

/**
 * The field that a backup has over a plain workbook: when it was written, how many records it holds, and the
 * CRC-32 of the canonical JSON of all its other fields. It is taken off again when it is read.
 */
const StampSchema = z.object({ at: z.string(), records: z.int(), crc32: z.string() });

export type BackupFile = Readonly<{
  name: string;
  type: string;
  text: string;
  /** What a restore would refuse, found by reading the text back. Empty: the backup is whole. */
  faults: readonly Fault[];
}>;

/** What a chosen file holds. `damaged`: it was changed since it was written, by hand or by accident. */
export type Restorable =
  | Readonly<{ ok: true; book: Workbook; writtenAt: string | null; records: number; damaged: boolean }>
  | Readonly<{ ok: false; faults: readonly Fault[] }>;

const checksumOf = (book: Workbook): string => crc32(canonicalJson(book));

function withoutStamp(workbook: Workbook): Workbook {
  const { backup: _, ...book } = workbook;
  return book;
}

/**
 * A book as a file to keep elsewhere. It is a workbook like any other, and needs no room on the device.
 * @param at ISO 8601 with time
 */
export function backupFile(book: Workbook, at: string): BackupFile {
  const plain = withoutStamp(book);
  const backup = { at, records: recordsIn(plain), crc32: checksumOf(plain) };
  const text = writeWorkbook({ ...plain, backup });
  const read = restorable(text);
  const name = `understudy-${at.slice(0, 16).replaceAll(":", "").replace("T", "-")}.json`;
  return { name, type: "application/json", text, faults: read.ok ? [] : read.faults };
}

/**
 * Reads a backup or any workbook, changing nothing: show what it holds, then `replaceBook`.
 * @param bytes the file's size
 */
export function restorable(text: string, bytes?: number): Restorable {
  const reading = readWorkbook(text, bytes);
  if (!reading.ok) return reading;
  const stamp = StampSchema.safeParse(reading.workbook.backup);
  const book = withoutStamp(reading.workbook);
  return {
    ok: true,
    book,
    writtenAt: stamp.success ? stamp.data.at : null,
    records: recordsIn(book),
    damaged:
      reading.workbook.backup !== undefined && (!stamp.success || stamp.data.crc32 !== checksumOf(book)),
  };
}
