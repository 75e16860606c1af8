import * as z from "zod/mini";
import { emptyWorkbook, type Workbook } from "../../engine/workbook/index.ts";
import { type Act, type ActHead, type ListName, listNames, type Picture } from "../journal/index.ts";
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
  // Their number and kind alone: each record was checked when it was written, and ten thousand are read at a start.
  records: z.custom<readonly unknown[]>((value) => Array.isArray(value)),
});
const BookFields = z.looseObject({});
const HeadRow = z.object({
  id: z.string(),
  device: z.string(),
  counter: z.int(),
  at: z.string(),
  label: z.string(),
  kind: z.enum(["do", "undo", "redo"]),
  of: z.optional(z.string()),
});
const Parts = z.object({ changes: z.array(z.unknown()), inverse: z.array(z.unknown()) });
/** `large`: what it changed stands apart, and here are none. */
const ActRow = z.object({ ...Parts.shape, large: z.optional(z.boolean()) });
const PictureRow = z.object({ sha256: z.string(), bytes: z.instanceof(Uint8Array<ArrayBuffer>) });
const SnapshotRow = z.object({ id: z.int(), at: z.string(), label: z.string(), records: z.int() });

export type State = z.infer<typeof State>;

/**
 * What only some acts ask for, and no start of the app, as JSON in a row of its own: all that a large act changed, and the
 * book of a snapshot. Text is kept and fetched several times faster than as many objects.
 */
export type LargeRow = Readonly<{ key: string; text: string }>;

const LargeRow = z.object({ key: z.string(), text: z.string() });

/** Up to how many characters what an act changed stays in its row. */
const mostInRow = 16_384;

export const largeKey = (of: "act" | "snapshot", id: string | number): string => `${of} ${id}`;
/** @throws SyntaxError where the text is damaged */
export const readLarge = (row: unknown): unknown => JSON.parse(LargeRow.parse(row).text);

/** The rows of a book by list, as this tab last saw them. */
export type Layout = ReadonlyMap<ListName | "book", readonly Chunk[]>;

export const readStamp = (row: unknown) => Stamp.parse(row);
export const readState = (row: unknown) => State.parse(row);

export const readSnapshot = (row: unknown): Snapshot => SnapshotRow.parse(row);
export const readHead = (row: unknown): ActHead => HeadRow.parse(row) as ActHead; // `of` is there or not

/** The key of what stands apart of an act, or null where all of it is in its row. */
export const apartOf = (row: unknown): string | null =>
  ActRow.parse(row).large === true ? largeKey("act", readHead(row).id) : null;

/**
 * An act with all that it changed.
 * @param apart what stands apart of it
 */
export function readAct(row: unknown, apart: unknown): Act {
  const { changes, inverse } = Parts.parse(apartOf(row) === null ? row : apart);
  // Only this code writes acts, each checked before it was written; the stamp keeps other code out.
  return { ...readHead(row), changes, inverse } as Act;
}

export const readBook = (apart: unknown): Workbook => BookFields.parse(apart) as Workbook; // as it was when written

/** An act as rows: with all that it changed, or with that apart where it is much. */
export function rowsOfAct(act: Act): Readonly<{ row: object; apart: LargeRow | null }> {
  const { changes, inverse, ...head } = act;
  const text = JSON.stringify({ changes, inverse });
  if (text.length <= mostInRow) return { row: act, apart: null };
  const row = { ...head, changes: [], inverse: [], large: true };
  return { row, apart: { key: largeKey("act", act.id), text } };
}

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
