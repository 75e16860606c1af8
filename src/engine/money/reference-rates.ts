import { type Fault, fail, isDate, type Outcome, ok } from "../record/index.ts";
import { allOf, type Checked, refuse } from "./checked.ts";
import { isCurrency } from "./currencies.ts";
import type { RateTable } from "./schema.ts";

/** How a rate file is read: whose currency everything is quoted against, and what to note as source. */
export type RateFile = Readonly<{ base?: string; source?: string }>;

type Column = Readonly<{ code: string; index: number }>;
type Row = Readonly<{ number: number; cells: readonly string[] }>;

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/** `2026-04-30` as it is, `30 April 2026` (as a daily file writes it) turned round; else undefined. */
function readDate(text: string): string | undefined {
  const words = /^(\d{1,2}) ([A-Za-z]{3,9}) (\d{4})$/.exec(text);
  const month = months.indexOf((words?.[2] ?? "").slice(0, 3).toLowerCase()) + 1;
  const date = words
    ? `${words[3]}-${String(month).padStart(2, "0")}-${(words[1] ?? "").padStart(2, "0")}`
    : text;
  return isDate(date) ? date : undefined;
}

const rowsOf = (text: string): readonly Row[] =>
  text
    .replace(/^\uFEFF/, "") // a byte order mark some editors add
    .split(/\r\n|\n|\r/)
    .map((line, index) => ({ number: index + 1, cells: line.split(",").map((cell) => cell.trim()) }))
    .filter((row) => row.cells.some((cell) => cell !== ""));

/** The columns that can be read: known currencies other than the base. Retired ones are passed over. */
const columnsOf = (header: Row, base: string): readonly Column[] =>
  header.cells
    .map((code, index) => ({ code: code.toUpperCase(), index }))
    .slice(1)
    .filter(({ code }) => isCurrency(code) && code !== base);

const isRate = (text: string): boolean => /^\d+(\.\d+)?$/.test(text) && !/^[0.]+$/.test(text);

/** What one row quotes; an empty cell or `N/A` quotes nothing. */
function readRow(row: Row, columns: readonly Column[], file: Required<RateFile>): Outcome<RateTable>[] {
  const date = readDate(row.cells[0] ?? "");
  if (!date) return [fail(`line ${row.number}`, `"${row.cells[0]}" is no date`, "write it as YYYY-MM-DD")];
  const quoted = columns
    .map(({ code, index }) => ({ code, text: row.cells[index] ?? "" }))
    .filter(({ text }) => text !== "" && text.toUpperCase() !== "N/A");
  const wrong = quoted.filter(({ text }) => !isRate(text));
  if (wrong.length > 0) {
    return wrong.map(({ code, text }) =>
      fail(
        `line ${row.number}, ${code}`,
        `"${text}" is no rate`,
        `write what 1 ${file.base} is worth, or N/A`,
      ),
    );
  }
  const quotes = Object.fromEntries(quoted.map(({ code, text }) => [code, text]));
  return [ok({ date, base: file.base, quotes, source: file.source })];
}

/** What is wrong with the first row, or null. */
function headerFault(header: Row | undefined, columns: readonly Column[]): Fault | null {
  if (!header || !/^date$/i.test(header.cells[0] ?? "")) {
    return fail("line 1", 'the first column is not "Date"', "choose a reference-rate file with a header row")
      .fault;
  }
  const twice = columns.find(({ code }, at) => columns.findIndex((other) => other.code === code) !== at);
  if (twice) return fail("line 1", `${twice.code} has two columns`, "keep one of them").fault;
  if (columns.length > 0) return null;
  return fail("line 1", "no column is a currency", "head each column with a code such as USD").fault;
}

/**
 * Reads a central bank's reference-rate CSV as it is published: `Date, USD, JPY …`, one row per day in any
 * order, `N/A` for none, columns of retired currencies, and a trailing comma or none.
 * @returns one table per row in the file's order, rates digit by digit as written; or every fault,
 *   with its line and column
 * @see European Central Bank, "Euro foreign exchange reference rates", files eurofxref.csv and eurofxref-hist.csv
 */
export function readReferenceRates(text: string, file: RateFile = {}): Checked<readonly RateTable[]> {
  const known = { base: file.base ?? "EUR", source: file.source ?? "Reference rates of a central bank" };
  const [header, ...rows] = rowsOf(text);
  const columns = header ? columnsOf(header, known.base) : [];
  const fault = headerFault(header, columns);
  if (fault) return refuse([fault]);
  return allOf(rows.flatMap((row) => readRow(row, columns, known)));
}
