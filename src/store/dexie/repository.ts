import type { Workbook } from "../../engine/workbook/index.ts";
import { recordsIn } from "../count.ts";
import { failed, faultOf, type Stored, type StoreFault, stored, storeFault } from "../faults.ts";
import type { Act } from "../journal/index.ts";
import { prepare } from "../prepare.ts";
import { type BookRepository, type Committed, type Draft, snapshotsKept } from "../repository.ts";
import { bookOfSnapshot, wholeAct } from "./apart.ts";
import { type Database, type DatabaseOptions, database, schemaVersion } from "./database.ts";
import {
  afterRows,
  bookOf,
  type Layout,
  largeKey,
  layoutOf,
  readHead,
  readPicture,
  readSnapshot,
  readStamp,
  readState,
  relayAll,
  rowsOfAct,
  type State,
} from "./rows.ts";
import { sweep } from "./sweep.ts";

/** What this tab last saw of the book, with the rows it lay in. */
type Mirror = Readonly<{ book: Workbook; layout: Layout; revision: number }>;

function mirrorOf(rows: readonly unknown[], revision: number): Mirror {
  const layout = layoutOf(rows);
  return { book: bookOf(layout), layout, revision };
}

/** The stamp and the state, and why this code may not write, or null. */
async function readMeta(db: Database): Promise<Readonly<{ state: State; readOnly: StoreFault | null }>> {
  const [stamp, state] = await db.meta.bulkGet(["stamp", "state"]);
  const newer = readStamp(stamp).minimumWriter > schemaVersion;
  return { state: readState(state), readOnly: newer ? storeFault("newer") : null };
}

async function keepSnapshot(db: Database, book: Workbook, { at, label }: Draft): Promise<void> {
  const id = await db.snapshots.add({ at, label, records: recordsIn(book) });
  await db.large.add({ key: largeKey("snapshot", id), text: JSON.stringify(book) });
  const old = (await db.snapshots.toCollection().primaryKeys()).slice(0, -snapshotsKept);
  await db.snapshots.bulkDelete(old);
  await db.large.bulkDelete(old.map((key) => largeKey("snapshot", key)));
}

function keepAct(db: Database, act: Act): readonly PromiseLike<unknown>[] {
  const { row, apart } = rowsOfAct(act);
  return [db.journal.add(row), ...(apart ? [db.large.add(apart)] : [])];
}

/** Waits for writes that were asked for at once; fails as the first of them in their order, since later ones fail after it. */
async function together(writes: readonly PromiseLike<unknown>[]): Promise<void> {
  const failure = (await Promise.allSettled(writes)).find(({ status }) => status === "rejected");
  if (failure?.status === "rejected") throw failure.reason;
}

/** Writes an act in the transaction it is called in. Nothing is written before everything is known to fit. */
async function write(db: Database, mirror: Mirror, draft: Draft) {
  const { state, readOnly } = await readMeta(db);
  if (readOnly) return failed(readOnly);
  const rebased = state.revision !== mirror.revision;
  const base = rebased ? mirrorOf(await db.chunks.toArray(), state.revision) : mirror;
  const prepared = prepare(base.book, draft, state);
  if (!prepared.ok) return prepared;
  const { book, act } = prepared.value;
  const rows = relayAll(base.layout, base.book, book);
  if (draft.snapshot) await keepSnapshot(db, base.book, draft);
  const revision = state.revision + 1;
  await together([
    ...rows.map(({ list, written }) => db.chunks.bulkPut(written.map((chunk) => ({ list, ...chunk })))),
    ...rows.map(({ list, dropped }) => db.chunks.bulkDelete(dropped.map((chunk) => [list, chunk]))),
    ...(draft.pictures?.length ? [db.pictures.bulkPut(draft.pictures)] : []),
    ...keepAct(db, act),
    db.meta.put({ ...state, key: "state", counter: act.counter, revision, savedAt: act.at }),
  ]);
  return stored({ act, rebased, mirror: { book, revision, layout: afterRows(base.layout, rows) } });
}

