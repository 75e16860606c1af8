import type { ListName } from "../journal/index.ts";

/**
 * Records are kept in chunks, not one a row: IndexedDB's price is per row (about 80 µs to write, 11 to read), so
 * ten thousand items open and restore several times faster, an edit still writes one small chunk, and the order
 * of a list is the order of its chunks.
 */
export type Chunk = Readonly<{ chunk: number; records: readonly unknown[] }>;

/** The chunks of a list after a change, what to write and which rows to delete. */
export type Relaid = Readonly<{
  chunks: readonly Chunk[];
  written: readonly Chunk[];
  dropped: readonly number[];
}>;

/**
 * Records to a chunk. Kits and remakes are large and each edited alone. Two hundred and fifty things are about as many bytes as
 * Chromium hands over fastest: rows under 64 KiB, which it keeps in another way, took twice as long to read.
 */
export const chunkSize = (list: ListName): number => (list === "kits" || list === "remakes" ? 1 : 250);

const sameRecords = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((record, index) => record === b[index]);

/** How many chunks from the front still hold the very records they held. */
function unchangedFront(old: readonly Chunk[], records: readonly unknown[]): number {
  let from = 0;
  const changed = old.findIndex(({ records: held }) => {
    const now = records.slice(from, from + held.length);
    from += held.length;
    return !sameRecords(held, now);
  });
  return changed === -1 ? old.length : changed;
}

/** The same from the back, leaving the front alone. */
function unchangedBack(old: readonly Chunk[], records: readonly unknown[]): number {
  const turned = old.map(({ chunk, records: held }) => ({ chunk, records: held.toReversed() })).reverse();
  return unchangedFront(turned, records.toReversed());
}

const countIn = (chunks: readonly Chunk[]): number =>
  chunks.reduce((sum, { records }) => sum + records.length, 0);

/** Cuts `records` into pieces of these lengths. */
function cut(records: readonly unknown[], lengths: readonly number[]): readonly (readonly unknown[])[] {
  let from = 0;
  return lengths.map((length) => {
    from += length;
    return records.slice(from - length, from);
  });
}

/** As many lengths as needed so that none is over `size`, as equal as can be. */
function evenly(count: number, size: number): readonly number[] {
  const pieces = Math.ceil(count / size);
  return Array.from(
    { length: pieces },
    (_, piece) => Math.floor(((piece + 1) * count) / pieces) - Math.floor((piece * count) / pieces),
  );
}

const numbered = (pieces: readonly (readonly unknown[])[], numbers: readonly number[]): readonly Chunk[] =>
  pieces.map((records, index) => ({ chunk: numbers[index] ?? index, records }));

/** The changed stretch in the rows it had, plus new rows where nothing follows; null when it no longer fits. */
function stretch(
  middle: readonly Chunk[],
  records: readonly unknown[],
  size: number,
  fresh: number | null,
): readonly Chunk[] | null {
  const lengths =
    records.length === countIn(middle)
      ? middle.map(({ records: held }) => held.length) // nothing came or went: only edited rows are written
      : evenly(records.length, size);
  const numbers = middle.map(({ chunk }) => chunk);
  const missing = lengths.length - numbers.length;
  if (missing > 0 && fresh === null) return null;
  const more = Array.from({ length: Math.max(0, missing) }, (_, index) => (fresh ?? 0) + index);
  return numbered(cut(records, lengths), [...numbers, ...more]);
}

function compare(old: readonly Chunk[], chunks: readonly Chunk[]): Relaid {
  const before = new Map(old.map(({ chunk, records }) => [chunk, records]));
  const now = new Set(chunks.map(({ chunk }) => chunk));
  const written = chunks.filter(({ chunk, records }) => !sameRecords(records, before.get(chunk) ?? []));
  return { chunks, written, dropped: [...before.keys()].filter((chunk) => !now.has(chunk)) };
}

/** The first chunk of the changed stretch and the one after its last, with a neighbour to grow into. */
function bounds(old: readonly Chunk[], records: readonly unknown[], size: number): readonly [number, number] {
  const front = unchangedFront(old, records);
  if (front === old.length) {
    const last = old.at(-1);
    return last && last.records.length < size ? [front - 1, front] : [front, front];
  }
  const rest = old.slice(front);
  const back = unchangedBack(rest, records.slice(countIn(old.slice(0, front))));
  const end = old.length - back;
  return end > front ? [front, end] : [Math.max(0, front - 1), end + 1];
}

/**
 * Lays `records` out over the rows of a list, touching as few rows as it can.
 * @param size records to a row
 */
export function relay(old: readonly Chunk[], records: readonly unknown[], size: number): Relaid {
  const [from, to] = bounds(old, records, size);
  const [front, back] = [old.slice(0, from), old.slice(to)];
  const middle = records.slice(countIn(front), records.length - countIn(back));
  const fresh = back.length === 0 ? (old.at(-1)?.chunk ?? -1) + 1 : null;
  const laid = stretch(old.slice(from, to), middle, back.length === 0 ? size : size * 2, fresh);
  const chunks = laid
    ? [...front, ...laid, ...back]
    : numbered(cut(records, evenly(records.length, size)), []);
  return compare(old, chunks);
}
