import { type Block, isFull, type Writeup } from "./document.ts";

// A spreadsheet would run a cell that begins like this as a formula.
const startsFormula = /^[=+\-@\t\r\n\0]/;
const isNumber = /^[+-]?\d+(\.\d+)?$/;

/** One field of RFC 4180, made inert where a spreadsheet would take it for a formula. Numbers stay numbers. */
export function csvField(text: string): string {
  const inert = startsFormula.test(text) && !isNumber.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert;
}

const rowsOf = (block: Block): readonly (readonly string[])[] =>
  block.kind === "lines" ? block.lines.map((line) => [line]) : [block.head, ...block.rows];

/** Minus signs as typed, so that a spreadsheet reads the amount. */
const plain = (text: string): string => text.replace(/^−(?=\d)/, "-");

/** The tables and lines of the write-up as CSV (RFC 4180), one section after the other. */
export function asCsv(writeup: Writeup): string {
  const records = writeup.sections
    .filter(isFull)
    .flatMap(({ title, id, blocks }) => [[title ?? id], ...blocks.flatMap(rowsOf), [""]]);
  return [[writeup.opening], [""], ...records]
    .map((row) => `${row.map((cell) => csvField(plain(cell))).join(",")}\r\n`)
    .join("");
}
