import type { Page } from "@playwright/test";
import { emptyWorkbook, type Workbook } from "../../../src/engine/workbook/index.ts";
import { apartOf, bookOf, layoutOf, readAct, readLarge, readState } from "../../../src/store/dexie/rows.ts";
import { type Act, applyChanges } from "../../../src/store/journal/index.ts";

/** Every row of the app's database, by table. */
export type Rows = Readonly<
  Record<"chunks" | "journal" | "meta" | "snapshots" | "large", readonly unknown[]>
>;

/** Reads every row with raw IndexedDB, past the app and its libraries. */
export const rowsIn = (page: Page): Promise<Rows> =>
  page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((give, fail) => {
        request.onsuccess = () => give(request.result);
        request.onerror = () => fail(request.error);
      });
    const db = await done(indexedDB.open("understudy"));
    const reading = db.transaction([...db.objectStoreNames]);
    const all = async (table: string) => [table, await done(reading.objectStore(table).getAll())] as const;
    const found = await Promise.all([...db.objectStoreNames].map(all));
    db.close();
    return { chunks: [], journal: [], meta: [], snapshots: [], large: [], ...Object.fromEntries(found) };
  });

/** The photos that are kept, in the order of their sums. */
export async function picturesIn(page: Page) {
  const rows = await page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((give, fail) => {
        request.onsuccess = () => give(request.result);
        request.onerror = () => fail(request.error);
      });
    const db = await done(indexedDB.open("understudy"));
    const all: { sha256: string; bytes: Uint8Array }[] = await done(
      db.transaction("pictures").objectStore("pictures").getAll(),
    );
    db.close();
    return all.map(({ sha256, bytes }) => ({ sha256, bytes: [...bytes] }));
  });
  return rows.map(({ sha256, bytes }) => ({ sha256, bytes: Uint8Array.from(bytes) }));
}

/** The journal, oldest first. */
export function actsIn({ journal, large }: Rows): readonly Act[] {
  const apart = new Map(large.map((row) => [Reflect.get(Object(row), "key"), row]));
  return journal.map((row) => {
    const key = apartOf(row);
    return readAct(row, key === null ? null : readLarge(apart.get(key)));
  });
}

/** The book that the rows hold. */
export const bookIn = ({ chunks }: Rows): Workbook => bookOf(layoutOf(chunks));

/** The book that the journal tells of, act by act from nothing. */
export function toldBook(rows: Rows): Workbook {
  return actsIn(rows).reduce((book, { label, changes }) => {
    const after = applyChanges(book, changes);
    if (!after.ok) throw new Error(`the journal's act "${label}" does not fit: ${after.fault.problem}`);
    return after.value.book;
  }, emptyWorkbook());
}

/** The counters of the state row. */
export function stateIn({ meta }: Rows): Readonly<{ counter: number; revision: number }> {
  return readState(meta.find((row) => typeof row === "object" && row && "device" in row));
}
