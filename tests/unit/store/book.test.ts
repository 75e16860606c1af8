import { expect, it, vi } from "vitest";
import { storeFault } from "../../../src/store/faults.ts";
import { memoryDisk, memoryRepository } from "../../../src/store/memory.ts";
import { bookOf, item, put, setPlace, value } from "./books.ts";
import { refusing } from "./broken.ts";
import { at, heldMarker, newBook, newStorage, repositoryIn, tabsTogether } from "./tools.ts";

const ids = (book: ReturnType<typeof newBook>) => book.useBook.getState().book.stash?.map(({ id }) => id);

async function openNew(storage = newStorage()) {
  const book = newBook();
  await book.openBook(repositoryIn(storage));
  return book;
}

const add = (id: string) => ({ label: `Add ${id}`, changes: [put(id)] });

it("opens empty and ready, with nothing to undo and nothing known from before", async () => {
  const book = newBook();
  expect(book.useBook.getState().status).toBe("opening");
  await book.openBook(repositoryIn(newStorage()));
  expect(book.useBook.getState()).toEqual({
    status: "ready",
    fault: null,
    book: bookOf(),
    empty: true,
    lasting: true,
    saving: { state: "saved", at: null, fault: null },
    pending: 0,
    past: [],
    future: [],
    canUndo: false,
    canRedo: false,
    lastKnown: null,
  });
});

it("shows an act at once, and says saved only when it is kept", async () => {
  const book = await openNew();
  const done = book.perform(add("a"));
  expect(ids(book)).toEqual(["a"]);
  expect(book.useBook.getState()).toMatchObject({
    saving: { state: "saving", at: null },
    pending: 1,
    empty: false,
  });
  expect(await done).toEqual({ ok: true, value: null });
  expect(book.useBook.getState()).toMatchObject({ saving: { state: "saved", at }, pending: 0 });
});

it("keeps many acts, asked for at the same time, in their order", async () => {
  const storage = newStorage();
  const book = await openNew(storage);
  await Promise.all(["a", "b", "c", "d"].map((id) => book.perform(add(id))));
  const again = await openNew(storage);
  expect(ids(again)).toEqual(["a", "b", "c", "d"]);
  expect(value(await again.acts(0, 9)).map(({ counter }) => counter)).toEqual([4, 3, 2, 1]);
});

it("waits for the opening when an act comes early", async () => {
  const book = newBook();
  const opened = book.openBook(repositoryIn(newStorage()));
  expect(await book.perform(add("a"))).toMatchObject({ ok: true });
  await opened;
  expect(ids(book)).toEqual(["a"]);
});

it("makes no act of what changes nothing", async () => {
  const book = await openNew();
  await book.perform(add("a"));
  await book.perform(add("a"));
  expect(value(await book.acts(0, 9))).toHaveLength(1);
});

it("refuses what the format does not allow, names the field, and shows nothing of it", async () => {
  const book = await openNew();
  const refused = await book.perform({ label: "Add", changes: [put("a", { owned: -1 })] });
  expect(refused).toMatchObject({
    ok: false,
    fault: { kind: "refused", place: "a: owned", problem: "below nought" },
  });
  expect(book.useBook.getState()).toMatchObject({ book: bookOf(), pending: 0, saving: { state: "saved" } });
});

it("undoes and redoes, also after a reload, with the names of what comes next", async () => {
  const storage = newStorage();
  const book = await openNew(storage);
  await book.perform(add("a"));
  await book.perform(add("b"));
  await book.undo();
  expect(ids(book)).toEqual(["a"]);
  const again = await openNew(storage);
  expect(again.useBook.getState()).toMatchObject({
    past: [{ label: "Add a" }],
    future: [{ label: "Add b" }],
    canUndo: true,
    canRedo: true,
  });
  await again.redo();
  expect(ids(again)).toEqual(["a", "b"]);
  await again.undo();
  await again.undo();
  expect(again.useBook.getState().book).toStrictEqual(bookOf());
  expect(again.useBook.getState()).toMatchObject({ canUndo: false, canRedo: true, empty: true });
  expect(await again.undo()).toMatchObject({ ok: false, fault: { problem: "There is nothing to undo." } });
  await again.redo();
  await again.perform(add("c"));
  expect(again.useBook.getState()).toMatchObject({ canRedo: false });
  expect(await again.redo()).toMatchObject({ ok: false, fault: { problem: "There is nothing to redo." } });
  expect(ids(again)).toEqual(["a", "c"]);
});

it("replaces everything as one act, keeps a snapshot, and undoes it", async () => {
  const book = await openNew();
  await book.perform(add("a"));
  const other = bookOf({ name: "Another", stash: [item("x"), item("y")] });
  await book.replaceBook(other, "Restore a backup");
  expect(book.useBook.getState().book).toStrictEqual(other);
  const [snapshot] = value(await book.snapshots());
  expect(snapshot).toMatchObject({ label: "Restore a backup", records: 1 });
  await book.undo();
  expect(ids(book)).toEqual(["a"]);
  await book.redo();
  expect(book.useBook.getState().book).toStrictEqual(other);
  if (snapshot) await book.restoreSnapshot(snapshot);
  expect(ids(book)).toEqual(["a"]);
  expect(book.useBook.getState().past.at(-1)?.label).toBe("Go back to before: Restore a backup");
});

