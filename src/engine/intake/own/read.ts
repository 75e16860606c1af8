import { ColourSchema } from "../../colour/index.ts";
import { MoneySchema } from "../../money/index.ts";
import { type Language, languages } from "../../record/index.ts";
import { AnyFamilySchema, type Family, StashItemSchema, traitsByFamily } from "../../supply/index.ts";
import { readDay } from "../read/day.ts";
import { readState } from "../read/words.ts";
import type { CellDoubt } from "../row.ts";
import { type Cell, cellText, isBlank, type Table } from "../table.ts";
import { wordsIn } from "../words/index.ts";
import { headOf, type OwnColumn, ownColumns } from "./columns.ts";
import { familyWord } from "./said.ts";
import type { Speech } from "./written.ts";

/** Where the heads of a list of ours are, what stands under each, and in which language it is. */
export type OwnHeads = Readonly<{ row: number; columns: readonly (OwnColumn | null)[]; language: Language }>;

/** How many rows are looked at for the heads: somebody may have put a title above them. */
const rowsForHead = 10;

const plain = (cell: Cell | undefined): string => cellText(cell).trim().toLowerCase();

function columnsIn(row: readonly Cell[], language: Language): readonly (OwnColumn | null)[] {
  const heads = new Map(ownColumns.map((column) => [headOf(column, language).toLowerCase(), column]));
  const taken = new Set<OwnColumn>();
  return row.map((cell) => {
    const column = heads.get(plain(cell));
    if (!column || taken.has(column)) return null;
    taken.add(column);
    return column;
  });
}

/** The heads of a list that was saved here: told by the head of its ids, wherever somebody moved it. Null: no such list. */
export function ownHeads({ rows }: Table): OwnHeads | null {
  for (const [row, cells] of rows.slice(0, rowsForHead).entries())
    for (const language of languages) {
      const columns = columnsIn(cells, language);
      const has = (key: OwnColumn["key"]) => columns.some((column) => column?.key === key);
      if (has("id") && has("name") && has("kind")) return { row, columns, language };
    }
  return null;
}

/** A row of our own list, read: the item as it was, without what nothing was made of; that is kept in its note. */
export type OwnRow = Readonly<{ item: Readonly<Record<string, unknown>>; doubts: readonly CellDoubt[] }>;

type Tree = Map<string, unknown>;

function put(tree: Tree, [field, ...rest]: readonly string[], value: unknown): void {
  if (field === undefined) return;
  if (rest.length === 0) {
    tree.set(field, value);
    return;
  }
  const below = tree.get(field);
  const branch: Tree = below instanceof Map ? below : new Map();
  tree.set(field, branch);
  put(branch, rest, value);
}

const grown = (tree: Tree): Record<string, unknown> =>
  Object.fromEntries([...tree].map(([field, value]) => [field, value instanceof Map ? grown(value) : value]));

type Checked = Readonly<{ safeParse: (value: unknown) => Readonly<{ success: boolean }> }>;
type Shape = Readonly<Record<string, Checked>>;

/** What the fields of each part of an item may hold; the traits are their family's own. */
const shapes = {
  item: StashItemSchema.shape as Shape,
  supply: AnyFamilySchema.shape as Shape,
  colour: ColourSchema.shape as Shape,
  paid: MoneySchema.shape as Shape,
};

function schemaAt([first, second, third]: readonly string[], family: Family): Checked | undefined {
  const [shape, field]: readonly [Shape, string | undefined] =
    second === "traits"
      ? [traitsByFamily[family], third]
      : second === "colour"
        ? [shapes.colour, third]
        : first === "supply"
          ? [shapes.supply, second]
          : first === "paid"
            ? [shapes.paid, second]
            : [shapes.item, first];
  return field !== undefined && Object.hasOwn(shape, field) ? shape[field] : undefined;
}

/** Whether a value is one that its field takes; a field that the workbook knows nothing of takes any. */
function isAllowed({ path, key }: OwnColumn, value: unknown, family: Family): boolean {
  const schema = schemaAt(path, family);
  return schema ? schema.safeParse(value).success : key === "importKey";
}

/** What people write into such a list by hand: a day or a state in words of their own. */
function byHand({ key }: OwnColumn, cell: Cell, { language }: Speech, today: string): unknown {
  const words = wordsIn[language];
  if (key === "acquired" || key === "opened") return readDay(cell, null, today, words).value ?? undefined;
  return key === "state" ? (readState(cell, words).value ?? undefined) : undefined;
}

function valueIn(column: OwnColumn, cell: Cell, speech: Speech, today: string): unknown {
  const read = column.codec.read(cellText(cell), speech);
  const value = read === undefined ? byHand(column, cell, speech, today) : read;
  return value !== undefined && isAllowed(column, value, speech.family) ? value : undefined;
}

/** The family that a row says; null where it says none of ours. */
function familyIn(cells: readonly Cell[], { columns, language }: OwnHeads): Family | null {
  const at = columns.findIndex((column) => column?.key === "kind");
  const read = familyWord.read(cellText(cells[at]), { family: "other", language });
  return typeof read === "string" ? (read as Family) : null; // a key of our table of families
}

/** A price needs its currency, and a currency its price: half of one is none. */
const half = ({ key }: OwnColumn, tree: Tree): boolean => {
  const paid = tree.get("paid");
  return (key === "paid" || key === "currency") && paid instanceof Map && paid.size < 2;
};

/**
 * Reads one row of a list of ours by the very columns that wrote it.
 * @param titles the heads as they stand in the file
 * @param language of the reasons
 */
export function readOwnRow(
  cells: readonly Cell[],
  heads: OwnHeads,
  titles: readonly Cell[],
  { today, language }: Readonly<{ today: string; language: Language }>,
): OwnRow {
  const words = wordsIn[language];
  const family = familyIn(cells, heads);
  const speech = { family: family ?? "other", language: heads.language };
  const tree: Tree = new Map();
  put(tree, ["supply", "family"], speech.family);
  const unread: number[] = [];
  for (const [at, cell] of cells.entries()) {
    const column = heads.columns[at] ?? null;
    if (isBlank(cell) || (column?.key === "kind" && family !== null)) continue;
    const value = column && column.key !== "kind" ? valueIn(column, cell, speech, today) : undefined;
    if (column === null || value === undefined) unread.push(at);
    else if (value !== column.unsaid) put(tree, column.path, value);
  }
  for (const [at, column] of heads.columns.entries())
    if (column && !isBlank(cells[at]) && half(column, tree)) unread.push(at);
  const paid = tree.get("paid");
  if (paid instanceof Map && paid.size < 2) tree.delete("paid");
  keep(
    tree,
    unread.map((at) => {
      const title = cellText(titles[at]).trim();
      return title === "" ? cellText(cells[at]) : `${title}: ${cellText(cells[at])}`;
    }),
  );
  const doubts = unread.map((column) => ({ column, reason: words.unread(cellText(cells[column])) }));
  return {
    item: grown(tree),
    doubts: family === null ? [...doubts, { column: 0, reason: words.noKind }] : doubts,
  };
}

/** Puts what nothing was made of into the note. */
function keep(tree: Tree, texts: readonly string[]): void {
  const note = tree.get("note");
  if (texts.length > 0) tree.set("note", [...(typeof note === "string" ? [note] : []), ...texts].join("\n"));
}
