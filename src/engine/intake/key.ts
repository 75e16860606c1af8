import { fnv1a } from "./hash.ts";
import { type Cell, cellText } from "./table.ts";

/** "39,50" in one file is 39.5 in another. */
const plainCell = (text: string): string =>
  /^\d{1,12}(?:[.,]\d{1,6})?$/.test(text)
    ? String(Number(text.replace(",", ".")))
    : text.normalize().toLowerCase().replace(/\s+/g, " ");

/**
 * A row without what two programs write differently: the decimal sign, how letters are put together, case, spacing,
 * empty cells at its end.
 */
const plainRow = (row: readonly Cell[]): readonly string[] => {
  const cells = row.map((cell) => plainCell(cellText(cell)));
  return cells.slice(0, cells.findLastIndex((cell) => cell !== "") + 1);
};

/**
 * What a row goes by once it has been brought in: the same row of the same list always has the same key, whatever
 * file it comes in and however its columns are read. Equal rows of one list are told apart by their order.
 */
export function rowKeys(): (row: readonly Cell[]) => string {
  const seen = new Map<string, number>();
  return (row) => {
    const hash = fnv1a(JSON.stringify(plainRow(row)));
    const before = seen.get(hash) ?? 0;
    seen.set(hash, before + 1);
    return before === 0 ? hash : `${hash}-${before + 1}`;
  };
}

/** What a list's heads go by, so that the next list with the same heads is read the same way. */
export const headPrint = (heads: readonly Cell[]): string => fnv1a(JSON.stringify(plainRow(heads)));