it("does a large act as one, with a snapshot of what was before, and takes all of it back", async () => {
  const storage = newStorage();
  const book = await openNew(storage);
  await book.perform(add("a"));
  const many = Array.from({ length: 500 }, (_, at) => put(`n${at}`));
  const done = book.performLarge({ label: "Bring in 500 items", changes: many });
  expect(ids(book)).toEqual(["a"]); // kept first, shown then
  expect(await done).toEqual({ ok: true, value: null });
  expect(ids(book)).toHaveLength(501);
  expect(value(await book.snapshots())[0]).toMatchObject({ label: "Bring in 500 items", records: 1 });
  expect(value(await book.acts(0, 9))).toHaveLength(2);
  const again = await openNew(storage);
  expect(ids(again)).toHaveLength(501);
  await again.undo();
  expect(ids(again)).toEqual(["a"]);
  await again.redo();
  expect(ids(again)).toHaveLength(501);
});

it("shows and keeps nothing of a large act that does not fit", async () => {
  const book = await openNew();
  const misfit = { label: "Bring in", changes: [put("a"), put("b", { owned: -1 })] };
  expect(await book.performLarge(misfit)).toMatchObject({ ok: false, fault: { kind: "refused" } });
  expect(ids(book)).toBeUndefined();
  expect(value(await book.snapshots())).toEqual([]);
});

it("says so when a snapshot is no longer there", async () => {
  const book = await openNew();
  const gone = await book.restoreSnapshot({ id: 99, at, label: "", records: 0 });
  expect(gone).toMatchObject({ ok: false, fault: { kind: "damaged" } });
});

it("shows in every tab what one of them does, and lets edits of both stand", async () => {
  const storage = newStorage();
  const tab = tabsTogether();
  const [one, two] = [newBook(tab()), newBook(tab())];
  await one.openBook(repositoryIn(storage));
  await two.openBook(repositoryIn(storage));
  await one.perform(add("a"));
  await vi.waitFor(() => expect(ids(two)).toEqual(["a"]));
  await vi.waitFor(() => expect(two.useBook.getState().past).toHaveLength(1));
  await Promise.all([one.perform(add("b")), two.perform(add("c"))]);
  await vi.waitFor(() => expect(ids(one)?.toSorted()).toEqual(["a", "b", "c"]));
  await vi.waitFor(() => expect(ids(two)).toEqual(ids(one)));
  await vi.waitFor(() =>
    expect(two.useBook.getState().past.map(({ id }) => id)).toEqual(["dev:1", "dev:2", "dev:3"]),
  );
  expect(one.useBook.getState().past).toEqual(two.useBook.getState().past);
});

it("does not undo another tab's act that it has not heard of", async () => {
  const storage = newStorage();
  const [one, deaf] = [newBook(), newBook()];
  await one.openBook(repositoryIn(storage));
  await deaf.openBook(repositoryIn(storage));
  await deaf.perform(add("a"));
  await one.perform(add("b"));
  const refused = await deaf.undo();
  expect(refused).toMatchObject({ ok: false, fault: { kind: "stale" } });
  expect(ids(deaf)).toEqual(["a", "b"]);
  expect(deaf.useBook.getState()).toMatchObject({ saving: { state: "saved" } });
  expect(await deaf.undo()).toMatchObject({ ok: true });
  expect(ids(deaf)).toEqual(["a"]);
});

it("says what another tab has taken away, and does not keep the edit waiting", async () => {
  const storage = newStorage();
  const [one, deaf] = [newBook(), newBook()];
  await one.openBook(repositoryIn(storage));
  await one.perform(add("a"));
  await deaf.openBook(repositoryIn(storage));
  await one.perform({ label: "Remove", changes: [{ op: "remove", list: "stash", id: "a" }] });
  const refused = await deaf.perform({ label: "Edit", changes: [setPlace("a", "tin")] });
  expect(refused).toMatchObject({ ok: false, fault: { kind: "refused", problem: "it is no longer there" } });
  expect(deaf.useBook.getState()).toMatchObject({
    pending: 0,
    saving: { state: "saved", fault: { kind: "refused" } },
  });
});

it("remembers apart from the database what was kept, and says so when it is found emptied", async () => {
  const marker = heldMarker();
  const book = newBook(tabsTogether()(), marker);
  await book.openBook(repositoryIn(newStorage()));
  await book.perform({ label: "Add", changes: [put("a"), put("b")] });
  const after = newBook(tabsTogether()(), marker);
  await after.openBook(repositoryIn(newStorage()));
  expect(after.useBook.getState()).toMatchObject({
    empty: true,
    lastKnown: { records: 2, stash: 2, kits: 0, at },
  });
});

it("does not call a book emptied that its owner has emptied", async () => {
  const storage = newStorage();
  const marker = heldMarker();
  const book = newBook(tabsTogether()(), marker);
  await book.openBook(repositoryIn(storage));
  await book.perform(add("a"));
  await book.undo();
  await book.openBook(repositoryIn(storage));
  expect(book.useBook.getState()).toMatchObject({ empty: true, lastKnown: null });
});

it("works in memory where the browser keeps nothing, and says so before the first entry", async () => {
  const book = newBook();
  await book.openBook(refusing("SecurityError"));
  expect(book.useBook.getState()).toMatchObject({
    status: "ready",
    lasting: false,
    fault: storeFault("unavailable"),
  });
  expect(await book.perform(add("a"))).toMatchObject({ ok: true });
  expect(ids(book)).toEqual(["a"]);
  await book.undo();
  expect(ids(book)).toBeUndefined();
});

it("says that it could not open, writes nothing, and opens when tried again", async () => {
  const book = newBook();
  await book.openBook(refusing("UnknownError"));
  expect(book.useBook.getState()).toMatchObject({ status: "failed", fault: { kind: "interrupted" } });
  expect(await book.perform(add("a"))).toMatchObject({ ok: false, fault: { kind: "interrupted" } });
  expect(book.useBook.getState().book).toStrictEqual(bookOf());
  await book.openBook(memoryRepository(memoryDisk("dev")));
  expect(book.useBook.getState()).toMatchObject({ status: "ready" });
});
