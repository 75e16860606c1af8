import type { Transaction } from "dexie";
import { recordsIn } from "../count.ts";
import { snapshotsKept } from "../repository.ts";
import { storeWords } from "../words/index.ts";
import {
  bookOf,
  largeKey,
  layoutOf,
  readAct,
  readBook,
  readSnapshot,
  readState,
  relayAll,
  rowsOfAct,
} from "./rows.ts";

/** What `work` gives, or null where a row is damaged: it stays as it is, and reading it says so later. */
function unlessDamaged<T>(work: () => T): T | null {
  try {
    return work();
  } catch {
    return null;
  }
}

/** The book's rows laid out anew, and the book as it is kept as a snapshot. */
async function relayBook(transaction: Transaction): Promise<void> {
  const chunks = transaction.table("chunks");
  const rows: readonly unknown[] = await chunks.toArray();
  const book = unlessDamaged(() => bookOf(layoutOf(rows)));
  const { savedAt } = readState(await transaction.table("meta").get("state"));
  if (book === null || savedAt === null) return;
  await transaction
    .table("snapshots")
    .add({ at: savedAt, label: storeWords.updateApp, records: recordsIn(book), book });
  await chunks.clear();
  for (const { list, written } of relayAll(new Map(), bookOf(new Map()), book)) {
    await chunks.bulkAdd(written.map((chunk) => ({ list, ...chunk })));
  }
}

/** What large acts changed, moved into rows of its own. */
async function partActs(transaction: Transaction): Promise<void> {
  const [journal, large] = [transaction.table("journal"), transaction.table("large")];
  for (const seq of await journal.toCollection().primaryKeys()) {
    const old: unknown = await journal.get(seq);
    const act = unlessDamaged(() => rowsOfAct(readAct(old, null)));
    if (!act?.apart) continue;
    await journal.put({ ...act.row, seq });
    await large.add(act.apart);
  }
}

/** The books of the newest snapshots, moved likewise; older ones go. */
async function partSnapshots(transaction: Transaction): Promise<void> {
  const [snapshots, large] = [transaction.table("snapshots"), transaction.table("large")];
  const keys = await snapshots.toCollection().primaryKeys();
  await snapshots.bulkDelete(keys.slice(0, -snapshotsKept));
  for (const id of keys.slice(-snapshotsKept)) {
    const old: unknown = await snapshots.get(id);
    const parted = unlessDamaged(() => ({ ...readSnapshot(old), text: JSON.stringify(bookIn(old)) }));
    if (!parted) continue;
    const { text, ...row } = parted;
    await snapshots.put(row);
    await large.add({ key: largeKey("snapshot", id), text });
  }
}

const bookIn = (row: unknown) => readBook(typeof row === "object" && row && "book" in row ? row.book : null);

/**
 * From one row for all that an act changed to rows apart for large ones, and from rows of 100 things to rows of 300. It
 * runs in the browser's own upgrade transaction, so all of it happens or nothing. A snapshot of what was is kept.
 */
export async function toVersion3(transaction: Transaction, stamp: object): Promise<void> {
  await relayBook(transaction);
  await partActs(transaction);
  await partSnapshots(transaction);
  await transaction.table("meta").put(stamp);
}
