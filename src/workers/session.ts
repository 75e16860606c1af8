import {
  type Around,
  type Cell,
  cellText,
  type Draft,
  guessMapping,
  headPrint,
  type Mapping,
  notHeld,
  ownHeads,
  ownRows,
  rowReader,
  type Table,
  tied,
  type Understood,
  understandItems,
  widthOf,
} from "../engine/intake/index.ts";
import type { Language } from "../engine/record/index.ts";
import { csvLine } from "./csv.ts";
import type { FileFault } from "./file/fault.ts";
import { type Content, type Contents, contents, readFile, readWritten } from "./file/read-file.ts";
import type { Delimiter } from "./file/text.ts";
import { listFile } from "./out/list-file.ts";

/** What was opened, as far as a person chooses by it. */
export type Opened =
  | Readonly<{ ok: false; fault: FileFault }>
  | Readonly<{
      ok: true;
      kind: Content["kind"];
      /** For text: which sign parts its cells. */
      delimiter: Delimiter | null;
      sheets: readonly Readonly<{
        name: string;
        rows: number;
        columns: number;
        /** The heads of a list that was saved here, which is read exactly; else it has none. */
        saved?: readonly string[];
      }>[];
    }>;

/** How a sheet is to be read, as far as can be told from it. */
export type Guess = Readonly<{
  mapping: Mapping;
  /** What lists with these heads go by. */
  print: string;
  heads: readonly string[];
}>;

/** A row beside its cells as they stand in the list. */
export type Shown = Readonly<{ read: Understood; cells: readonly string[] }>;

/** What a list came to: how many rows of each kind, and those of them that are looked at. */
export type Summary = Readonly<{
  fresh: number;
  here: number;
  refused: number;
  doubtful: number;
  first: readonly Shown[];
  toLookAt: readonly Shown[];
  notAdded: readonly Shown[];
}>;

/** The words that the file with what was not added needs. */
export type RestWords = Readonly<{ reason: string; leftOut: string }>;

export type Progress = (done: number, all: number) => void;

const firstShown = 8;
const mostShown = 200;
const rowsAtOnce = 500;

/** Lets what was asked in the meantime be heard. */
const breath = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** The heads of a list that was saved here. */
function savedHeads(table: Table): Readonly<{ saved?: readonly string[] }> {
  const found = table.exact && ownHeads(table);
  return found ? { saved: (table.rows[found.row] ?? []).map(cellText) } : {};
}

const openedOf = (read: Contents): Opened => {
  if (!read.ok) return read;
  const { content } = read;
  const sheets =
    content.kind === "workbook"
      ? [{ name: "", rows: content.items.length, columns: 0 }]
      : content.tables.map((table) => ({
          name: table.name,
          rows: table.rows.length,
          columns: widthOf(table),
          ...savedHeads(table),
        }));
  return {
    ok: true,
    kind: content.kind,
    delimiter: content.kind === "text" ? content.delimiter : null,
    sheets,
  };
};

