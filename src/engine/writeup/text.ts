import { clean, cleanProse } from "./clean.ts";
import { type Block, isFull, nameOf, type Section, type Writeup } from "./document.ts";
import { type WriteupWords, wordsIn } from "./words/index.ts";

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
function rowAsLine(leads: readonly string[], row: readonly string[], gap: string): string {
  const cells = row
    .slice(1)
    .flatMap((cell, i) => (cell === "" ? [] : [`${leads[i + 1] ?? ""} ${cell}`.trim()]));
  return cells.length === 0 ? (row[0] ?? "") : `${row[0] ?? ""}: ${cells.join(gap)}`;
}

const blockLines = (block: Block, gap: string): readonly string[] =>
  block.kind === "lines"
    ? block.lines
    : block.rows.map((row) => rowAsLine(block.inLine ?? block.head, row, gap));

/** A section as text with a blank line before it, and its size. */
type Rendered = Readonly<{ section: Section; text: string; bytes: number }>;

function render(section: Section, gap: string): Rendered {
  const sign = section.verbatim ? clean : cleanProse;
  const body = section.blocks.flatMap((block) => blockLines(block, gap)).map(sign);
  const head = section.title === null ? [] : [sign(section.title).toUpperCase()];
  const text = `\n${[...head, ...body].join("\n")}\n`;
  return { section, text, bytes: bytesOf(text) };
}

const titlesOf = (parts: readonly Rendered[]): readonly string[] =>
  parts.map(({ section }) => nameOf(section));

const leftOutLine = (out: readonly Rendered[], words: WriteupWords): string =>
  out.length === 0 ? "" : `\n${words.leftOut(titlesOf(out))}\n`;

const totalBytes = (parts: readonly Rendered[]): number => parts.reduce((sum, { bytes }) => sum + bytes, 0);

/** As many whole lines as fit. */
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

/** The sections to keep: the most needed ones first, each where it still fits with the note of what is out. */
function chosen(all: readonly Rendered[], room: number, words: WriteupWords): readonly Rendered[] {
  let kept: readonly Rendered[] = [];
  for (const part of all.toSorted((a, b) => b.section.keep - a.section.keep)) {
    const tried = all.filter((one) => one === part || kept.includes(one));
    const note = leftOutLine(
      all.filter((one) => !tried.includes(one)),
      words,
    );
    if (totalBytes(tried) + bytesOf(note) <= room) kept = tried;
  }
  return kept;
}

/** Where not even one section fits beside the note: whole lines, and a shorter note if there is room for it. */
function squeezed(text: string, limit: number, words: WriteupWords): string {
  const note = `\n${words.restLeftOut}\n`;
  const body = cutAtLine(text, limit - bytesOf(note));
  return body === "" ? cutAtLine(text, limit) : `${body.trimEnd()}\n${note}`;
}

/**
 * The write-up as plain text of at most `limit` bytes. Whole sections stay out, least needed first, and the
 * text says which; where even that is too much, whole lines do. Never a part of a line.
 */
export function asText(writeup: Writeup, limit: number = defaultLimitBytes): Fitted {
  const words = wordsIn[writeup.language];
  const opening = `${cleanProse(writeup.opening)}\n`;
  const all = writeup.sections.filter(isFull).map((section) => render(section, words.cellGap));
  const kept = chosen(all, limit - bytesOf(opening), words);
  const out = all.filter((part) => !kept.includes(part));
  const text = opening + kept.map((part) => part.text).join("") + leftOutLine(out, words);
  const whole = opening + all.map((part) => part.text).join("");
  const fitting = bytesOf(text) <= limit ? text : squeezed(whole, limit, words);
  return { text: fitting, bytes: bytesOf(fitting), leftOut: titlesOf(out) };
}
