import type { Fault } from "../engine/record/index.ts";
import { readWorkbook, sizeLimitBytes, type Workbook } from "../engine/workbook/index.ts";
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

/** The value, or the engine's fault as the command's. */
export function orFault<T>(
  outcome: Readonly<{ ok: true; value: T }> | Readonly<{ ok: false; fault: Fault }>,
): T {
  if (!outcome.ok) throw new AtFault([outcome.fault]);
  return outcome.value;
}
