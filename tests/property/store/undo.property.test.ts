import { isDeepStrictEqual } from "node:util";
import { IDBFactory, IDBKeyRange } from "fake-indexeddb";
import { expect, it } from "vitest";
import { canonicalJson, type Workbook } from "../../../src/engine/workbook/index.ts";
import { createBook } from "../../../src/store/create-book.ts";
import { dexieRepository } from "../../../src/store/dexie/repository.ts";
import { applyChanges, type Change } from "../../../src/store/journal/index.ts";
import fc from "../../chance.ts";
import { change } from "./arbitraries.ts";

/** What a person expects of undo: the books so far, where in them they are. */
type Model = { books: Workbook[]; at: number };
type Real = { book: ReturnType<typeof createBook>; reopen: () => Promise<void> };
type Command = fc.AsyncCommand<Model, Real>;

const now = () => "2026-05-02T10:00:00.000Z";

async function newReal(): Promise<Real> {
  const storage = { indexedDB: new IDBFactory(), IDBKeyRange };
  const book = createBook({
    now,
    tabs: { tell: () => {}, listen: () => {}, close: () => {} },
    marker: { read: () => null, write: () => {} },
    newDevice: () => "memory",
  });
  const reopen = () => book.openBook(dexieRepository({ name: "undo", newDevice: () => "dev", storage }));
  await reopen();
  return { book, reopen };
}

const current = ({ books, at }: Model): Workbook =>
  books[at] ?? { format: "understudy-workbook", version: 1 };

/** Without the prototypes that made-up records lack. */
const plain = <T>(value: T): T => structuredClone(value);

/** Screen, stacks and, after a reload, storage agree with the model. */
function agree(model: Model, { book }: Real): void {
  const state = book.useBook.getState();
  expect(plain(state.book)).toStrictEqual(plain(current(model)));
  expect([state.canUndo, state.canRedo]).toEqual([model.at > 0, model.at < model.books.length - 1]);
  expect(state.saving.state).toBe("saved");
}

const act = (changes: readonly Change[]): Command => ({
  check: () => true,
  async run(model, real) {
    const before = current(model);
    const expected = applyChanges(before, changes);
    const done = await real.book.perform({ label: "Act", changes });
    if (done.ok && expected.ok && !isDeepStrictEqual(plain(before), plain(expected.value.book))) {
      model.books = [...model.books.slice(0, model.at + 1), expected.value.book];
      model.at += 1;
    }
    agree(model, real);
  },
  toString: () => `act(${JSON.stringify(changes)})`,
});

const replace = (book: Workbook): Command => ({
  check: (model) => canonicalJson(book) !== canonicalJson(current(model)),
  async run(model, real) {
    await real.book.replaceBook(book, "Replace");
    model.books = [...model.books.slice(0, model.at + 1), book];
    model.at += 1;
    agree(model, real);
  },
  toString: () => "replace",
});

const undo: Command = {
  check: ({ at }) => at > 0,
  async run(model, real) {
    expect(await real.book.undo()).toMatchObject({ ok: true });
    model.at -= 1;
    agree(model, real);
  },
  toString: () => "undo",
};

const redo: Command = {
  check: ({ at, books }) => at < books.length - 1,
  async run(model, real) {
    expect(await real.book.redo()).toMatchObject({ ok: true });
    model.at += 1;
    agree(model, real);
  },
  toString: () => "redo",
};

const reload: Command = {
  check: () => true,
  async run(model, real) {
    await real.reopen();
    agree(model, real);
  },
  toString: () => "reload",
};

const wholeBook = fc.uniqueArray(fc.constantFrom("a", "b", "c", "d"), { maxLength: 4 }).map(
  (ids): Workbook => ({
    format: "understudy-workbook",
    version: 1,
    name: ids.join(" "),
    stash: ids.map((id) => ({ id, supply: { family: "other", name: id } })),
  }),
);

// Quality bar D12: 200 runs.
it("undo and redo go through any acts, reloads among them, as a list of books would", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.commands(
        [
          fc.array(change, { minLength: 1, maxLength: 3 }).map(act),
          fc.array(change, { minLength: 1, maxLength: 1 }).map(act),
          wholeBook.map(replace),
          fc.constant(undo),
          fc.constant(undo),
          fc.constant(redo),
          fc.constant(reload),
        ],
        { maxCommands: 12 },
      ),
      async (commands) => {
        await fc.asyncModelRun(
          async () => ({ model: { books: [current({ books: [], at: 0 })], at: 0 }, real: await newReal() }),
          commands,
        );
      },
    ),
    { numRuns: 200 },
  );
}, 120_000);
