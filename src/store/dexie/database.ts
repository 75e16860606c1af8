import { Dexie, type Table } from "dexie";
import { toVersion3 } from "./upgrade.ts";

/** The shape of the database that this code writes. Raised with each `version(n)`. */
export const schemaVersion = 3;

/**
 * The oldest code that may write to this shape. Raised when older code would write rows wrongly: 1 knew no photos, and
 * its copies of everything would be without them; 2 would undo large acts by what is no longer in their row.
 */
const minimumWriter = 3;

const stamp = { key: "stamp", schema: schemaVersion, minimumWriter } as const;

/** Where the data of one browser lives. Rows are typed unknown: an older or newer version wrote them. */
export type Database = Dexie &
  Readonly<{
    chunks: Table<unknown, [string, number]>;
    journal: Table<unknown, number>;
    meta: Table<unknown, string>;
    pictures: Table<unknown, string>;
    snapshots: Table<unknown, number>;
    large: Table<unknown, string>;
  }>;

/** The browser's storage, or a stand-in for it. */
export type Storage = Readonly<{ indexedDB: IDBFactory; IDBKeyRange: typeof globalThis.IDBKeyRange }>;

export type DatabaseOptions = Readonly<{
  name: string;
  /** A name for this device, made when the database is; never changed. */
  newDevice: () => string;
  storage?: Storage | undefined;
}>;

/**
 * Opens lazily. Commits are strict: they are on the disk before they count as done (without it Chromium does
 * not flush).
 */
export function database({ name, newDevice, storage }: DatabaseOptions): Database {
  const db = new Dexie(name, {
    chromeTransactionDurability: "strict",
    autoOpen: false,
    ...storage,
  }) as Database;
  // A published version is never edited, only followed by another.
  db.version(1).stores({ chunks: "[list+chunk]", journal: "++seq, &id", meta: "key", snapshots: "++id" });
  db.version(2)
    .stores({ pictures: "sha256" })
    .upgrade((transaction) => transaction.table("meta").put({ key: "stamp", schema: 2, minimumWriter: 2 }));
  db.version(3)
    .stores({ large: "key" })
    .upgrade((transaction) => toVersion3(transaction, { key: "stamp", schema: 3, minimumWriter: 3 }));
  db.on("populate", (transaction) =>
    transaction
      .table("meta")
      .bulkAdd([stamp, { key: "state", device: newDevice(), counter: 0, revision: 0, savedAt: null }]),
  );
  return db;
}