/** Storage errors as faults: none is swallowed, none escapes as an exception. */
async function guarded<T>(work: () => Promise<Stored<T>>): Promise<Stored<T>> {
  try {
    return await work();
  } catch (error) {
    return failed(
      error instanceof SyntaxError || (error instanceof Error && error.name === "$ZodError")
        ? storeFault("damaged")
        : faultOf(error),
    );
  }
}

/** Hears of a newer version in another tab, which this one makes way for, and of a close by the browser. */
function watch(db: Database): (listener: (fault: StoreFault) => void) => void {
  const listeners = new Set<(fault: StoreFault) => void>();
  const tell = (fault: StoreFault) => {
    for (const listener of listeners) listener(fault);
  };
  db.on("versionchange", () => {
    db.close();
    tell(storeFault("newer"));
    return false; // Dexie's own handler would close once more, and that would be told as the browser's doing
  });
  db.on("close", () => tell(storeFault("closed")));
  return (listener) => listeners.add(listener);
}

/** Keeps the book in IndexedDB. */
export function dexieRepository(options: DatabaseOptions): BookRepository {
  const db = database(options);
  const whenLost = watch(db);
  const tables = [db.chunks, db.journal, db.meta, db.pictures, db.snapshots, db.large];
  let mirror: Mirror | null = null;

  const opened = async () => {
    if (!db.isOpen()) await db.open();
  };

  const load: BookRepository["load"] = () =>
    guarded(async () => {
      await opened();
      const { meta, fresh } = await db.transaction("r", tables, async () => {
        const [meta, rows] = await Promise.all([readMeta(db), db.chunks.toArray()]);
        return { meta, fresh: mirrorOf(rows, meta.state.revision) };
      });
      mirror = fresh;
      const { revision, savedAt } = meta.state;
      return stored({ book: fresh.book, revision, savedAt, readOnly: meta.readOnly });
    });

  const commit: BookRepository["commit"] = (draft) =>
    guarded(async () => {
      await opened();
      const base = mirror ?? { book: bookOf(new Map()), layout: new Map(), revision: -1 };
      const written = await db.transaction("rw", tables, () => write(db, base, draft));
      if (!written.ok) return written;
      mirror = written.value.mirror; // only now: the transaction is complete
      const { book, revision } = mirror;
      const { act, rebased } = written.value;
      return stored<Committed>({ act, book, revision, rebased });
    });

  const reading = <T>(work: () => Promise<T>) =>
    guarded(async () => {
      await opened();
      return stored(await work());
    });

  return {
    lasting: true,
    load,
    commit,
    acts: (skip, limit) =>
      reading(async () =>
        (await db.journal.reverse().offset(skip).limit(limit).toArray()).map((row) => readHead(row)),
      ),
    act: (id) =>
      reading(async () => {
        const row = await db.journal.get({ id });
        return row === undefined ? null : wholeAct(db, row);
      }),
    snapshots: () =>
      reading(async () => (await db.snapshots.reverse().toArray()).map((row) => readSnapshot(row))),
    snapshot: (id) =>
      reading(async () => {
        return bookOfSnapshot(db, id);
      }),
    picture: (sha256) =>
      reading(async () => {
        const row = await db.pictures.get(sha256);
        return row === undefined ? null : readPicture(row);
      }),
    sweep: (need) =>
      guarded(async () => {
        await opened();
        return db.transaction("rw", tables, async () => {
          const { state, readOnly } = await readMeta(db);
          if (readOnly) return failed(readOnly);
          const fresh = async () => mirrorOf(await db.chunks.toArray(), state.revision);
          const book = async () => (mirror?.revision === state.revision ? mirror : await fresh()).book;
          return stored(await sweep(db, book, need));
        });
      }),
    whenLost,
    close: () => db.close(),
  };
}
