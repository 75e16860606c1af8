import "fake-indexeddb/auto";
import { expect, it, vi } from "vitest";
import { addStashItem, newId, openLocalBook, perform, undo, useBook } from "../../../src/store/index.ts";
import { item, put, value } from "./books.ts";
import { newBook, newStorage, repositoryIn, tabsTogether } from "./tools.ts";

it("the app's own book opens in this browser, keeps an act with the time of day, and undoes it", async () => {
  await openLocalBook();
  expect(useBook.getState()).toMatchObject({ status: "ready", lasting: true });
  const began = new Date().toISOString();
  expect(await perform(addStashItem(item(newId("st-", []))))).toMatchObject({ ok: true });
  const { book, saving } = useBook.getState();
  expect(book.stash?.[0]?.id).toMatch(/^st-/);
  expect(saving.at && saving.at >= began).toBe(true);
  expect(await undo()).toMatchObject({ ok: true });
});

it("undo reaches back over pages of the journal, but not over a thousand acts, after a reload", async () => {
  const storage = newStorage();
  const repository = repositoryIn(storage);
  for (let count = 0; count < 1_203; count += 1) {
    const at = "2026-05-02T10:00:00.000Z";
    value(
      await repository.commit({
        label: `Act ${count}`,
        kind: "do",
        at,
        changes: [put("a", { owned: count })],
      }),
    );
  }
  const book = newBook();
  await book.openBook(repository);
  const { past } = book.useBook.getState();
  expect([past.length, past[0]?.label, past.at(-1)?.label]).toEqual([1_000, "Act 203", "Act 1202"]);
}, 60_000);

it("says so when it cannot read what another tab has done", async () => {
  const storage = newStorage();
  const tab = tabsTogether();
  const [one, two] = [newBook(tab()), newBook(tab())];
  await one.openBook(repositoryIn(storage));
  const repository = repositoryIn(storage);
  const load = vi.fn(repository.load);
  await two.openBook({ ...repository, load });
  load.mockResolvedValueOnce({
    ok: false,
    fault: { kind: "damaged", place: "", problem: "", safe: "", remedy: "" },
  });
  await one.perform({ label: "Add", changes: [put("a")] });
  await vi.waitFor(() =>
    expect(two.useBook.getState().saving).toMatchObject({ state: "failed", fault: { kind: "damaged" } }),
  );
  two.closeBook();
  await one.perform({ label: "Add", changes: [put("b")] });
  expect(load).toHaveBeenCalledTimes(2);
});
