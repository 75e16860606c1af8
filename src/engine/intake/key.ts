import { fnv1a } from "./hash.ts";
import { type Cell, cellText } from "./table.ts";

/** A row without what two programs write differently: how letters are put together, case, spacing, empty cells at its end. */
const plainRow = (row: readonly Cell[]): readonly string[] => {
  const cells = row.map((cell) => cellText(cell).normalize().toLowerCase().replace(/\s+/g, " "));
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
