import type { Checked } from "../engine/money/index.ts";
import { readWorkbook, sizeLimitBytes, type Workbook } from "../engine/workbook/index.ts";
import type { Market } from "../engine/worth/index.ts";
import { AtFault, type Io, Misuse } from "./io.ts";

const atFile = (problem: string, remedy: string): AtFault =>
  new AtFault([{ place: "file", problem, remedy }]);

function textOf(io: Io, path: string): Readonly<{ text: string; bytes: number }> {
  let file: ReturnType<Io["read"]>;
  try {
    file = io.read(path);
  } catch {
    throw atFile(`"${path}" cannot be read`, "check the path");
  }
  // Too large a file is never loaded: its size alone refuses it.
  if (file.bytes > sizeLimitBytes) return { text: "", bytes: file.bytes };
  try {
    return { text: file.text(), bytes: file.bytes };
  } catch {
    throw atFile("not UTF-8 text", "choose a workbook file");
  }
}

/** Reads a workbook file. @throws AtFault with every fault in it */
export function workbookFrom(io: Io, path: string | undefined): Workbook {
  if (path === undefined) throw new Misuse("name a workbook file");
  const { text, bytes } = textOf(io, path);
  const reading = readWorkbook(text, bytes);
  if (!reading.ok) throw new AtFault(reading.faults);
  return reading.workbook;
}

/** The record with that id. @throws Misuse when the option is missing or the id unknown */
export function byId<T extends Readonly<{ id: string }>>(
  records: readonly T[] | null | undefined,
  id: string | undefined,
  what: string,
): T {
  if (id === undefined) throw new Misuse(`say which ${what}: --${what} ID`);
  const found = records?.find((record) => record.id === id);
  if (!found) throw new Misuse(`there is no ${what} "${id}" in this workbook`);
  return found;
}

/** The market asked for, else home. @throws Misuse when there is neither */
export function homeMarket(book: Workbook, asked: string | undefined): Market {
  const id = asked ?? book.home?.market ?? undefined;
  if (id === undefined) throw new Misuse("this workbook names no home market; say which: --market ID");
  return byId(book.markets, id, "market");
}

/** The value, or every fault of the engine's as the command's. */
export function orFaults<T>(checked: Checked<T>): T {
  if (!checked.ok) throw new AtFault(checked.faults);
  return checked.value;
}
