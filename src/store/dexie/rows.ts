import * as z from "zod/mini";
import { emptyWorkbook, type Workbook } from "../../engine/workbook/index.ts";
import { type Act, type ListName, listNames, type Picture } from "../journal/index.ts";
import type { Snapshot } from "../repository.ts";
import { type Chunk, chunkSize, type Relaid, relay } from "./chunks.ts";

const Stamp = z.object({ schema: z.int(), minimumWriter: z.int() });
const State = z.object({
  device: z.string(),
  counter: z.int(),
  revision: z.int(),
  savedAt: z.nullable(z.string()),
});
const ChunkRow = z.object({
  list: z.enum([...listNames, "book"]),
  chunk: z.int(),
  records: z.array(z.unknown()),
});
const BookFields = z.looseObject({});
const ActRow = z.object({
  id: z.string(),
  device: z.string(),
  counter: z.int(),
  at: z.string(),
  label: z.string(),
  kind: z.enum(["do", "undo", "redo"]),
  of: z.optional(z.string()),
  changes: z.array(z.unknown()),
  inverse: z.array(z.unknown()),
});
const PictureRow = z.object({ sha256: z.string(), bytes: z.instanceof(Uint8Array<ArrayBuffer>) });
const SnapshotRow = z.object({
  id: z.int(),
  at: z.string(),
  label: z.string(),
  records: z.int(),
  book: z.looseObject({}),
});

export type State = z.infer<typeof State>;

/** The rows of a book by list, as this tab last saw them. */
export type Layout = ReadonlyMap<ListName | "book", readonly Chunk[]>;

export const readStamp = (row: unknown) => Stamp.parse(row);
export const readState = (row: unknown) => State.parse(row);

// Only this code writes acts and books, each checked before it was written; the stamp keeps other code out.
export const readAct = (row: unknown): Act => ActRow.parse(row) as Act;
export const readSnapshot = (row: unknown): Snapshot & { book: Workbook } =>
  SnapshotRow.parse(row) as Snapshot & { book: Workbook };

export const readPicture = (row: unknown): Picture => PictureRow.parse(row);

/** Rows, in the order of their keys, as chunks by list. */
export function layoutOf(rows: readonly unknown[]): Layout {
  const layout = new Map<ListName | "book", Chunk[]>();
  for (const row of rows) {
    const { list, chunk, records } = ChunkRow.parse(row);
    const chunks = layout.get(list) ?? [];
    chunks.push({ chunk, records });
    layout.set(list, chunks);
  }
  return layout;
}

const recordsOf = (chunks: readonly Chunk[]): readonly unknown[] => chunks.flatMap(({ records }) => records);

/** What is in no list; a list that was given stands in it empty, so that its place and its null survive. */
const fieldsOf = (book: Workbook): object =>
  Object.fromEntries(
    Object.entries(book).map(([name, value]) => {
      const isRecords = listNames.some((list) => list === name) && Array.isArray(value);
      return [name, isRecords ? [] : value];
    }),
  );

/** The book that these rows hold; an empty one where there are none. */
export function bookOf(layout: Layout): Workbook {
  const [fields] = recordsOf(layout.get("book") ?? []);
  if (fields === undefined) return emptyWorkbook();
  const lists = listNames
    .filter((list) => layout.has(list))
    .map((list) => [list, recordsOf(layout.get(list) ?? [])] as const);
  return { ...BookFields.parse(fields), ...Object.fromEntries(lists) } as Workbook; // as it was checked when written
}

/** One list's rows after a change. */
export type ListRows = Relaid & Readonly<{ list: ListName | "book" }>;

function relayBook(layout: Layout, before: Workbook, after: Workbook): readonly ListRows[] {
  const fields = fieldsOf(after);
  const old = layout.get("book") ?? [];
  if (old.length > 0 && JSON.stringify(fieldsOf(before)) === JSON.stringify(fields)) return [];
  return [{ list: "book", ...relay(old, [fields], 1) }];
}

/** The rows to write and delete so that they hold `after` instead of `before`. */
export const relayAll = (layout: Layout, before: Workbook, after: Workbook): readonly ListRows[] => [
  ...relayBook(layout, before, after),
  ...listNames
    .filter((list) => before[list] !== after[list])
    .map((list) => ({ list, ...relay(layout.get(list) ?? [], after[list] ?? [], chunkSize(list)) })),
];

export const afterRows = (layout: Layout, rows: readonly ListRows[]): Layout =>
  new Map([...layout, ...rows.map(({ list, chunks }) => [list, chunks] as const)]);
