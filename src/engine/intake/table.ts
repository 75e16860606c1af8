/** One cell: text, a number, a day (ISO 8601), or nothing. */
export type Cell = string | number | Readonly<{ date: string }> | null;

/**
 * A sheet of a file, or what was pasted. Rows may differ in length. `exact`: in a list that was saved here, the same
 * rows with their texts untouched.
 */
export type Table = Readonly<{
  name: string;
  rows: readonly (readonly Cell[])[];
  exact?: readonly (readonly Cell[])[];
}>;

/** What no file and no paste may go beyond, so that none can exhaust the page. */
export const caps = {
  bytes: 50_000_000,
  rows: 100_000,
  columns: 200,
  /** Letters in one cell: as many as a cell of a spreadsheet takes. */
  letters: 32_767,
  /** Filled cells, and letters in all of them together. */
  cells: 2_000_000,
  allLetters: 60_000_000,
} as const;

// Half of a pair stands for no character, and could not be written to a file again.
const halves = /\p{Surrogate}/gu;
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const controls = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\ufeff]/g;

/** An apostrophe that was put before a cell so that no spreadsheet takes it for a formula, as our own export does. */
const guarded = /^'(?='*[=+\-@\t\r\n\0])/;

/** A cell's text to the letter, but for the apostrophe that keeps it from being a formula. */
export const exactText = (text: string): string => text.replace(guarded, "");

/** Text of a cell as it is kept: no control characters, no half characters, no space around it. */
export const cleanText = (text: string): string =>
  exactText(text)
    .replace(controls, "")
    .replace(halves, "\uFFFD")
    .replace(/[\u00a0\u202f\u2007]/g, " ")
    .trim();

/** A cell as text: a number without grouping, a day as `YYYY-MM-DD`, "" for an empty one. */
export function cellText(cell: Cell | undefined): string {
  if (cell === null || cell === undefined) return "";
  return typeof cell === "object" ? cell.date : String(cell);
}

export const isBlank = (cell: Cell | undefined): boolean => cellText(cell) === "";

/** How many columns the widest row has. */
export const widthOf = ({ rows }: Table): number =>
  rows.reduce((widest, row) => Math.max(widest, row.length), 0);
