import { IDBDatabase } from "fake-indexeddb";
import { afterEach, describe, expect, it, vi } from "vitest";
import { bookOf, item, put, stashOf, value } from "./books.ts";
import { failures, failWrites } from "./broken.ts";
import { newBook, newStorage, repositoryIn } from "./tools.ts";

let mend = () => {};
afterEach(() => mend());

type Book = ReturnType<typeof newBook>;

async function prepared() {
  const storage = newStorage();
  const book = newBook();
  await book.openBook(repositoryIn(storage));
  await book.perform({ label: "Before", changes: [put("kept")] });
  return { storage, book };
}

/** What a fresh tab finds: the book and its journal. */
async function found(storage: ReturnType<typeof newStorage>) {
  const repository = repositoryIn(storage);
  const { book, revision } = value(await repository.load());
  const acts = value(await repository.acts(0, 100));
  const snapshots = value(await repository.snapshots());
  repository.close();
  return { book, revision, acts: acts.length, snapshots: snapshots.length };
}

const acts: readonly Readonly<{ act: string; run: (book: Book) => Promise<unknown>; writes: number }>[] = [
  {
    act: "adding an item",
    run: (book) => book.perform({ label: "Add", changes: [put("new")] }),
    writes: 3, // chunk, journal entry, state
  },
  {
    act: "replacing everything",
    run: (book) => book.replaceBook(bookOf({ name: "Other", stash: [item("x")], kits: [] }), "Restore"),
    writes: 6, // snapshot and its book, fields of the book, chunk of the stash, journal entry, state
  },
  { act: "undoing", run: (book) => book.undo(), writes: 4 }, // fields, deleted chunk, journal entry, state
];

describe.each(acts)("when storage fails while $act", ({ run, writes }) => {
  it.each(failures)(
    "by $name, at any of its writes, nothing is half kept, the fault is shown, and trying again keeps it",
    async ({ kind, fail }) => {
      for (let call = 1; call <= writes; call += 1) {
        const { storage, book } = await prepared();
        const before = await found(storage);
        const broken = failWrites((count) => count === call, fail);
        mend = broken.mend;
        const failed = await run(book);
        expect(failed).toMatchObject({ ok: false, fault: { kind } });
        expect(book.useBook.getState().saving).toMatchObject({ state: "failed", fault: { kind } });
        expect(await found(storage)).toEqual(before);
        const shown = book.useBook.getState();
        if (shown.pending > 0) expect(await book.retry()).toEqual({ ok: true, value: null });
        else expect(await run(book)).toEqual({ ok: true, value: null });
        broken.mend();
        expect(book.useBook.getState()).toMatchObject({
          pending: 0,
          saving: { state: "saved", fault: null },
        });
        const after = await found(storage);
        expect(after.book).toStrictEqual(book.useBook.getState().book);
        expect(after).toMatchObject({ revision: 2, acts: 2 });
      }
    },
  );

  it("knows how many writes there are, so that each of them was failed", async () => {
    const { book } = await prepared();
    const counted = failWrites(
      () => false,
      () => {},
    );
    mend = counted.mend;
    await run(book);
    expect(counted.calls.count).toBe(writes);
  });
});

it("keeps what was typed on screen while storage goes on failing, and names what is safe and two ways out", async () => {
  const { storage, book } = await prepared();
  const broken = failWrites(() => true, failures[0]?.fail ?? (() => {}));
  mend = broken.mend;
  await book.perform({ label: "Add one", changes: [put("one")] });
  await book.perform({ label: "Add two", changes: [put("two")] });
  const state = book.useBook.getState();
  expect(state.book.stash).toEqual([item("kept"), item("one"), item("two")]);
  expect(state).toMatchObject({ status: "ready", pending: 2, canUndo: true });
  expect(state.saving.fault).toEqual({
    kind: "quota",
    place: "this device",
    problem: "There is no room left to keep this change.",
    safe: "Everything saved before it is still kept, and the change itself is still on screen.",
    remedy: "Save a copy now, or free some space and try again.",
  });
  expect((await found(storage)).book.stash).toEqual([item("kept")]);
  broken.mend();
  await book.perform({ label: "Add three", changes: [put("three")] });
  expect((await found(storage)).book.stash).toEqual(["kept", "one", "two", "three"].map((id) => item(id)));
});

