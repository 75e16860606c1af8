import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { emptyWorkbook, type Workbook } from "../../../src/engine/workbook/index.ts";
import { type Act, applyChanges } from "../../../src/store/journal/index.ts";
import { stashOf, value } from "./books.ts";
import { failWrites } from "./broken.ts";
import { newBook, newStorage, repositoryIn } from "./tools.ts";

type Row = Readonly<Record<string, unknown>>;
type Rows = Readonly<Record<string, readonly Row[]>>;
type Left = Readonly<{ version: number; rows: Rows; book: Workbook }>;
type Storage = ReturnType<typeof newStorage>;

// Quality bar D3. Source: fixtures/databases, written by the code of that version.
const leftBy = (version: number): Left =>
  JSON.parse(readFileSync(`fixtures/databases/version-${version}.json`, "utf8"), (key, held) =>
    key === "bytes" ? Uint8Array.from(held) : held,
  );

const done = <T>(request: IDBRequest<T>) =>
  new Promise<T>((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

function makeTables(db: IDBDatabase, version: number): void {
  db.createObjectStore("chunks", { keyPath: ["list", "chunk"] });
  db.createObjectStore("journal", { keyPath: "seq", autoIncrement: true }).createIndex("id", "id", {
    unique: true,
  });
  db.createObjectStore("meta", { keyPath: "key" });
  db.createObjectStore("snapshots", { keyPath: "id", autoIncrement: true });
  if (version >= 20) db.createObjectStore("pictures", { keyPath: "sha256" });
}

/** A browser's storage with a database as that version left it. */
async function leftBehind({ version, rows }: Omit<Left, "book">): Promise<Storage> {
  const storage = newStorage();
  const opening = storage.indexedDB.open("book", version);
  opening.onupgradeneeded = () => makeTables(opening.result, version);
  const db = await done(opening);
  const writing = db.transaction([...db.objectStoreNames], "readwrite");
  for (const [table, held] of Object.entries(rows)) {
    for (const row of held) writing.objectStore(table).put(row);
  }
  await new Promise((resolve) => {
    writing.oncomplete = resolve;
  });
  db.close();
  return storage;
}

/** Every row there is, and the database's version. */
async function found({ indexedDB }: Storage): Promise<Readonly<{ version: number; rows: Rows }>> {
  const db = await done(indexedDB.open("book"));
  const names = [...db.objectStoreNames];
  const reading = db.transaction(names);
  const held = await Promise.all(names.map((name) => done<Row[]>(reading.objectStore(name).getAll())));
  db.close();
  return {
    version: db.version,
    rows: Object.fromEntries(names.map((name, index) => [name, held[index] ?? []])),
  };
}

/** The book that these acts tell of, one after another from nothing. */
const told = (acts: readonly Act[]): Workbook =>
  acts.reduce((book, { changes }) => value(applyChanges(book, changes)).book, emptyWorkbook());

describe.each([1, 2])("a database of version %i", (number) => {
  const left = leftBy(number);

  it("opens with all it held, in rows of this version, with a snapshot of before", async () => {
    const storage = await leftBehind(left);
    const book = newBook();
    await book.openBook(repositoryIn(storage));
    expect(book.useBook.getState()).toMatchObject({ status: "ready", fault: null });
    expect(book.useBook.getState().book).toStrictEqual(left.book);
    const snapshots = value(await book.snapshots());
    expect(snapshots.map(({ label, records }) => [label, records])).toEqual([
      ["Update the app", 463],
      ["Bring in 420 items", 42],
      ["Load", 0],
    ]);
    const { version, rows } = await found(storage);
    expect(version).toBe(30);
    expect(rows.meta).toContainEqual({ key: "stamp", schema: 3, minimumWriter: 3 });
    expect(rows.snapshots?.map((row) => Object.keys(row).toSorted())).toEqual(
      snapshots.map(() => ["at", "id", "label", "records"]),
    );
    const large = rows.large?.map(({ key }) => key);
    expect(large).toEqual(["act dev:2", "snapshot 1", "snapshot 2", "snapshot 3"]);
    expect(rows.journal).toHaveLength(6);
    expect(rows.pictures).toEqual(left.rows.pictures ?? []);
    expect(rows.journal?.filter(({ large }) => large).map(({ id, changes }) => [id, changes])).toEqual([
      ["dev:2", []],
    ]);
  });

  it("tells every act as it did, undoes each of them, and goes back to its snapshots", async () => {
    const storage = await leftBehind(left);
    const repository = repositoryIn(storage);
    await repository.load();
    const heads = value(await repository.acts(0, 10)).toReversed();
    const acts = await Promise.all(heads.map(async ({ id }) => value(await repository.act(id))));
    const before = left.rows.journal?.map(({ seq: _, ...act }) => act);
    expect(acts).toStrictEqual(before);
    expect(told(acts.filter((act) => act !== null))).toStrictEqual(left.book);
    const book = newBook();
    await book.openBook(repository);
    for (let steps = 0; steps < 4; steps += 1) expect(await book.undo()).toMatchObject({ ok: true });
    expect(book.useBook.getState().book.stash ?? []).toEqual([]);
    for (let steps = 0; steps < 4; steps += 1) expect(await book.redo()).toMatchObject({ ok: true });
    expect(book.useBook.getState().book).toStrictEqual(left.book);
    const [upgraded, listed] = value(await book.snapshots());
    if (listed) await book.restoreSnapshot(listed);
    expect(book.useBook.getState().book.stash).toHaveLength(40);
    if (upgraded) await book.restoreSnapshot(upgraded);
    expect(book.useBook.getState().book).toEqual(left.book);
  });

  it("is upgraded whole or not at all, whichever of its writes fails, and then goes on", async () => {
    const counted = failWrites(
      () => false,
      () => {},
    );
    await repositoryIn(await leftBehind(left)).load();
    counted.mend();
    const own = left.rows;
    const before = Object.values(own).flat().length; // the fixture's own writes are counted, too
    expect(counted.calls.count - before).toBeGreaterThan(8);
    for (let call = before + 1; call <= counted.calls.count; call += 1) {
      const broken = failWrites(
        (count) => count === call,
        () => {
          throw new DOMException("as a browser would", "QuotaExceededError");
        },
      );
      const storage = await leftBehind(left);
      expect(await repositoryIn(storage).load()).toMatchObject({ ok: false, fault: { kind: "quota" } });
      broken.mend();
      expect(await found(storage)).toEqual({ version: left.version, rows: own });
      expect(value(await repositoryIn(storage).load()).book).toStrictEqual(left.book);
    }
  });

  it("keeps ten thousand things, and no row of the old kind beside the new", async () => {
    const stash = stashOf(10_000);
    const chunks = Array.from({ length: 100 }, (_, chunk) => ({
      list: "stash",
      chunk,
      records: stash.slice(100 * chunk, 100 * chunk + 100),
    }));
    const others = left.rows.chunks?.filter(({ list }) => list !== "stash") ?? [];
    const storage = await leftBehind({ ...left, rows: { ...left.rows, chunks: [...others, ...chunks] } });
    expect(value(await repositoryIn(storage).load()).book.stash).toStrictEqual(stash);
    const { rows } = await found(storage);
    const sizes = rows.chunks
      ?.filter(({ list }) => list === "stash")
      .map(({ records }) => [records].flat().length);
    expect(sizes).toEqual(Array.from({ length: 40 }, () => 250));
  });

  it("that never held anything has no snapshot of it", async () => {
    const state = { key: "state", device: "dev", counter: 0, revision: 0, savedAt: null };
    const meta = [{ key: "stamp", schema: number, minimumWriter: number }, state];
    const storage = await leftBehind({ ...left, rows: { meta } });
    const repository = repositoryIn(storage);
    expect(value(await repository.load())).toMatchObject({ revision: 0, book: emptyWorkbook() });
    expect(value(await repository.snapshots())).toEqual([]);
  });

  it.each([
    { what: "a row of the book", table: "chunks", row: { list: "stash", chunk: 0, records: "gone" } },
    { what: "an act", table: "journal", row: { seq: 2, id: "dev:2" } },
    { what: "a snapshot", table: "snapshots", row: { id: 1, at: 3 } },
  ])("keeps $what that is damaged as it is", async ({ table, row }) => {
    const key = (held: Row) => JSON.stringify([held.list, held.chunk, held.seq, held.id]);
    const rows = left.rows[table]?.map((held) => (key(held) === key(row) ? row : held)) ?? [];
    const wrong = table === "journal" ? rows.map((held) => (held.seq === row.seq ? row : held)) : rows;
    const storage = await leftBehind({ ...left, rows: { ...left.rows, [table]: wrong } });
    const opened = await repositoryIn(storage).load();
    expect(opened.ok).toBe(table !== "chunks");
    if (!opened.ok) expect(opened.fault.kind).toBe("damaged");
    expect((await found(storage)).rows[table]).toContainEqual(row);
  });
});
