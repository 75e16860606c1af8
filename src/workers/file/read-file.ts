import { caps, type Table } from "../../engine/intake/index.ts";
import type { StashItem } from "../../engine/supply/index.ts";
import { readWorkbook } from "../../engine/workbook/index.ts";
import { decodeText } from "./decode.ts";
import { type FileFault, Refused, refuse } from "./fault.ts";
import { sniff } from "./sniff.ts";
import { readSpreadsheet } from "./spreadsheet.ts";
import { type Delimiter, readText } from "./text.ts";

/** What a file holds: tables to be mapped, or the stash of somebody's workbook, which needs no mapping. */
export type Content =
  | Readonly<{ kind: "text"; tables: readonly Table[]; text: string; delimiter: Delimiter }>
  | Readonly<{ kind: "xlsx" | "ods"; tables: readonly Table[] }>
  | Readonly<{ kind: "workbook"; items: readonly StashItem[] }>;

export type Contents = Readonly<{ ok: true; content: Content }> | Readonly<{ ok: false; fault: FileFault }>;

/** JSON is our workbook, or nothing for the stash. Null where it only begins like JSON. */
function readJson(text: string): Content | null {
  const read = readWorkbook(text);
  if (read.ok) {
    const items = read.workbook.stash ?? [];
    return items.length > 0 ? { kind: "workbook", items } : refuse("empty");
  }
  // Text that only begins like JSON is no fault of a workbook's.
  return read.faults.some(({ problem }) => problem.startsWith("not JSON")) ? null : refuse("other-json");
}

/** Text, pasted or out of a file. */
export function readWritten(text: string, name: string, wanted: Delimiter | null = null): Content {
  const start = text
    .slice(0, 200)
    .replace(/^\uFEFF/, "")
    .trimStart();
  if (/^<(?:[!?]|[a-z][\w:-]*[\s>])/i.test(start)) return refuse("web-page");
  const json = start.startsWith("{") ? readJson(text) : null;
  if (json) return json;
  const { table, delimiter } = readText(text, name, wanted);
  return { kind: "text", tables: [table], text, delimiter };
}

async function read(bytes: Uint8Array, name: string): Promise<Content> {
  if (bytes.length > caps.bytes) return refuse("too-large");
  if (bytes.length === 0) return refuse("empty");
  return sniff(bytes) === "zip" ? readSpreadsheet(bytes) : readWritten(decodeText(bytes), name);
}

/** Whatever stands in the way is said, and nothing is thrown. */
export async function contents(work: () => Content | Promise<Content>): Promise<Contents> {
  try {
    return { ok: true, content: await work() };
  } catch (error) {
    // What is no refusal of ours comes from bytes that no reader expects.
    return { ok: false, fault: error instanceof Refused ? error.fault : "damaged" };
  }
}

/** Reads a file by what is in it; its name only names the table. */
export const readFile = (bytes: Uint8Array, name: string): Promise<Contents> =>
  contents(() => read(bytes, name));
