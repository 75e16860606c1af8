import { type FileFault, refuse } from "./fault.ts";

/** What begins with these bytes is no table, whatever it is called. */
const known: readonly (readonly [string, FileFault])[] = [
  ["d0cf11e0a1b11ae1", "old-spreadsheet"], // the container of .xls, and of a workbook with a password
  ["25504446", "pdf"],
  ["89504e47", "picture"],
  ["ffd8ff", "picture"],
  ["47494638", "picture"],
  ["52494646", "picture"], // RIFF: WebP
  ["49492a00", "picture"],
  ["4d4d002a", "picture"],
  ["0000001c66747970", "picture"],
  ["0000001866747970", "picture"],
  ["1f8b", "archive"],
  ["377abcaf", "archive"],
  ["52617221", "archive"],
  ["425a68", "archive"],
  ["7b5c727466", "no-table"], // rich text
];

const hexOf = (bytes: Uint8Array): string =>
  Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");

/** What a file is by its first bytes; its name is not asked. Refuses what is plainly something else. */
export function sniff(bytes: Uint8Array): "zip" | "text" {
  const start = hexOf(bytes.subarray(0, 16));
  if (start.startsWith("504b0304") || start.startsWith("504b0506")) return "zip";
  const fault = known.find(([magic]) => start.startsWith(magic))?.[1];
  return fault ? refuse(fault) : "text";
}
