import { expect, it } from "vitest";
import { bookOf, draft, item, put, value } from "./books.ts";
import { newStorage, repositoryIn } from "./tools.ts";

// Quality bar D3 and D4: what each released version left behind is opened, and nothing of it is lost.

const opened = (request: IDBOpenDBRequest) =>
  new Promise<IDBDatabase>((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** A database as version 1 left it, written without Dexie: its tables, stamp, state, one item and one act. */
async function leftByVersion1() {
  const storage = newStorage();
  const opening = storage.indexedDB.open("book", 10); // Dexie's version 1
  opening.onupgradeneeded = () => {
    const db = opening.result;
    db.createObjectStore("chunks", { keyPath: ["list", "chunk"] });
    db.createObjectStore("journal", { keyPath: "seq", autoIncrement: true }).createIndex("id", "id", {
      unique: true,
    });
    db.createObjectStore("meta", { keyPath: "key" });
    db.createObjectStore("snapshots", { keyPath: "id", autoIncrement: true });
  };
  const db = await opened(opening);
  const writing = db.transaction(["chunks", "journal", "meta"], "readwrite");
  const rows = {
    meta: [
      { key: "stamp", schema: 1, minimumWriter: 1 },
      { key: "state", device: "dev", counter: 1, revision: 1, savedAt: "2026-05-02T10:00:00.000Z" },
    ],
    chunks: [
      { list: "book", chunk: 0, records: [{ ...bookOf(), stash: [] }] },
      { list: "stash", chunk: 0, records: [item("a")] },
    ],
    journal: [
      {
        ...{
          id: "dev:1",
          device: "dev",
          counter: 1,
          at: "2026-05-02T10:00:00.000Z",
          label: "Add",
          kind: "do",
        },
        ...{ changes: [put("a")], inverse: [{ op: "remove", list: "stash", id: "a", blank: "absent" }] },
      },
    ],
  };
  for (const [store, all] of Object.entries(rows)) for (const row of all) writing.objectStore(store).put(row);
  await new Promise((resolve) => {
    writing.oncomplete = resolve;
  });
  db.close();
  return storage;
}

it("opens what version 1 left, with its acts, and takes photos from then on", async () => {
  const storage = await leftByVersion1();
  const repository = repositoryIn(storage);
  expect(value(await repository.load())).toMatchObject({
    book: { stash: [item("a")] },
    revision: 1,
    readOnly: null,
  });
  expect(value(await repository.acts(0, 10))).toHaveLength(1);
  const picture = { sha256: "a".repeat(64), bytes: new Uint8Array([1]) };
  value(await repository.commit(draft([put("b")], { pictures: [picture] })));
  expect(value(await repositoryIn(storage).picture(picture.sha256))).toEqual(picture);
});

it("stamps what version 1 left, so that the older code, which knows no photos, only reads it", async () => {
  const storage = await leftByVersion1();
  value(await repositoryIn(storage).load());
  const db = await opened(storage.indexedDB.open("book"));
  const asked = db.transaction("meta").objectStore("meta").get("stamp");
  const stamp = await new Promise((resolve) => {
    asked.onsuccess = () => resolve(asked.result);
  });
  expect(stamp).toEqual({ key: "stamp", schema: 3, minimumWriter: 3 });
});
