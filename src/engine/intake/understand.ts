import { isCurrency, type Money } from "../money/index.ts";
import type { Language } from "../record/index.ts";
import type { KnownNames, StashItem, Supply } from "../supply/index.ts";
import { columnsOf } from "./columns.ts";
import { type Describer, describer } from "./describe.ts";
import type { Mapping } from "./fields.ts";
import { type Standing, standings } from "./here.ts";
import { rowKeys } from "./key.ts";
import { readCount } from "./read/count.ts";
import { readDay } from "./read/day.ts";
import { readMoney } from "./read/money.ts";
import { isTotal, readState, readTags } from "./read/words.ts";
import { type CellDoubt, type Row, rowOf } from "./row.ts";
import { type Cell, cellText, isBlank, type Table } from "./table.ts";
import { thingOf } from "./thing.ts";
import { type IntakeWords, wordsIn } from "./words/index.ts";

/**
 * A thing of a list, ready to be put into the stash under an id. `importKey` tells its row when it comes again; out of
 * a list of our own it has its id for that, and what led to other records.
 */
export type Draft = Readonly<{
  supply: Supply;
  importKey?: string;
  id?: string;
  twinOf?: string[];
  fromKit?: string;
  boughtForThis?: boolean;
  owned?: number;
  sheetsLeft?: number;
  state?: NonNullable<StashItem["state"]>;
  acquired?: string;
  opened?: string;
  paid?: Money;
  place?: string;
  note?: string;
  tags?: string[];
}>;

/** What became of a row, counted from 0 in its table. */
export type Understood =
  | Readonly<{ kind: "new"; row: number; draft: Draft; doubts: readonly CellDoubt[] }>
  | Readonly<{ kind: "here"; row: number; draft: Draft; reason: string; doubts: readonly CellDoubt[] }>
  | Readonly<{ kind: "refused"; row: number; reason: string }>;

/** What is known around a list. `kits`: the ids of those that a thing may have come from. */
export type Around = Readonly<{
  stash: readonly StashItem[];
  kits?: readonly string[];
  known: KnownNames;
  today: string;
  language: Language;
}>;

/** Days repeat all through a list: each is read once. */
function dayReader({ days }: ReturnType<typeof columnsOf>, today: string, words: IntakeWords) {
  const kept = new Map<string, ReturnType<typeof readDay>>();
  return (field: "acquired" | "opened", cell: Cell) => {
    const key = `${field} ${typeof cell} ${cellText(cell)}`;
    const said = kept.get(key) ?? readDay(cell, days.get(field) ?? null, today, words);
    kept.set(key, said);
    return said;
  };
}

type Reading = Readonly<{
  columns: ReturnType<typeof columnsOf>;
  mapping: Mapping;
  reader: Describer;
  words: IntakeWords;
  readDay: ReturnType<typeof dayReader>;
}>;

function tagsOf(row: Row): readonly string[] {
  return [...new Set(row.all("tags").flatMap((column) => readTags(row.cells[column] ?? null)))];
}

function noteOf(row: Row): string {
  const columns = row.all("note");
  const [only] = columns;
  if (only !== undefined && columns.length === 1) return [cellText(row.cells[only]), ...row.kept].join("\n");
  for (const column of columns) row.keep(column);
  return row.kept.join("\n");
}

function moneyOf(row: Row, { columns, mapping, words }: Reading): Money | undefined {
  const code = row.text("currency").toUpperCase();
  const named = isCurrency(code) ? code : null;
  const column = { sign: columns.signs.get("paid") ?? null, home: mapping.currency };
  return row.take("paid", (cell) => readMoney(cell, column, named, words));
}

