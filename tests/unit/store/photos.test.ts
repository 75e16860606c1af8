import { describe, expect, it } from "vitest";
import { addItemPhoto, removeItemPhoto, removeStashItem } from "../../../src/store/acts/index.ts";
import { applyChanges } from "../../../src/store/journal/index.ts";
import { hasRoomFor, photoLimits, photoSums, pictureOf } from "../../../src/store/photos.ts";
import { bookOf, item } from "./books.ts";
import { newBook, newStorage, repositoryIn } from "./tools.ts";

// The digest of "abc": FIPS 180-2, appendix B.1.
const abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
const picture = await pictureOf(new TextEncoder().encode("abc"));

const applied = (book: ReturnType<typeof bookOf>, draft: Parameters<typeof applyChanges>[1]) => {
  const done = applyChanges(book, draft);
  if (!done.ok) throw new Error(done.fault.problem);
  return done.value.book;
};

const two = bookOf({ stash: [item("a"), item("b")] });
const [a, b] = [item("a"), item("b")];
const withPhoto = applied(two, addItemPhoto(two, a, picture, "ph-1")?.changes ?? []);

describe("a photo of an item", () => {
  it("goes by the sum of its bytes", () => expect(picture.sha256).toBe(abc));

  it("stands in the list of photos, and the item names it", () => {
    expect(withPhoto.photos).toEqual([{ id: "ph-1", type: "image/jpeg", sha256: abc, bytes: 3 }]);
    expect(withPhoto.stash?.[0]?.photos).toEqual(["ph-1"]);
    expect(photoSums(withPhoto)).toEqual([abc]);
  });

  it("is not given to the same item twice, and not kept twice for two", () => {
    const [has] = withPhoto.stash ?? [];
    expect(has && addItemPhoto(withPhoto, has, picture, "ph-2")).toBeNull();
    const both = applied(withPhoto, addItemPhoto(withPhoto, b, picture, "ph-2")?.changes ?? []);
    expect(both.photos).toHaveLength(1);
    expect(both.stash?.[1]?.photos).toEqual(["ph-1"]);
  });

  it("goes with the last thing that has it, and leaves nothing behind", () => {
    const both = applied(withPhoto, addItemPhoto(withPhoto, b, picture, "ph-2")?.changes ?? []);
    const [first, second] = both.stash ?? [];
    if (!first || !second) throw new Error("both are there");
    const one = applied(both, removeItemPhoto(both, first, "ph-1").changes);
    expect(one.photos).toHaveLength(1);
    expect(applied(one, removeItemPhoto(one, second, "ph-1").changes)).toEqual({ ...two, photos: [] });
    const removed = applied(both, removeStashItem(both, first).changes);
    expect(removed.photos).toHaveLength(1);
    expect(applied(removed, removeStashItem(removed, second).changes).photos).toEqual([]);
  });

  it("has room up to what a copy holds", () => {
    const photos = Array.from({ length: photoLimits.count - 1 }, (_, id) => ({ id: `${id}`, bytes: 10 }));
    expect(hasRoomFor(bookOf({ photos }), 10)).toBe(true);
    expect(hasRoomFor(bookOf({ photos }), photoLimits.bytes)).toBe(false);
    expect(hasRoomFor(bookOf({ photos: [...photos, { id: "x" }] }), 10)).toBe(false);
  });
});

describe("the bytes of a photo", () => {
  async function opened(storage: ReturnType<typeof newStorage>) {
    const book = newBook();
    await book.openBook(repositoryIn(storage));
    return book;
  }
  const bytesIn = async (book: ReturnType<typeof newBook>) => {
    const found = await book.picture(abc);
    return found.ok ? (found.value?.bytes ?? null) : null;
  };

  it("are there at once, after a reload, after undo and redo, and when nothing needs them they go", async () => {
    const storage = newStorage();
    const book = await opened(storage);
    await book.perform({ label: "Add", changes: [{ op: "put", list: "stash", id: "a", record: a }] });
    const draft = addItemPhoto(book.useBook.getState().book, a, picture, "ph-1");
    const keeping = book.perform(draft ?? { label: "", changes: [] });
    expect(await bytesIn(book)).toEqual(picture.bytes); // while it waits to be kept
    await keeping;
    await book.undo();
    expect(book.useBook.getState().book.photos).toBeUndefined();
    expect(await book.sweepPictures()).toEqual({ ok: true, value: 0 });
    const again = await opened(storage);
    await again.redo();
    expect(again.useBook.getState().book.stash?.[0]?.photos).toEqual(["ph-1"]);
    expect(await bytesIn(again)).toEqual(picture.bytes);
  });

  it("come with a whole book that is restored", async () => {
    const book = await opened(newStorage());
    await book.replaceBook(withPhoto, "Restore", [picture]);
    expect(await bytesIn(book)).toEqual(picture.bytes);
  });
});
