import { type Cell, cellText } from "../table.ts";
import type { IntakeWords } from "../words/index.ts";
import { readFigure } from "./number.ts";
import { type Said, sure, unread } from "./said.ts";

const most = 999_999;

/** What people write around a count: "2 st", "x3", "3 pcs". */
const around =
  /^(?:x|×|ca\.?|~)?\s*([\d., ]+?)\s*(?:x|×|st\.?|pcs?\.?|pieces?|styck(?:en)?|ea|ark|sheets?|blad)?$/iu;

/** A whole number from 0 up. */
export function readCount(cell: Cell, words: IntakeWords): Said<number> {
  const text = cellText(cell);
  const figure = readFigure(typeof cell === "number" ? cell : (around.exec(text)?.[1] ?? text), ".");
  const count = figure === null ? Number.NaN : Number(figure.text);
  return Number.isInteger(count) && count <= most ? sure(count) : unread(words.unread(text));
}
