import { Dexie, type Table } from "dexie";
import type { StashItem } from "../../src/engine/supply/index.ts";
import { createBook } from "../../src/store/create-book.ts";
import { dexieRepository } from "../../src/store/dexie/repository.ts";

const at = "2026-05-02T10:00:00.000Z";

/**
 * The app's own store over a database of that name, open.
 * @param onReady hears when all is in memory; what can be undone is read after that
 */
export async function ourBook(name: string, onReady?: () => void) {
  const book = createBook({
    now: () => at,
    tabs: { tell: () => {}, listen: () => {}, close: () => {} },
    marker: { read: () => null, write: () => {} },
    newDevice: () => "bench",
  });
  const stop = book.useBook.subscribe(({ book: read }) => {
    if ((read.stash?.length ?? 0) === 0) return;
    stop();
    onReady?.();
  });
  await book.openBook(dexieRepository({ name, newDevice: () => "bench" }));
  return book;
}

export type OurBook = Awaited<ReturnType<typeof ourBook>>;

type Peer = Dexie & Readonly<{ items: Table<StashItem, string> }>;

/** The peer: a Dexie table of one record an item, with two indexes, and commits as strict as ours. */
export async function peerTable(name: string): Promise<Peer> {
  const db = new Dexie(name, { chromeTransactionDurability: "strict" }) as Peer;
  db.version(1).stores({ items: "id, supply.name, supply.maker" });
  await db.open();
  return db;
}

export const forget = (...names: readonly string[]): Promise<unknown> =>
  Promise.all(names.map((name) => Dexie.delete(name)));