it("does not replace the book while acts wait that cannot be kept", async () => {
  const { storage, book } = await prepared();
  const broken = failWrites(() => true, failures[0]?.fail ?? (() => {}));
  mend = broken.mend;
  await book.perform({ label: "Add one", changes: [put("one")] });
  expect(await book.replaceBook(bookOf(), "Restore")).toMatchObject({ ok: false, fault: { kind: "quota" } });
  expect(book.useBook.getState()).toMatchObject({ pending: 1, book: { stash: [item("kept"), item("one")] } });
  broken.mend();
  expect(await book.replaceBook(bookOf(), "Restore")).toMatchObject({ ok: true });
  expect(await found(storage)).toMatchObject({ book: bookOf(), revision: 3 });
});

it("an edit made while the book is being replaced is kept after it", async () => {
  const { storage, book } = await prepared();
  const replaced = book.replaceBook(bookOf({ stash: [item("x")] }), "Restore");
  await book.perform({ label: "Add one", changes: [put("one")] });
  await replaced;
  expect(book.useBook.getState().book.stash).toEqual([item("x"), item("one")]);
  expect((await found(storage)).book.stash).toEqual([item("x"), item("one")]);
});

it("refuses to replace the book by one that the format does not allow", async () => {
  const { storage, book } = await prepared();
  const refused = await book.replaceBook(bookOf({ stash: [item("x", { owned: -1 })] }), "Restore");
  expect(refused).toMatchObject({
    ok: false,
    fault: { kind: "refused", place: "x: owned", safe: "Nothing was changed." },
  });
  expect(book.useBook.getState()).toMatchObject({
    saving: { state: "saved" },
    book: { stash: [item("kept")] },
  });
  expect(await found(storage)).toMatchObject({ revision: 1, snapshots: 0 });
});

it("takes back acts that wait, last first, before it undoes what is kept", async () => {
  const { storage, book } = await prepared();
  const broken = failWrites(() => true, failures[2]?.fail ?? (() => {}));
  mend = broken.mend;
  await book.perform({ label: "Add one", changes: [put("one")] });
  await book.perform({ label: "Add two", changes: [put("two")] });
  expect(await book.redo()).toMatchObject({ ok: false });
  expect(await book.undo()).toMatchObject({ ok: true });
  expect(book.useBook.getState()).toMatchObject({ pending: 1, book: { stash: [item("kept"), item("one")] } });
  expect(await book.undo()).toMatchObject({ ok: true });
  expect(book.useBook.getState()).toMatchObject({ pending: 0, saving: { state: "saved", fault: null } });
  expect(await book.retry()).toMatchObject({ ok: true });
  broken.mend();
  expect((await found(storage)).book.stash).toEqual([item("kept")]);
});

it("gives up the acts that wait when asked to", async () => {
  const { book } = await prepared();
  const broken = failWrites(() => true, failures[2]?.fail ?? (() => {}));
  mend = broken.mend;
  await book.perform({ label: "Add one", changes: [put("one")] });
  await book.perform({ label: "Add two", changes: [put("two")] });
  expect(await book.retry()).toMatchObject({ ok: false, fault: { kind: "interrupted" } });
  await book.dropPending();
  expect(book.useBook.getState()).toMatchObject({
    pending: 0,
    book: { stash: [item("kept")] },
    saving: { state: "saved", fault: null },
  });
});

it("every transaction that writes is strict, and holds the rows and their journal entry", async () => {
  const spy = vi.spyOn(IDBDatabase.prototype, "transaction"); // before opening: Dexie binds it then
  const { storage, book } = await prepared();
  await book.replaceBook(bookOf({ stash: stashOf(300) }), "Restore");
  await book.undo();
  await book.redo();
  const other = newBook();
  await other.openBook(repositoryIn(storage));
  await other.snapshots();
  const writing = spy.mock.calls.filter(([, mode]) => mode === "readwrite");
  spy.mockRestore();
  expect(writing).toHaveLength(4); // opening and reading write nothing
  for (const [stores, , options] of writing) {
    expect(stores).toEqual(["chunks", "journal", "meta", "pictures", "snapshots", "large"]);
    expect(options).toEqual({ durability: "strict" });
  }
});
