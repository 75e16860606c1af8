import { type RateTable, readReferenceRates } from "../../../engine/money/index.ts";
import type { Fault } from "../../../engine/record/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { marketsWords } from "../../words/markets.ts";
import { kitName } from "./names.ts";
import { currenciesInUse, type RateRow, rateRow } from "./rates.ts";

const words = marketsWords.file;

/** What a file of rates holds, or every fault in it. */
export type RateFileRead =
  | Readonly<{ ok: true; tables: readonly RateTable[] }>
  | Readonly<{ ok: false; faults: readonly Fault[] }>;

const sizeLimitBytes = 20_000_000;
const refused = (fault: Fault): RateFileRead => ({ ok: false, faults: [fault] });

/** Decodes a file of rates; one that is too large, or packed, is refused before it is read as a table. */
export function rateText(
  bytes: ArrayBuffer,
): Readonly<{ text: string }> | Extract<RateFileRead, { ok: false }> {
  if (bytes.byteLength > sizeLimitBytes) return { ok: false, faults: [words.tooLarge] };
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
  } catch {
    return { ok: false, faults: [words.notText] };
  }
}

/** Reads a central bank's file of reference rates; everything in it is quoted for 1 `base`. */
export function readRateFile(text: string, base: string, source: string): RateFileRead {
  const read = readReferenceRates(text, { base, source });
  if (!read.ok) return { ok: false, faults: read.faults };
  const tables = read.value.filter(({ quotes }) => Object.keys(quotes).length > 0);
  return tables.length === 0 ? refused(words.empty) : { ok: true, tables };
}

/** The newest day of a file on or before `on`; of one day, the later in the file. */
export const tableOn = (tables: readonly RateTable[], on: string): RateTable | null =>
  tables.reduce<RateTable | null>(
    (best, table) => (table.date <= on && (!best || table.date >= best.date) ? table : best),
    null,
  );

/** A day of a file worth keeping, and why. */
export type Kept = Readonly<{ row: RateRow; why: string; stands: "new" | "same" | "other" }>;

/** How a day of the file stands to what is here: new, the very same, or another that it would replace. */
function standsTo(table: RateTable, book: Workbook): Kept["stands"] {
  const here = (book.rates ?? []).find(({ date, base }) => date === table.date && base === table.base);
  if (!here) return "new";
  const codes = new Set([...Object.keys(here.quotes), ...Object.keys(table.quotes)]);
  const quote = ({ quotes }: RateTable, code: string) => (Object.hasOwn(quotes, code) ? quotes[code] : null);
  return [...codes].every((code) => quote(here, code) === quote(table, code)) ? "same" : "other";
}

const newest = (tables: readonly RateTable[]): RateTable | null => tableOn(tables, "9999-12-31");

/**
 * The days of a file that are worth keeping: those that bring a kit rates nearer to its date, those asked for, and the newest.
 * @param wished days asked for, `YYYY-MM-DD`; the newest rates on or before each are taken
 */
export function keptDays(
  tables: readonly RateTable[],
  book: Workbook,
  wished: readonly string[],
  format: Formatter = ownFormat,
): readonly Kept[] {
  const inUse = currenciesInUse(book);
  const whys = new Map<RateTable, string[]>();
  const note = (table: RateTable | null, why: string) => {
    if (table) whys.set(table, [...(whys.get(table) ?? []), why]);
  };
  note(newest(tables), words.newest);
  const kits = new Map<RateTable, string[]>();
  for (const kit of book.kits ?? []) {
    const table = kit.valuedOn ? tableOn(tables, kit.valuedOn) : null;
    const own = kit.valuedOn ? tableOn(book.rates ?? [], kit.valuedOn) : null;
    // What is here already serves a kit as well as an older day, or the same one, of the file would.
    if (table && (!own || own.date < table.date)) kits.set(table, [...(kits.get(table) ?? []), kitName(kit)]);
  }
  for (const [table, names] of kits) note(table, words.needed(names));
  for (const day of wished) note(tableOn(tables, day), words.wished);
  return [...whys]
    .toSorted(([a], [b]) => (a.date < b.date ? 1 : -1))
    .map(([table, why]) => ({
      row: rateRow(table, inUse, format),
      why: [...new Set(why)].join(", "),
      stands: standsTo(table, book),
    }));
}
