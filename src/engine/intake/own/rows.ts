import type { Language } from "../../record/index.ts";
import { type StashItem, StashItemSchema } from "../../supply/index.ts";
import { standings } from "../here.ts";
import { rowKeys } from "../key.ts";
import type { CellDoubt } from "../row.ts";
import { type Cell, isBlank, type Table } from "../table.ts";
import type { Around, Draft, Understood } from "../understand.ts";
import { ownWordsIn, wordsIn } from "../words/index.ts";
import { ownColumns } from "./columns.ts";
import { type OwnHeads, type OwnRow, readOwnRow } from "./read.ts";
import { cellOf } from "./write.ts";

/** Whether an item has, in every column that a list has, what the list says of it. */
function saysTheSame(item: StashItem, read: StashItem, { columns }: OwnHeads, language: Language): boolean {
  const said = (of: StashItem) =>
    ownColumns.filter((column) => columns.includes(column)).map((column) => cellOf(of, column, language));
  return JSON.stringify(said(item)) === JSON.stringify(said(read));
}

/** Stands in for the id of a row that has none, while it is looked at. */
const noId = "-";

/** Tells rows apart from what is here and from each other. */
function sorter(heads: OwnHeads, { stash, language }: Around) {
  const [words, own] = [wordsIn[language], ownWordsIn[language]];
  const byId = new Map(stash.map((item) => [item.id, item]));
  const standing = standings(stash);
  const rowOfId = new Map<string, number>();
  const keyOf = rowKeys();
  const idColumn = heads.columns.findIndex((column) => column?.key === "id");

  /** Why a thing is not added; null for one that is new. */
  function whyHere(item: StashItem, id: string | null, key: string): string | null {
    const same = id === null ? undefined : byId.get(id);
    if (same) return saysTheSame(same, item, heads, language) ? words.here : own.changed;
    const importKey = typeof item.importKey === "string" ? item.importKey : key;
    const stands = standing(importKey, item.supply, item.place ?? undefined);
    return stands && (stands.by === "key" ? words.before : words.here);
  }

  return (row: number, { item, doubts }: OwnRow, cells: readonly Cell[]): Understood => {
    const said = typeof item.id === "string" ? item.id : null;
    const parsed = StashItemSchema.safeParse({ ...item, id: said ?? noId });
    if (!parsed.success) return { kind: "refused", row, reason: words.misfit };
    const first = said === null ? undefined : rowOfId.get(said); // a row copied in a spreadsheet has its id twice
    const id = first === undefined ? said : null;
    if (id !== null) rowOfId.set(id, row);
    const { id: _, ...read } = parsed.data;
    const key = id === null ? keyOf(cells) : id; // what has an id goes by that
    const draft = { ...read, ...(id === null ? { importKey: key } : { id }) } as Draft; // an item that was checked
    const reason = whyHere(parsed.data, id, key);
    if (reason !== null) return { kind: "here", row, draft, reason, doubts };
    const copied: readonly CellDoubt[] =
      first === undefined ? [] : [{ column: idColumn, reason: own.sameId(first + 1) }];
    return { kind: "new", row, draft, doubts: [...doubts, ...copied] };
  };
}

/** A row that has an id is a thing even without a name: it may never have had one. */
function named({ item, doubts }: OwnRow): OwnRow | null {
  const supply = item.supply as Readonly<Record<string, unknown>>; // every row that was read has one
  if (typeof supply.name === "string") return { item, doubts };
  return typeof item.id === "string" ? { item: { ...item, supply: { ...supply, name: "" } }, doubts } : null;
}

/**
 * The rows of a list that was saved here, read back exactly. A thing that is here already, by its id or as the same
 * product in the same place, stays as it is; the others keep their ids, so that twins find each other again.
 * @param table as it was written, its texts untouched
 */
export function ownRows(table: Table, heads: OwnHeads, around: Around): readonly Understood[] {
  const titles = table.rows[heads.row] ?? [];
  const sort = sorter(heads, around);
  return table.rows.flatMap((cells, row): readonly Understood[] => {
    if (row <= heads.row || cells.every((cell) => isBlank(cell))) return [];
    const read = named(readOwnRow(cells, heads, titles, around));
    if (!read) return [{ kind: "refused", row, reason: wordsIn[around.language].noName }];
    return [sort(row, read, cells)];
  });
}
