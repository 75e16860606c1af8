import { type Cell, caps, cleanText, exactText, ownHeads, type Table } from "../../engine/intake/index.ts";
import { Refused, refuse } from "./fault.ts";
import { checkRepeats } from "./repeats.ts";
import { trimmed } from "./text.ts";
import { directoryOf, type Entry, unpack } from "./zip.ts";

/** Parts of a spreadsheet that hold no cell: never unpacked. */
const asides =
  /(?:^|\/)(?:media|drawings|charts|theme|embeddings|printerSettings|externalLinks|pivotTables|pivotCache|customXml|activeX|ctrlProps|comments|threadedComments|persons|Pictures|Thumbnails|Object)[^/]*(?:\/|\.xml$)|\/worksheets\/_rels\/|\.bin$|\.vml$|^docProps\//i;

type Kind = "xlsx" | "ods";

const has = (entries: readonly Entry[], name: string): boolean =>
  entries.some((entry) => entry.name === name);

function kindOf(entries: readonly Entry[]): Kind {
  if (has(entries, "[Content_Types].xml") && entries.some(({ name }) => /^xl\/workbook\.xml$/i.test(name)))
    return "xlsx";
  if (has(entries, "content.xml") && has(entries, "META-INF/manifest.xml")) return "ods";
  return refuse(
    entries.some(({ name }) => /^xl\/workbook\.bin$/i.test(name)) ? "old-spreadsheet" : "archive",
  );
}

const count = (text: string, pattern: RegExp): number => text.match(pattern)?.length ?? 0;

/** Refuses what would be too much before cell after cell is made of it. */
function checkSize(name: string, content: Uint8Array, kind: Kind): void {
  const isSheet = kind === "ods" ? name === "content.xml" : /\/worksheets\/[^/]*\.xml$/i.test(name);
  if (!isSheet) return;
  const text = new TextDecoder("latin1").decode(content);
  if (kind === "ods") checkRepeats(text);
  if (count(text, /<(?:\w+:)?row[ >]/g) > caps.rows + 10) refuse("too-many-rows");
  if (count(text, /<(?:\w+:)?(?:v|is)>/g) > caps.cells) refuse("too-much");
}

type Part = Readonly<{ path: string; name: string; type: 2; content: Uint8Array; size: number }>;

const partOf = (path: string, content: Uint8Array): Part => ({
  path,
  name: path.split("/").at(-1) ?? path,
  type: 2,
  content,
  size: content.length,
});

/** Styles that say nothing: an OpenDocument file may leave them out, and its reader asks for them. */
const noStyles = partOf(
  "styles.xml",
  new TextEncoder().encode('<?xml version="1.0"?><office:document-styles></office:document-styles>'),
);

/** A password of an OpenDocument file is told in its manifest, and its parts look like damage. */
const isLocked = ({ path, content }: Part): boolean =>
  path === "META-INF/manifest.xml" && new TextDecoder("latin1").decode(content).includes("encryption-data");

/** The parts that hold cells, or say how to read them, unpacked. */
async function partsOf(bytes: Uint8Array, entries: readonly Entry[], kind: Kind): Promise<readonly Part[]> {
  const parts: Part[] = [];
  for (const entry of entries) {
    if (entry.name.endsWith("/") || asides.test(entry.name)) continue;
    const part = partOf(entry.name, await unpack(bytes, entry));
    if (isLocked(part)) refuse("locked");
    checkSize(entry.name, part.content, kind);
    parts.push(part);
  }
  return kind === "ods" && !has(entries, "styles.xml") ? [...parts, noStyles] : parts;
}

type Value = string | number | boolean | Date;
type Found = Readonly<{ t: string; v?: Value; z?: string }>;

/** How a cell's text, and its number, is kept. */
type Kept = Readonly<{ text: (text: string) => string; number: (value: number, found: Found) => Cell }>;

const anyList: Kept = { text: cleanText, number: (value) => value };

/** An amount with the decimals that it is shown with: "39.50" is no 39.5. */
function asShown(value: number, { z }: Found): Cell {
  const decimals = /^0(?:\.(0{1,9}))?$/.exec(z ?? "");
  const text = decimals ? value.toFixed(decimals[1]?.length ?? 0) : "";
  return decimals && Number(text) === value ? text : value;
}

const ownList: Kept = { text: exactText, number: asShown };

/** A cell's value: never its formula, and nothing for an error. */
function cellOf(found: Found | undefined, kept: Kept): Cell {
  if (!found || found.v === undefined || found.t === "e" || found.t === "z") return null;
  if (found.v instanceof Date) {
    if (Number.isNaN(found.v.getTime())) return null;
    return { date: found.v.toISOString().slice(0, 10) };
  }
  if (typeof found.v === "number") return Number.isFinite(found.v) ? kept.number(found.v, found) : null;
  const text = kept.text(String(found.v));
  if (text.length > caps.letters) refuse("too-much");
  return text === "" ? null : text;
}

type Sheet = Readonly<{ "!data"?: readonly (readonly (Found | undefined)[] | undefined)[] }>;

function rowsOf(sheet: Sheet | undefined, kept: Kept): readonly (readonly Cell[])[] {
  const data = sheet?.["!data"] ?? [];
  if (data.length > caps.rows) refuse("too-many-rows");
  // `from` goes through holes as well: rows and cells that are left out of the file.
  return trimmed(
    Array.from(data, (row) => {
      if ((row?.length ?? 0) > caps.columns) refuse("too-many-columns");
      return Array.from(row ?? [], (found) => cellOf(found, kept));
    }),
  );
}

/** A sheet as a table; a list that was saved here has its cells to the letter beside it. */
function tableOf(name: string, sheet: Sheet | undefined): Table {
  const table = { name: cleanText(name), rows: rowsOf(sheet, anyList) };
  return ownHeads(table) ? { ...table, exact: rowsOf(sheet, ownList) } : table;
}

const options = {
  dense: true,
  cellDates: true,
  UTC: true,
  cellNF: true,
  cellFormula: false,
  cellHTML: false,
  cellText: false,
  cellStyles: false,
  sheetStubs: false,
  bookVBA: false,
  sheetRows: caps.rows + 1,
};

/** The reader of spreadsheets, loaded when there is one to read. */
async function parsed(parts: readonly Part[]) {
  const { default: library } = await import("@e965/xlsx/dist/xlsx.mini.min.js");
  try {
    return library.parse_zip({ FullPaths: parts.map(({ path }) => path), FileIndex: parts }, options);
  } catch (error) {
    if (error instanceof Refused) throw error;
    return refuse(/password|encrypt/i.test(String(error)) ? "locked" : "damaged");
  }
}

/** The sheets of an XLSX or ODS file that hold anything and are not hidden: their values only. */
export async function readSpreadsheet(
  bytes: Uint8Array,
): Promise<Readonly<{ kind: Kind; tables: readonly Table[] }>> {
  const entries = directoryOf(bytes);
  const kind = kindOf(entries);
  const book = await parsed(await partsOf(bytes, entries, kind));
  const shown = book.SheetNames.filter((_, at) => !book.Workbook?.Sheets?.[at]?.Hidden);
  const sheets = new Map(Object.entries(book.Sheets));
  const tables = shown.map((name) => tableOf(name, sheets.get(name))).filter(({ rows }) => rows.length > 0);
  return tables.length > 0 ? { kind, tables } : refuse("empty");
}
