import { forceCloseDatabase, IDBKeyRange } from "fake-indexeddb";
import { expect, it, vi } from "vitest";
import { dexieRepository } from "../../../src/store/dexie/repository.ts";
import { bookOf, draft, item, put, value } from "./books.ts";
import { newBook, newStorage, repositoryIn } from "./tools.ts";

type Rows = Readonly<Record<string, readonly unknown[]>>;

const done = <T>(request: IDBRequest<T>) =>
  new Promise<T>((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** Another program on the same database, such as a newer version of this one: plain IndexedDB, no Dexie. */
async function raw<T>(
  { indexedDB }: ReturnType<typeof newStorage>,
  work: (transaction: IDBTransaction) => Promise<T>,
): Promise<T> {
  const db = await done(indexedDB.open("book"));
  const result = await work(db.transaction([...db.objectStoreNames], "readwrite"));
  db.close();
  return result;
}

const allRows = (storage: ReturnType<typeof newStorage>): Promise<Rows> =>
  raw(storage, async (transaction) => {
    const names = [...transaction.objectStoreNames];
    const rows = await Promise.all(names.map((name) => done(transaction.objectStore(name).getAll())));
    return Object.fromEntries(names.map((name, index) => [name, rows[index] ?? []]));
  });

const write = (storage: ReturnType<typeof newStorage>, store: string, row: unknown) =>
  raw(storage, (transaction) => done(transaction.objectStore(store).put(row)));

const newerStamp = { key: "stamp", schema: 9, minimumWriter: 4 };

async function used() {
  const storage = newStorage();
  const book = newBook();
  await book.openBook(repositoryIn(storage));
  await book.perform({ label: "Add", changes: [put("a")] });
  return { storage, book };
}

it("an old tab writes nothing once a newer version has been at the database, and only reads from then on", async () => {
  const { storage, book } = await used();
  await write(storage, "meta", newerStamp);
  const before = await allRows(storage);
  const refused = await book.perform({ label: "Add", changes: [put("b")] });
  expect(refused).toMatchObject({ ok: false, fault: { kind: "newer" } });
  expect(book.useBook.getState()).toMatchObject({
    status: "read-only",
    fault: { problem: "A newer version of the app has been used here, so this tab only reads." },
    book: { stash: [item("a"), item("b")] }, // what was typed can still be saved as a copy
  });
  for (const write of [book.undo(), book.redo(), book.retry(), book.replaceBook(bookOf(), "Empty")]) {
    expect(await write).toMatchObject({ ok: false, fault: { kind: "newer" } });
  }
  expect(await allRows(storage)).toEqual(before);
});

it("old code that opens a database of a newer version shows it, and only reads", async () => {
  const { storage } = await used();
  await write(storage, "meta", newerStamp);
  const before = await allRows(storage);
  const old = newBook();
  await old.openBook(repositoryIn(storage));
  expect(old.useBook.getState()).toMatchObject({ status: "read-only", book: { stash: [item("a")] } });
  expect(await old.perform({ label: "Add", changes: [put("b")] })).toMatchObject({
    fault: { kind: "newer" },
  });
  expect(await allRows(storage)).toEqual(before);
});

it("a newer schema that old code may still write to is written to", async () => {
  const { storage, book } = await used();
  await write(storage, "meta", { key: "stamp", schema: 9, minimumWriter: 3 });
  expect(await book.perform({ label: "Add", changes: [put("b")] })).toMatchObject({ ok: true });
});

it("makes way at once for another tab that upgrades the database", async () => {
  const { storage, book } = await used();
  const upgrade = storage.indexedDB.open("book", 90);
  (await done(upgrade)).close();
  expect(book.useBook.getState()).toMatchObject({
    status: "read-only",
    fault: { kind: "newer" },
    saving: { fault: { kind: "newer" } },
  });
});

it("says when the browser closes the database, and goes on when it can", async () => {
  const storage = newStorage();
  const opened: IDBDatabase[] = [];
  const watched = {
    ...storage,
    indexedDB: new Proxy(storage.indexedDB, {
      get: (target, name) =>
        name === "open"
          ? (...given: [string, number?]) => {
              const request = target.open(...given);
              request.addEventListener("success", () => opened.push(request.result));
              return request;
            }
          : Reflect.get(target, name),
    }),
  };
  const book = newBook();
  await book.openBook(repositoryIn(watched));
  const [db] = opened;
  if (db) forceCloseDatabase(db as never); // typed as the class, and takes an instance
  await vi.waitFor(() => expect(book.useBook.getState().saving.state).toBe("failed"));
  expect(book.useBook.getState().saving).toMatchObject({ state: "failed", fault: { kind: "closed" } });
  expect(await book.perform({ label: "Add", changes: [put("a")] })).toMatchObject({ ok: true });
  expect(book.useBook.getState().saving).toMatchObject({ state: "saved", fault: null });
});

it.each([
  { name: "a row of records", store: "chunks", row: { list: "stash", chunk: 0, records: "gone" } },
  { name: "a list nobody knows", store: "chunks", row: { list: "pens", chunk: 0, records: [] } },
  { name: "the stamp", store: "meta", row: { key: "stamp" } },
  { name: "the state", store: "meta", row: { key: "state", device: 3 } },
])(
  "says that what is kept cannot be read when $name is damaged, and leaves it as it is",
  async ({ store, row }) => {
    const { storage } = await used();
    await write(storage, store, row);
    const before = await allRows(storage);
    const book = newBook();
    await book.openBook(repositoryIn(storage));
    expect(book.useBook.getState()).toMatchObject({ status: "failed", fault: { kind: "damaged" } });
    expect(await book.perform({ label: "Add", changes: [put("b")] })).toMatchObject({
      fault: { kind: "damaged" },
    });
    expect(await allRows(storage)).toEqual(before);
  },
);

it("an act that finds the rows damaged keeps nothing and waits", async () => {
  const { storage, book } = await used();
  await write(storage, "meta", { key: "state", device: "dev", counter: "?", revision: 1, savedAt: null });
  const refused = await book.perform({ label: "Add", changes: [put("b")] });
  expect(refused).toMatchObject({ ok: false, fault: { kind: "damaged" } });
  expect(book.useBook.getState()).toMatchObject({ pending: 1, saving: { state: "failed" } });
});

it("a damaged journal leaves the book usable, without undo", async () => {
  const { storage } = await used();
  await write(storage, "journal", { seq: 1, id: "dev:1" });
  const book = newBook();
  await book.openBook(repositoryIn(storage));
  expect(book.useBook.getState()).toMatchObject({
    status: "ready",
    canUndo: false,
    fault: { kind: "damaged" },
  });
  expect(await book.perform({ label: "Add", changes: [put("b")] })).toMatchObject({ ok: true });
});

it("undo says so when the entry it needs is damaged or gone", async () => {
  const { storage, book } = await used();
  await write(storage, "journal", { seq: 1, id: "dev:1" });
  expect(await book.undo()).toMatchObject({ ok: false, fault: { kind: "damaged" } });
  await raw(storage, (transaction) => done(transaction.objectStore("journal").clear()));
  expect(await book.undo()).toMatchObject({ ok: false, fault: { problem: "There is nothing to undo." } });
});

it("keeps one small row for an edit among thousands, and a kit to a row", async () => {
  const storage = newStorage();
  const repository = repositoryIn(storage);
  const stash = Array.from({ length: 1_000 }, (_, index) => item(`st-${index}`));
  const kits = ["k1", "k2"].map((id) => ({ id, maker: "m", period: "2026-04" }));
  const changes = [
    ...stash.map(({ id }) => put(id)),
    ...kits.map((record) => ({ op: "put" as const, list: "kits" as const, id: record.id, record })),
  ];
  value(await repository.commit(draft(changes)));
  const { chunks = [] } = await allRows(storage);
  const rowsOf = (list: string) => chunks.filter((row) => (row as { list: string }).list === list);
  expect(rowsOf("stash")).toHaveLength(4);
  expect(rowsOf("kits")).toHaveLength(2);
});

it("a browser without IndexedDB is told as one that keeps nothing", async () => {
  const storage = { indexedDB: undefined as unknown as IDBFactory, IDBKeyRange };
  const repository = dexieRepository({ name: "none", newDevice: () => "dev", storage });
  expect(await repository.load()).toMatchObject({ ok: false, fault: { kind: "unavailable" } });
});
