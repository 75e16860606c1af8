import { IDBFactory, IDBKeyRange } from "fake-indexeddb";
import { describe, expect, it } from "vitest";
import { dexieRepository } from "../../../src/store/dexie/repository.ts";
import { difference } from "../../../src/store/journal/index.ts";
import { memoryDisk, memoryRepository } from "../../../src/store/memory.ts";
import type { BookRepository } from "../../../src/store/repository.ts";
import { bookOf, draft, item, put, setPlace, stashOf, value } from "./books.ts";

/** Opens the same storage again and again, as tabs or reloads would. */
type Opener = () => BookRepository;

function inMemory(): Opener {
  const disk = memoryDisk("dev");
  return () => memoryRepository(disk);
}

function inDexie(): Opener {
  const storage = { indexedDB: new IDBFactory(), IDBKeyRange };
  return () => dexieRepository({ name: "contract", newDevice: () => "dev", storage });
}

describe.each([
  { where: "in memory", make: inMemory },
  { where: "in Dexie", make: inDexie },
])("a repository $where", ({ make }) => {
  it("begins empty and never used", async () => {
    const opened = value(await make()().load());
    expect(opened).toEqual({ book: bookOf(), revision: 0, savedAt: null, readOnly: null });
  });

  it("keeps an act with its journal entry, and has both after a reload", async () => {
    const open = make();
    const first = open();
    await first.load();
    const committed = value(await first.commit(draft([put("a"), put("b")], { label: "Add two" })));
    expect(committed).toMatchObject({ revision: 1, rebased: false, book: { stash: [item("a"), item("b")] } });
    const again = open();
    expect(value(await again.load())).toMatchObject({
      book: { stash: [item("a"), item("b")] },
      revision: 1,
      savedAt: "2026-05-02T10:00:00.000Z",
    });
    const head = {
      id: "dev:1",
      device: "dev",
      counter: 1,
      at: "2026-05-02T10:00:00.000Z",
      label: "Add two",
      kind: "do",
    };
    expect(value(await again.acts(0, 10))).toEqual([head]);
    expect(value(await again.act("dev:1"))).toEqual({
      ...head,
      changes: [put("a"), put("b")],
      inverse: [
        { op: "remove", list: "stash", id: "b" },
        { op: "remove", list: "stash", id: "a", blank: "absent" },
      ],
    });
  });

  it("keeps all that a large act changed, and takes it back after a reload", async () => {
    const open = make();
    const many = stashOf(2_000).map(({ id }) =>
      put(id, { note: "“ß” 🎨 \ud800", x: { deep: [null, 1e300] } }),
    );
    value(await open().commit(draft([put("a")])));
    const { act } = value(await open().commit(draft(many, { label: "Bring in", snapshot: true })));
    const again = open();
    expect(value(await again.acts(0, 1))).toEqual([
      { id: "dev:2", device: "dev", counter: 2, at: act.at, label: "Bring in", kind: "do" },
    ]);
    expect(value(await again.act("dev:2"))).toStrictEqual(act);
    const undone = value(await again.commit(draft(act.inverse, { kind: "undo", of: act.id })));
    expect(undone.book.stash).toEqual([item("a")]);
    const redone = value(await again.commit(draft(undone.act.inverse, { kind: "redo", of: act.id })));
    expect(redone.book.stash).toHaveLength(2_001);
    const [snapshot] = value(await again.snapshots());
    expect(value(await again.snapshot(snapshot?.id ?? 0))?.stash).toEqual([item("a")]);
  });

  it("keeps the order of a list through inserts, moves and removals in the middle", async () => {
    const open = make();
    const repository = open();
    const start = bookOf({ stash: stashOf(450) });
    value(await repository.commit(draft((book) => difference(book, start))));
    const ids = () => repository.load().then((opened) => value(opened).book.stash?.map(({ id }) => id));
    const expected = stashOf(450).map(({ id }) => id);
    value(await repository.commit(draft([{ ...put("new"), before: { id: "st-0200" } } as never])));
    expected.splice(200, 0, "new");
    expect(await ids()).toEqual(expected);
    value(await repository.commit(draft([{ op: "remove", list: "stash", id: "st-0100" }])));
    expected.splice(100, 1);
    expect(await ids()).toEqual(expected);
    value(await repository.commit(draft([{ ...put("st-0449"), before: { id: "st-0000" } } as never])));
    expected.unshift(...expected.splice(-1));
    expect(await ids()).toEqual(expected);
    value(
      await repository.commit(draft(stashOf(300).map(({ id }) => ({ op: "remove", list: "stash", id })))),
    );
    expect(await ids()).toEqual(expected.filter((id) => id === "new" || id >= "st-0300"));
  });

  it.each([
    { name: "left out", book: bookOf() },
    { name: "null", book: bookOf({ stash: null, kits: null, home: null }) },
    { name: "empty", book: bookOf({ stash: [], rates: [] }) },
    { name: "of other versions", book: { ...bookOf(), "x-own": { deep: [1, null] }, constructor: "a" } },
    { name: "told by inherited names", book: bookOf({ stash: [item("__proto__"), item("constructor")] }) },
  ])("gives back a book as it was, with what is $name", async ({ book }) => {
    const open = make();
    value(await open().commit(draft((old) => difference(old, book))));
    expect(value(await open().load()).book).toStrictEqual(book);
  });

  it("applies an act to what is kept, so that edits of two tabs both stand", async () => {
    const open = make();
    const [one, two] = [open(), open()];
    await one.load();
    await two.load();
    value(await one.commit(draft([put("a")])));
    value(await two.commit(draft([put("b")])));
    const third = value(await one.commit(draft([setPlace("b", "tin")])));
    expect(third.rebased).toBe(true);
    expect(third.book.stash).toEqual([item("a"), item("b", { place: "tin" })]);
    expect(third.act.counter).toBe(3);
    expect(value(await one.commit(draft([setPlace("a", "box")]))).rebased).toBe(false);
  });

  it("refuses an act bound to a revision that has passed", async () => {
    const open = make();
    const repository = open();
    value(await repository.commit(draft([put("a")])));
    const late = await repository.commit(draft([put("b")], { onlyAt: 0 }));
    expect(late).toMatchObject({ ok: false, fault: { kind: "stale" } });
    expect(value(await repository.commit(draft([put("b")], { onlyAt: 1 }))).revision).toBe(2);
  });

  it.each([
    { name: "for something that is gone", change: setPlace("no", "tin"), place: "no" },
    { name: "that leaves a wrong word", change: put("a", { state: "lost" }), place: "a: state" },
    {
      name: "that names a field wrongly filled",
      change: { op: "set", list: "book", id: "book", path: ["home"], value: 3 } as const,
      place: "home",
    },
    {
      name: "of money below nought",
      change: put("a", { paid: { amount: "-1", currency: "SEK" } }),
      place: "a: paid.amount",
    },
  ])("refuses a change $name, and keeps nothing of its act", async ({ change, place }) => {
    const open = make();
    const repository = open();
    const refused = await repository.commit(draft([put("z"), change]));
    expect(refused).toMatchObject({ ok: false, fault: { kind: "refused", place } });
    expect(value(await open().load())).toMatchObject({ book: bookOf(), revision: 0 });
    expect(value(await repository.acts(0, 10))).toEqual([]);
  });

  it("pages through acts from the newest, and finds one by its id", async () => {
    const repository = make()();
    for (const id of ["a", "b", "c"]) value(await repository.commit(draft([put(id)], { label: id })));
    expect(value(await repository.acts(0, 2)).map(({ label }) => label)).toEqual(["c", "b"]);
    expect(value(await repository.acts(2, 2)).map(({ label }) => label)).toEqual(["a"]);
    expect(value(await repository.act("dev:2"))?.label).toBe("b");
    expect(value(await repository.act("dev:9"))).toBeNull();
  });

  it("keeps a snapshot of the book as it was, the newest ten", async () => {
    const repository = make()();
    for (let count = 0; count < 12; count += 1) {
      value(await repository.commit(draft([put(`i${count}`)], { label: `Act ${count}`, snapshot: true })));
    }
    const kept = value(await repository.snapshots());
    expect(kept.map(({ label }) => label)).toEqual(Array.from({ length: 10 }, (_, i) => `Act ${11 - i}`));
    expect(kept[0]).toMatchObject({ records: 11, at: "2026-05-02T10:00:00.000Z" });
    expect(value(await repository.snapshot(kept[0]?.id ?? 0))?.stash).toHaveLength(11);
    expect(value(await repository.snapshot(999))).toBeNull();
  });

  const photo = (sum: string) => ({
    change: {
      op: "put",
      list: "photos",
      id: `ph-${sum[0]}`,
      record: { id: `ph-${sum[0]}`, sha256: sum },
    } as const,
    picture: { sha256: sum, bytes: new Uint8Array([1, 2, Number(sum[0])]) },
  });
  const one = photo("1".repeat(64));
  const two = photo("2".repeat(64));

  it("keeps the photos of an act with it, and none of an act that is refused", async () => {
    const open = make();
    value(await open().commit(draft([one.change], { pictures: [one.picture] })));
    const refused = await open().commit(draft([setPlace("no", "tin")], { pictures: [two.picture] }));
    expect(refused.ok).toBe(false);
    expect(value(await open().picture(one.picture.sha256))).toEqual(one.picture);
    expect(value(await open().picture(two.picture.sha256))).toBeNull();
  });

  it("sweeps a photo only when no book, snapshot, or act that can be taken back has it", async () => {
    const repository = make()();
    const never = "2030-01-01T00:00:00.000Z";
    const here = async () => value(await repository.picture(one.picture.sha256)) !== null;
    value(await repository.commit(draft([one.change], { pictures: [one.picture] })));
    value(await repository.sweep({ acts: new Set(), since: never }));
    expect(await here()).toBe(true); // the book has it
    value(await repository.commit(draft([{ op: "remove", list: "photos", id: "ph-1" }])));
    value(await repository.sweep({ acts: new Set(["dev:2"]), since: never }));
    expect(await here()).toBe(true); // the removal can be taken back
    value(await repository.sweep({ acts: new Set(), since: "2026-05-01T00:00:00.000Z" }));
    expect(await here()).toBe(true); // it was removed since
    expect(value(await repository.sweep({ acts: new Set(), since: never }))).toBe(1);
    expect(await here()).toBe(false);
  });

  it("keeps the photos of a snapshot", async () => {
    const repository = make()();
    value(await repository.commit(draft([one.change], { pictures: [one.picture] })));
    const removal = { op: "remove", list: "photos", id: "ph-1" } as const;
    value(await repository.commit(draft([removal], { snapshot: true })));
    expect(value(await repository.sweep({ acts: new Set(), since: "2030-01-01T00:00:00.000Z" }))).toBe(0);
  });

  it("writes down which act an undo is about", async () => {
    const repository = make()();
    const { act } = value(await repository.commit(draft([put("a")])));
    const undone = value(await repository.commit(draft(act.inverse, { kind: "undo", of: act.id })));
    expect(undone.act).toMatchObject({
      kind: "undo",
      of: "dev:1",
      inverse: [put("a")].map((c) => ({ ...c, before: null })),
    });
    expect(undone.book).toStrictEqual(bookOf());
  });
});