/** A file that is being brought in: what it holds, and what became of its rows. The page asks, and shows the answers. */
export function createSession() {
  let content: Content | null = null;
  let table: Table | null = null;
  let head: number | null = null;
  let rows: readonly Understood[] = [];
  let here: Parameters<typeof tied>[1] = { things: [], kits: [] };
  let run = 0;

  async function take(read: Promise<Contents>): Promise<Opened> {
    run += 1;
    const result = await read;
    content = result.ok ? result.content : null;
    rows = [];
    return openedOf(result);
  }

  const cellsOf = (row: number): readonly Cell[] => table?.rows[row] ?? [];
  const shown = (read: Understood): Shown => ({ read, cells: cellsOf(read.row).map(cellText) });

  function summaryOf(): Summary {
    const of = (kind: Understood["kind"]) => rows.filter((row) => row.kind === kind);
    const fresh = of("new");
    const doubtful = fresh.filter((row) => row.kind !== "refused" && row.doubts.length > 0);
    const notAdded = [...of("refused"), ...of("here")];
    return {
      fresh: fresh.length,
      here: of("here").length,
      refused: of("refused").length,
      doubtful: doubtful.length,
      first: rows.slice(0, firstShown).map(shown),
      toLookAt: doubtful.slice(0, mostShown).map(shown),
      notAdded: notAdded.slice(0, mostShown).map(shown),
    };
  }

  /** Reads all rows; null where something else was asked for before it was done. */
  async function readRows(mapping: Mapping, around: Around, onProgress: Progress): Promise<Summary | null> {
    if (!table) return null;
    run += 1;
    const mine = run;
    const all = table.rows.length;
    const read = rowReader(table, mapping, around);
    const found: Understood[] = [];
    for (let at = 0; at < all; at += 1) {
      if (at % rowsAtOnce === 0) {
        onProgress(at, all);
        await breath();
        if (mine !== run) return null;
      }
      const row = read(at);
      if (row) found.push(row);
    }
    rows = found;
    head = mapping.head;
    return summaryOf();
  }

  return {
    listFile,
    notHeld,

    openFile: (bytes: Uint8Array, name: string): Promise<Opened> => take(readFile(bytes, name)),
    openText: (text: string, name: string): Promise<Opened> => take(contents(() => readWritten(text, name))),

    /** Reads the text once more, its cells parted by another sign. */
    async partBy(delimiter: Delimiter): Promise<Opened> {
      if (content?.kind !== "text") return { ok: false, fault: "no-table" };
      const { text, tables } = content;
      return take(contents(() => readWritten(text, tables[0]?.name ?? "", delimiter)));
    },

    /** Chooses a sheet, and guesses how it is to be read; null for one that needs no mapping. */
    guess(sheet: number, home: string, language: Language, wantedHead?: number | null): Guess | null {
      if (!content || content.kind === "workbook") return null;
      table = content.tables[sheet] ?? null;
      if (!table || table.exact) return null;
      const mapping = guessMapping(table, home, language, wantedHead);
      const heads = mapping.head === null ? [] : (table.rows[mapping.head] ?? []);
      return { mapping, print: headPrint(heads), heads: heads.map(cellText) };
    },

    readRows,

    /** What needs no mapping: the stash of a workbook, or a list that was saved here. */
    readItems(around: Around): Summary | null {
      if (!content) return null;
      run += 1;
      head = null;
      here = { things: around.stash, kits: around.kits ?? [] };
      if (content.kind === "workbook") {
        table = null;
        rows = understandItems(content.items, around.stash, around.language);
        return summaryOf();
      }
      const exact = table && { ...table, rows: table.exact ?? [] };
      const heads = exact && ownHeads(exact);
      if (!heads) return null;
      head = heads.row;
      rows = ownRows(exact, heads, around);
      return summaryOf();
    },

    /** What is to be added, without the rows that were left out. */
    drafts(without: readonly number[]): readonly Draft[] {
      const out = new Set(without);
      const fresh = rows.flatMap((row) => (row.kind === "new" && !out.has(row.row) ? [row.draft] : []));
      return tied(fresh, here);
    },

    /** Every row that is not added, as CSV with the reason in front, under the list's own heads. */
    rest(without: readonly number[], words: RestWords): string {
      const out = new Set(without);
      const reasonOf = (row: Understood): string | null => {
        if (row.kind === "new") return out.has(row.row) ? words.leftOut : null;
        return row.reason;
      };
      const cells = (row: Understood) =>
        table || row.kind === "refused" ? cellsOf(row.row).map(cellText) : [row.draft.supply.name];
      const lines = rows.flatMap((row) => {
        const reason = reasonOf(row);
        return reason === null ? [] : [csvLine([reason, ...cells(row)])];
      });
      return [csvLine([words.reason, ...(head === null ? [] : cellsOf(head).map(cellText))]), ...lines].join(
        "",
      );
    },
  };
}

export type Session = ReturnType<typeof createSession>;
