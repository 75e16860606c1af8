import Papa from "papaparse";
import { type Cell, caps, cleanText, exactText, ownHeads, type Table } from "../../engine/intake/index.ts";
import { refuse } from "./fault.ts";

/** What may part the cells of a line. "" for lists of one column. */
export const delimiters = [",", ";", "\t", "|", ""] as const;
export type Delimiter = (typeof delimiters)[number];

/** Lines at the start that tell how a text is written. */
const looked = 64;

const isDelimiter = (text: string): text is Delimiter => delimiters.some((known) => known === text);

/** A first line that some spreadsheets write and read: which sign parts the cells. */
const told = /^\s*"?sep=(.)"?\r?\n/i;

/** How many cells each of the first lines has when they are parted so. */
const widths = (start: string, delimiter: string): readonly number[] =>
  Papa.parse<readonly string[]>(start, { delimiter, preview: looked, skipEmptyLines: true }).data.map(
    (row) => row.length,
  );

/** How sure it is that a sign parts the cells: the share of lines with as many cells as most have. */
function sureness(counts: readonly number[]): number {
  const often = new Map<number, number>();
  for (const count of counts) often.set(count, (often.get(count) ?? 0) + 1);
  const [width = 1, lines = 0] = [...often].toSorted((a, b) => b[1] - a[1] || b[0] - a[0])[0] ?? [];
  return width < 2 ? 0 : lines / counts.length + width / 1_000;
}

/**
 * The sign that parts the cells of a text: the one by which its lines have equally many. Where the lines differ much
 * whatever the sign, as prose with commas does, there is one column. A tab is in no prose: it always parts.
 */
export function guessDelimiter(text: string): Delimiter {
  const start = text
    .split(/\r\n|\n|\r/, looked + 1)
    .slice(0, looked)
    .join("\n");
  const tried = delimiters
    .filter((sign) => sign !== "" && start.includes(sign))
    .map((sign) => ({ sign, sure: sureness(widths(start, sign)) }))
    .toSorted((a, b) => b.sure - a.sure);
  const tab = tried.find(({ sign, sure }) => sign === "\t" && sure > 0);
  const best = tab ?? tried[0];
  return best && best.sure >= (best.sign === "," ? 0.8 : 0.6) ? best.sign : "";
}

/** How a cell's text is kept. */
type Kept = (text: string) => string;

const cellOf = (text: string, kept: Kept): Cell => {
  const clean = kept(text);
  if (clean.length > caps.letters) refuse("too-much");
  return clean === "" ? null : clean;
};

/** Rows without the empty ones at the end. */
export function trimmed(rows: readonly (readonly Cell[])[]): readonly (readonly Cell[])[] {
  const last = rows.findLastIndex((row) => row.some((cell) => cell !== null));
  return rows.slice(0, last + 1);
}

/** One column: each line is a cell, with nothing taken for a quote. */
const singleColumn = (text: string): Cell[][] =>
  text.split(/\r\n|\n|\r/).map((line) => [cellOf(line, cleanText)]);

/** A sign that stands in no list: where quotes are not closed, nothing is taken for one. */
const noQuote = "\u0000";

/** Cells parted by a sign; null where a quote is opened and not closed as it should be. */
function withQuotes(text: string, delimiter: string, quoteChar: string, kept: Kept): Cell[][] | null {
  const rows: Cell[][] = [];
  let whole = true;
  Papa.parse<string[]>(text, {
    delimiter,
    quoteChar,
    step: ({ data, errors }, parser) => {
      whole &&= !errors.some(({ type }) => type === "Quotes");
      if (!whole) return parser.abort();
      if (data.length > caps.columns) refuse("too-many-columns");
      if (rows.push(data.map((cell) => cellOf(cell, kept))) > caps.rows + looked) refuse("too-many-rows");
    },
  });
  return whole ? rows : null;
}

/** An inch sign at the start of a cell opens no quote: such a text is read without any. */
const parted = (text: string, delimiter: string): Cell[][] =>
  withQuotes(text, delimiter, '"', cleanText) ?? withQuotes(text, delimiter, noQuote, cleanText) ?? [];

/** A list that was saved here has its texts to the letter beside those that are read as any list's. */
function withExact(table: Table, text: string, delimiter: string): Table {
  const exact = ownHeads(table) ? withQuotes(text, delimiter, '"', exactText) : null;
  return exact ? { ...table, exact: trimmed(exact) } : table;
}

/** Text with cells parted by signs, as a table, and the sign that was taken to part them. */
export function readText(
  text: string,
  name: string,
  wanted: Delimiter | null = null,
): Readonly<{ table: Table; delimiter: Delimiter }> {
  if (text.length > caps.allLetters) refuse("too-much");
  const said = told.exec(text)?.[1];
  const body = said === undefined ? text.replace(/^\uFEFF/, "") : text.replace(told, "");
  const delimiter = wanted ?? (said !== undefined && isDelimiter(said) ? said : guessDelimiter(body));
  const rows = trimmed(delimiter === "" ? singleColumn(body) : parted(body, delimiter));
  if (rows.length > caps.rows) refuse("too-many-rows");
  if (rows.length === 0) refuse("empty");
  return { table: withExact({ name, rows }, body, delimiter), delimiter };
}
