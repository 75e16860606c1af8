import { bringInItems, editStashItem } from "../../src/store/index.ts";
import { forget, ourBook, peerTable } from "./places.ts";
import { type Palette, stashOf } from "./stash.ts";
import { byTurns, type Pair, timed } from "./timing.ts";

const [ours, peer] = ["bench-ours", "bench-peer"];

/** Something that has to be kept; a fault ends the bench. */
async function kept(act: Promise<Readonly<{ ok: boolean }>>): Promise<void> {
  const done = await act;
  if (!done.ok) throw new Error(JSON.stringify(done));
}

/** Fills a database of the app's own with so many things. */
export async function fill(name: string, count: number, palette: Palette): Promise<void> {
  const book = await ourBook(name);
  await kept(book.performLarge(bringInItems(stashOf(count, palette), "list.csv")));
  book.closeBook();
}

/** Fills both places with the same things. */
async function filled(count: number, palette: Palette): Promise<void> {
  await forget(ours, peer);
  await fill(ours, count, palette);
  const db = await peerTable(peer);
  await db.items.bulkPut(stashOf(count, palette));
  db.close();
}

/** P10: from a closed database to all items in memory; `whole`: until it is known what can be undone, too. */
export async function coldStart(runs: number, count: number, palette: Palette) {
  await filled(count, palette);
  const whole: number[] = [];
  const pair = await byTurns(
    runs,
    async () => {
      const began = performance.now();
      let ready = Number.NaN;
      const book = await ourBook(ours, () => {
        ready = performance.now() - began;
      });
      whole.push(performance.now() - began);
      if (book.useBook.getState().book.stash?.length !== count) throw new Error("we lost items");
      book.closeBook();
      return ready;
    },
    () =>
      timed(async () => {
        const db = await peerTable(peer);
        const items = await db.items.toArray();
        if (items.length !== count) throw new Error("the peer lost items");
        db.close();
      }),
  );
  return { ...pair, whole };
}

/** P11: the same items into an empty, open database, until they are on the disk. */
export async function bringIn(runs: number, count: number, palette: Palette): Promise<Pair> {
  const items = stashOf(count, palette);
  return byTurns(
    runs,
    async () => {
      await forget(ours);
      const book = await ourBook(ours);
      const took = await timed(() => kept(book.performLarge(bringInItems(items, "list.csv"))));
      book.closeBook();
      return took;
    },
    async () => {
      await forget(peer);
      const db = await peerTable(peer);
      const took = await timed(() => db.items.bulkPut(items));
      db.close();
      return took;
    },
  );
}

/** P12: one item edited, until the new value is seen and on the disk; the peer reads its table again. */
export async function editOne(runs: number, count: number, palette: Palette): Promise<Pair> {
  await filled(count, palette);
  const book = await ourBook(ours);
  const db = await peerTable(peer);
  const pair = await byTurns(
    runs,
    (run) => {
      const index = (run * 7919) % count;
      const item = book.useBook.getState().book.stash?.[index];
      if (!item) throw new Error("there is nothing to edit");
      return timed(async () => {
        await kept(book.perform(editStashItem(item, ["note"], `note ${run}`)));
        if (book.useBook.getState().book.stash?.[index]?.note !== `note ${run}`) throw new Error("not seen");
      });
    },
    () => timed(() => db.items.toArray()),
  );
  book.closeBook();
  db.close();
  return pair;
}
