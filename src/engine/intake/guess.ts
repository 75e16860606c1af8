import { isCurrency } from "../money/index.ts";
import type { Language } from "../record/index.ts";
import { isGtin, readLine } from "../supply/index.ts";
import { type Field, type Mapping, manyTimes } from "./fields.ts";
import { currencyOfHead, fieldsOfHead } from "./heads.ts";
import { isHex } from "./read/colour.ts";
import { isDay } from "./read/day.ts";
import { isMoney } from "./read/money.ts";
import { type Cell, cellText, isBlank, type Table, widthOf } from "./table.ts";

/** How many rows are looked at for heads, and how many cells of a column for what it holds. */
const rowsForHead = 10;
const cellsLookedAt = 60;

/** Whether this row heads the columns: most of what it says is known to head something, and nothing is a figure. */
function isHead(row: readonly Cell[]): boolean {
  const filled = row.filter((cell) => !isBlank(cell));
  if (filled.some((cell) => typeof cell !== "string" || /^[\d#]/.test(cell))) return false;
  const known = filled.filter((cell) => fieldsOfHead(cell).length > 0).length;
  return known >= 2 ? known * 2 >= filled.length : known === 1 && filled.length === 1;
}

/** Text above columns that hold something else: figures, days, colours. */
function standsOver(row: readonly Cell[], below: readonly (readonly Cell[])[]): boolean {
  const isText = (cell: Cell | undefined) => typeof cell === "string" && !isHex(cell) && !/\d/.test(cell);
  if (row.length < 2 || !row.every((cell) => isText(cell))) return false;
  return row.some((_, column) => {
    const cells = below.map((other) => other[column]).filter((cell) => !isBlank(cell));
    return cells.length > 0 && cells.every((cell) => !isText(cell));
  });
}

/** The row with the heads; null where there is none. */
export function guessHead({ rows }: Table): number | null {
  const first = rows.findIndex((row) => row.some((cell) => !isBlank(cell)));
  if (first < 0) return null;
  const known = rows.slice(first, first + rowsForHead).findIndex(isHead);
  if (known >= 0) return first + known;
  return standsOver(rows[first] ?? [], rows.slice(first + 1, first + cellsLookedAt)) ? first : null;
}

const columnOf = (rows: readonly (readonly Cell[])[], column: number): readonly Cell[] => {
  const cells: Cell[] = [];
  for (const row of rows) {
    const cell = row[column] ?? null;
    if (!isBlank(cell)) cells.push(cell);
    if (cells.length === cellsLookedAt) break;
  }
  return cells;
};

const texts = (cells: readonly Cell[]): readonly string[] => [...new Set(cells.map(cellText))];

/** Whether most cells are of a sort; an empty column is of none. */
const most = (cells: readonly Cell[], is: (text: string, cell: Cell) => boolean): boolean =>
  cells.length > 0 && cells.filter((cell) => is(cellText(cell), cell)).length >= cells.length * 0.7;

const isKind = (text: string, language: Language): boolean => {
  if (text.length > 30) return false;
  const { supply, leftover } = readLine(text, {}, language);
  return supply.family !== "other" && leftover.length === 0;
};

/** What a column holds by its cells alone; null where they do not tell. */
function fieldOfCells(cells: readonly Cell[], language: Language): Field | null {
  if (most(cells, (text) => isHex(text))) return "hex";
  if (most(cells, (text) => text.length >= 8 && isGtin(text))) return "gtin";
  if (most(cells, (_, cell) => isDay(cell))) return "acquired";
  if (most(cells, (text) => isMoney(text))) return "paid";
  if (most(cells, (text) => /^[A-Z]{3}$/.test(text) && isCurrency(text))) return "currency";
  if (most(cells, (text) => /^\d+\s*(?:gsm|g\/?m[2²])$/i.test(text))) return "gsm";
  if (most(cells, (text) => /^\d+(?:[.,]\d+)?\s*ml$/i.test(text))) return "ml";
  if (most(cells, (text) => /^\d+(?:[.,]\d+)?\s*mm$/i.test(text))) return "width";
  if (
    most(cells, (text) =>
      /^(?:[ABC]\d{1,2}|\d+(?:[.,]\d+)?\s*[x×]\s*\d+(?:[.,]\d+)?\s*(?:mm|cm|in)?)$/i.test(text),
    )
  )
    return "size";
  if (most(cells, (text) => /^(?:(?:10|[2-9])?[HB]|F|HB)$/.test(text))) return "grade";
  if (most(cells, (text) => /^#\S/.test(text))) return "tags";
  const different = texts(cells);
  const repeats = different.length <= Math.max(1, cells.length * 0.6);
  return repeats && most(different, (text) => isKind(text, language)) ? "kind" : null;
}

type Column = Readonly<{ said: readonly Field[]; cells: readonly Cell[]; hasHeads: boolean }>;

/** Whether cells may be what the head says: heads lie, too ("Colour" over hex is no name). */
function fits(field: Field, cells: readonly Cell[]): boolean {
  if (cells.length === 0) return true;
  const isFigure = (text: string) => /^[\d.,\s]+$/.test(text);
  switch (field) {
    case "owned":
    case "sheetsLeft":
    case "sheets":
    case "gsm":
    case "ml":
    case "paid":
      return most(cells, (text) => /\d/.test(text) && text.length < 24);
    case "acquired":
    case "opened":
      return most(cells, (text, cell) => isDay(cell) || (isFigure(text) && text.length >= 4));
    case "gtin":
      return most(cells, (text) => /^[\d\s-]{8,}$/.test(text));
    case "name":
    case "kind":
    case "place":
      return !most(cells, (text) => isFigure(text));
    default:
      return true;
  }
}

/** Small whole numbers in a table without heads: how many there are, as people write it beside a name. */
const isCounts = (cells: readonly Cell[]): boolean => most(cells, (text) => /^\d{1,2}$/.test(text));

/** What a column holds, by head first and by cells where the head says nothing that is still free. */
function fieldOf(
  { said, cells, hasHeads }: Column,
  taken: ReadonlySet<Field>,
  language: Language,
): Field | null {
  const isFree = (field: Field) => !taken.has(field) || manyTimes.has(field);
  const byHead = said.find((field) => isFree(field) && fits(field, cells));
  if (byHead)
    return byHead === "colour" && isFree("hex") && most(cells, (text) => isHex(text)) ? "hex" : byHead;
  const byCells = fieldOfCells(cells, language) ?? (hasHeads || !isCounts(cells) ? null : "owned");
  if (byCells && isFree(byCells)) return byCells;
  return said.find(isFree) ?? null; // a head whose cells hold something else: each of them is marked when it is read
}

const length = (cells: readonly Cell[]): number =>
  cells.reduce<number>((sum, cell) => sum + (typeof cell === "string" ? cell.length : 0), 0) /
  (cells.length || 1);

/** Whether a column says what a thing is. */
const names: ReadonlySet<Field> = new Set(["text", "name"]);

/** Where no column names the things, the wordiest of those nothing is known of does: as written where there are no others. */
function withName(columns: readonly Column[], found: readonly (Field | null)[]): readonly (Field | null)[] {
  if (found.some((field) => field !== null && names.has(field))) return found;
  const open = columns
    .map((column, at) => ({
      at,
      length: length(column.cells),
      isOpen: found[at] === null && column.said.length === 0,
    }))
    .filter((column) => column.isOpen && column.length >= 3)
    .toSorted((a, b) => b.length - a.length || a.at - b.at);
  const [best] = open;
  if (!best) return found;
  const tellsKind = found.some((field) => field === "kind" || field === "medium");
  return found.map((field, at) => (at === best.at ? (tellsKind ? "name" : "text") : field));
}

/**
 * How a table is to be read: its heads in any language, and its cells where the heads say nothing.
 * @param home the currency of amounts that do not say theirs
 * @param head the row with the heads, where a person has said it
 */
export function guessMapping(
  table: Table,
  home: string,
  language: Language = "en",
  head: number | null = guessHead(table),
): Mapping {
  const heads = head === null ? [] : (table.rows[head] ?? []);
  const below = table.rows.slice(head === null ? 0 : head + 1);
  const columns = Array.from({ length: widthOf(table) }, (_, at) => ({
    said: fieldsOfHead(heads[at]),
    cells: columnOf(below, at),
    hasHeads: head !== null,
  }));
  const found: (Field | null)[] = columns.map(() => null);
  const taken = new Set<Field>();
  // Heads that say one thing go before those that could say two: "Format" is what is left for it.
  const order = columns
    .map((column, at) => ({ column, at }))
    .toSorted((a, b) => rank(a.column) - rank(b.column) || a.at - b.at);
  for (const { column, at } of order) {
    const field = fieldOf(column, taken, language);
    if (field) taken.add(field);
    found[at] = field;
  }
  const priced = found.indexOf("paid");
  const currency = priced < 0 ? null : currencyOfHead(heads[priced], home);
  return { head, columns: withName(columns, found), currency: currency ?? home, family: null };
}

const rank = ({ said }: Column): number => (said.length === 0 ? 9 : said.length);
