import type { Workbook } from "../../engine/workbook/index.ts";
import { recordsIn } from "../count.ts";
import { failed, faultOf, type Stored, type StoreFault, stored, storeFault } from "../faults.ts";
import { prepare } from "../prepare.ts";
import { type BookRepository, type Committed, type Draft, snapshotsKept } from "../repository.ts";
import { type Database, type DatabaseOptions, database, schemaVersion } from "./database.ts";
import {
  afterRows,
  bookOf,
  type Layout,
  layoutOf,
  readAct,
  readPicture,
  readSnapshot,
  readStamp,
  readState,
  relayAll,
  type State,
} from "./rows.ts";
import { sweep } from "./sweep.ts";

/** What this tab last saw of the book, with the rows it lay in. */
type Mirror = Readonly<{ book: Workbook; layout: Layout; revision: number }>;

async function readMirror(db: Database, revision: number): Promise<Mirror> {
  const layout = layoutOf(await db.chunks.toArray());
  return { book: bookOf(layout), layout, revision };
}

/** The stamp and the state, and why this code may not write, or null. */
async function readMeta(db: Database): Promise<Readonly<{ state: State; readOnly: StoreFault | null }>> {
  const [stamp, state] = await db.meta.bulkGet(["stamp", "state"]);
  const newer = readStamp(stamp).minimumWriter > schemaVersion;
  return { state: readState(state), readOnly: newer ? storeFault("newer") : null };
}

async function keepSnapshot(db: Database, book: Workbook, { at, label }: Draft): Promise<void> {
  await db.snapshots.add({ at, label, records: recordsIn(book), book });
  const keys = await db.snapshots.toCollection().primaryKeys();
  await db.snapshots.bulkDelete(keys.slice(0, -snapshotsKept));
}

/** Writes an act in the transaction it is called in. Nothing is written before everything is known to fit. */
async function write(db: Database, mirror: Mirror, draft: Draft) {
  const { state, readOnly } = await readMeta(db);
  if (readOnly) return failed(readOnly);
  const rebased = state.revision !== mirror.revision;
  const base = rebased ? await readMirror(db, state.revision) : mirror;
  const prepared = prepare(base.book, draft, state);
  if (!prepared.ok) return prepared;
  const { book, act } = prepared.value;
  const rows = relayAll(base.layout, base.book, book);
  if (draft.snapshot) await keepSnapshot(db, base.book, draft);
  for (const { list, written, dropped } of rows) {
    await db.chunks.bulkPut(written.map((chunk) => ({ list, ...chunk })));
    await db.chunks.bulkDelete(dropped.map((chunk) => [list, chunk] as [string, number]));
  }
  if (draft.pictures?.length) await db.pictures.bulkPut(draft.pictures);
  await db.journal.add(act);
  const revision = state.revision + 1;
  await db.meta.put({ ...state, key: "state", counter: act.counter, revision, savedAt: act.at });
  return stored({ act, rebased, mirror: { book, revision, layout: afterRows(base.layout, rows) } });
}

/** Storage errors as faults: none is swallowed, none escapes as an exception. */
async function guarded<T>(work: () => Promise<Stored<T>>): Promise<Stored<T>> {
  try {
    return await work();
  } catch (error) {
    return failed(
      error instanceof Error && error.name === "$ZodError" ? storeFault("damaged") : faultOf(error),
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
  const tables = [db.chunks, db.journal, db.meta, db.pictures, db.snapshots];
  let mirror: Mirror | null = null;

  const opened = async () => {
    if (!db.isOpen()) await db.open();
  };

  const load: BookRepository["load"] = () =>
    guarded(async () => {
      await opened();
      const { meta, fresh } = await db.transaction("r", tables, async () => {
        const meta = await readMeta(db);
        return { meta, fresh: await readMirror(db, meta.state.revision) };
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
        (await db.journal.reverse().offset(skip).limit(limit).toArray()).map((row) => readAct(row)),
      ),
    act: (id) =>
      reading(async () => {
        const row = await db.journal.get({ id });
        return row === undefined ? null : readAct(row);
      }),
    snapshots: () =>
      reading(async () =>
        (await db.snapshots.reverse().toArray()).map((row) => {
          const { id, at, label, records } = readSnapshot(row);
          return { id, at, label, records };
        }),
      ),
    snapshot: (id) =>
      reading(async () => {
        const row = await db.snapshots.get(id);
        return row === undefined ? null : readSnapshot(row).book;
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
          return stored(await sweep(db, (await readMirror(db, state.revision)).book, need));
        });
      }),
    whenLost,
    close: () => db.close(),
  };
}