/** What a row says of the thing as its owner has it. */
function ownFacts(
  row: Row,
  reading: Reading,
  supply: Supply,
  qty: number,
): Omit<Draft, "supply" | "importKey"> {
  const { words } = reading;
  const day = (field: "acquired" | "opened") => row.take(field, (cell) => reading.readDay(field, cell));
  const owned = row.take("owned", (cell) => readCount(cell, words)) ?? qty;
  const left = row.take("sheetsLeft", (cell) =>
    supply.family === "paper"
      ? readCount(cell, words)
      : { value: null, doubt: words.noSuchTrait(cellText(cell)) },
  );
  const state = row.take("state", (cell) => readState(cell, words));
  const [acquired, opened] = [day("acquired"), day("opened")];
  const paid = moneyOf(row, reading);
  const place = row.text("place");
  const tags = tagsOf(row);
  const note = noteOf(row); // last: by now it is known what nothing was made of
  return {
    ...(owned === 1 ? {} : { owned }),
    ...(left === undefined ? {} : { sheetsLeft: left }),
    ...(state === undefined || state === "ok" ? {} : { state }),
    ...(acquired === undefined ? {} : { acquired }),
    ...(opened === undefined ? {} : { opened }),
    ...(paid === undefined ? {} : { paid }),
    ...(place === "" ? {} : { place }),
    ...(note === "" ? {} : { note }),
    ...(tags.length === 0 ? {} : { tags: [...tags] }),
  };
}

/** The known names that stand in a list and have no column of their own: each costs a look in every text. */
function namesIn({ rows }: Table, at: Reading["columns"]["at"], { makers, lines }: KnownNames): KnownNames {
  const all = rows.map((row) => row.map(cellText).join("\n").toLowerCase()).join("\n");
  const found = (names: readonly string[] | undefined) =>
    (names ?? []).filter((name) => all.includes(name.trim().toLowerCase()));
  return { makers: at.has("maker") ? [] : found(makers), lines: at.has("line") ? [] : found(lines) };
}

/** A row that is of the list and no thing: its heads once more, or its sum. */
function noThing(cells: readonly Cell[], heads: readonly Cell[], words: IntakeWords): string | null {
  const filled = cells.filter((cell) => !isBlank(cell));
  if (
    heads.length > 0 &&
    filled.length > 1 &&
    cells.every((cell, at) => cellText(cell) === cellText(heads[at]))
  )
    return words.headsAgain;
  const [first] = filled;
  return filled.length <= 4 && isTotal(cellText(first)) ? words.total : null;
}

function whyHere({ item, by }: Standing, draft: Draft, words: IntakeWords): string {
  if (by === "key") return words.before;
  const [have, says] = [item.owned ?? 1, draft.owned ?? 1];
  return have === says ? words.here : words.hereWith(have, says);
}

/**
 * The reader of a table's rows, to be called for each row once and in their order: equal rows are told apart by it.
 * @returns a function that gives null for an empty row and for what stands above the heads
 */
export function rowReader(
  table: Table,
  mapping: Mapping,
  around: Around,
): (row: number) => Understood | null {
  const words = wordsIn[around.language];
  const columns = columnsOf(table, mapping);
  const reader = describer(namesIn(table, columns.at, around.known), around.language);
  const reading = { columns, mapping, reader, words, readDay: dayReader(columns, around.today, words) };
  const heads = mapping.head === null ? [] : (table.rows[mapping.head] ?? []);
  const standing = standings(around.stash);
  const keyOf = rowKeys();
  const firstWith = new Map<string, number>();

  return (at) => {
    const cells = table.rows[at] ?? [];
    if ((mapping.head !== null && at <= mapping.head) || cells.every((cell) => isBlank(cell))) return null;
    const why = noThing(cells, heads, words);
    if (why !== null) return { kind: "refused", row: at, reason: why };
    const key = keyOf(cells);
    const row = rowOf(cells, columns);
    const thing = thingOf(row, reader, words, mapping.family);
    if (!thing) return { kind: "refused", row: at, reason: words.noName };
    const draft = {
      supply: thing.supply,
      ...ownFacts(row, reading, thing.supply, thing.qty),
      importKey: key,
    };
    const stands = standing(key, thing.supply, draft.place);
    if (stands)
      return { kind: "here", row: at, draft, reason: whyHere(stands, draft, words), doubts: row.doubts };
    const [base = key] = key.split("-");
    const first = firstWith.get(base);
    if (first === undefined) firstWith.set(base, at);
    else row.doubts.push({ column: Math.max(0, row.column("name")), reason: words.sameAs(first + 1) });
    return { kind: "new", row: at, draft, doubts: row.doubts };
  };
}

/** Every row of a table at once. */
export function understand(table: Table, mapping: Mapping, around: Around): readonly Understood[] {
  const read = rowReader(table, mapping, around);
  return table.rows.flatMap((_, at) => read(at) ?? []);
}
