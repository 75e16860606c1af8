import { clean, cleanProse } from "./clean.ts";
import { type Block, isFull, type Section, type Writeup } from "./document.ts";

/** The usual limit of a video description, in bytes of UTF-8 (common practice, no source). */
export const defaultLimitBytes = 5000;

/** The text that fits, its size, and the titles of what had to stay out. */
export type Fitted = Readonly<{ text: string; bytes: number; leftOut: readonly string[] }>;

/** The size of a text in bytes of UTF-8. A lone surrogate counts as its replacement sign does. */
export function bytesOf(text: string): number {
  let bytes = 0;
  for (const sign of text) {
    const code = sign.codePointAt(0) ?? 0;
    bytes += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
  }
  return bytes;
}

/** A row of a table as one line: "Gouache, moss: list 59.54, shop 52.00". */
function rowAsLine(head: readonly string[], row: readonly string[]): string {
  const cells = row
    .slice(1)
    .flatMap((cell, i) => (cell === "" ? [] : [`${head[i + 1] ?? ""} ${cell}`.trim()]));
  return cells.length === 0 ? (row[0] ?? "") : `${row[0] ?? ""}: ${cells.join(", ")}`;
}

const blockLines = (block: Block): readonly string[] =>
  block.kind === "lines" ? block.lines : block.rows.map((row) => rowAsLine(block.head, row));

function sectionLines(section: Section): readonly string[] {
  const sign = section.verbatim ? clean : cleanProse;
  const body = section.blocks.flatMap(blockLines).map(sign);
  return ["", ...(section.title === null ? [] : [sign(section.title).toUpperCase()]), ...body];
}

const leftOutLine = (titles: readonly string[]): string =>
  `Left out for length: ${titles.join(", ").toLowerCase()}.`;

function textOf(opening: string, sections: readonly Section[], leftOut: readonly string[]): string {
  const all = [
    cleanProse(opening),
    ...sections.flatMap(sectionLines),
    ...(leftOut.length > 0 ? ["", leftOutLine(leftOut)] : []),
  ];
  return `${all.join("\n")}\n`;
}

/** As many whole lines as fit, where even the most important section is too long. */
function cutAtLine(text: string, limit: number): string {
  const kept: string[] = [];
  let bytes = 0;
  for (const line of text.split("\n").slice(0, -1)) {
    bytes += bytesOf(line) + 1;
    if (bytes > limit) break;
    kept.push(`${line}\n`);
  }
  return kept.join("");
}

/**
 * The write-up as plain text of at most `limit` bytes. Whole sections stay out first, least needed first, and
 * the text says which; then whole lines. Never a part of a line.
 */
export function asText(writeup: Writeup, limit: number = defaultLimitBytes): Fitted {
  let sections = writeup.sections.filter(isFull);
  let leftOut: readonly string[] = [];
  let text = textOf(writeup.opening, sections, leftOut);
  while (bytesOf(text) > limit && sections.length > 1) {
    const least = sections.reduce((low, section) => (section.keep < low.keep ? section : low));
    sections = sections.filter((section) => section !== least);
    leftOut = [...leftOut, least.title ?? least.id];
    text = textOf(writeup.opening, sections, leftOut);
  }
  if (bytesOf(text) > limit) {
    const last = sections[0];
    leftOut = [...leftOut, ...(last ? [`the rest of ${last.title ?? last.id}`] : [])];
    const note = `\n${leftOutLine(leftOut)}\n`;
    const room = limit - bytesOf(note);
    const body = cutAtLine(textOf(writeup.opening, sections, []), Math.max(0, room));
    text = room > 0 && body !== "" ? body + note : cutAtLine(textOf(writeup.opening, sections, []), limit);
  }
  return { text, bytes: bytesOf(text), leftOut };
}
