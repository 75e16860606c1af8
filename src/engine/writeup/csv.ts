import { type Block, isFull, nameOf, type Writeup } from "./document.ts";

// A spreadsheet would run a cell that begins like this as a formula.
const startsFormula = /^[=+\-@\t\r\n\0]/;
const isNumber = /^[+-]?\d+(\.\d+)?$/;

/** One field of RFC 4180, made inert where a spreadsheet would take it for a formula. Numbers stay numbers. */
export function csvField(text: string): string {
  const inert = startsFormula.test(text) && !isNumber.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert;
}

/** A minus sign as typed, so that a spreadsheet reads the amount. */
const plain = (text: string): string => text.replace(/^−(?=\d)/, "-");

/** An amount with the point that data has in every language. */
const withPoint = (cell: string): string => cell.replace(/^([+−-]?\d+),(\d+)$/, "$1.$2");

function rowsOf(block: Block): readonly (readonly string[])[] {
  if (block.kind === "lines") return block.lines.map((line) => [line]);
  const hasFigures = block.numeric.length > 0;
  return [
    block.head,
    ...(hasFigures ? block.rows.map(([name = "", ...cells]) => [name, ...cells.map(withPoint)]) : block.rows),
  ];
}

/** The tables and lines of the write-up as CSV (RFC 4180), one section after the other. */
export function asCsv(writeup: Writeup): string {
  const records = writeup.sections
    .filter(isFull)
    .flatMap((section) => [[nameOf(section)], ...section.blocks.flatMap(rowsOf), [""]]);
  return [[writeup.opening], [""], ...records]
    .map((row) => `${row.map((cell) => csvField(plain(cell))).join(",")}\r\n`)
    .join("");
}
