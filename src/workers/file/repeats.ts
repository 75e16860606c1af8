import { caps } from "../../engine/intake/index.ts";
import { refuse } from "./fault.ts";

const parts = /<table:table-row\b[^>]*>|<\/table:table-row>|<table:table-cell\b[^>]*>/g;
const repeated = (tag: string, of: "rows" | "columns"): number =>
  Number(new RegExp(`number-${of}-repeated="(\\d+)"`).exec(tag)?.[1] ?? 1);

/**
 * Counts the filled cells that a sheet of an OpenDocument file comes to. Each row and cell may stand for many, so that
 * a page of text can ask for a million cells: that is refused before any of them is made.
 * @see OASIS ODF 1.3, part 3, sections 19.675 and 19.678
 */
export function checkRepeats(content: string): void {
  let [cells, inRow, rows] = [0, 0, 1];
  for (const [tag] of content.matchAll(parts)) {
    if (tag === "</table:table-row>") {
      cells += inRow * rows;
      if (inRow > caps.columns) refuse("too-many-columns");
      if (inRow > 0 && rows > caps.rows) refuse("too-many-rows");
      if (cells > caps.cells) refuse("too-much");
    } else if (tag.startsWith("<table:table-row")) {
      [inRow, rows] = [0, repeated(tag, "rows")];
    } else if (!tag.endsWith("/>") || tag.includes("string-value")) inRow += repeated(tag, "columns");
  }
}
