import type { StashItem } from "../../engine/supply/index.ts";
import type { Photo, Workbook } from "../../engine/workbook/index.ts";
import type { ActDraft, Change, Picture } from "../journal/index.ts";
import { storeWords as words } from "../words/index.ts";
import { act, put, set } from "./record.ts";
import { removal } from "./remove.ts";
import { supplyName } from "./words.ts";

/** How often each photo is mentioned in a book, by its id. */
function mentions({ stash, remakes }: Workbook): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const id of [...(stash ?? []), ...(remakes ?? [])].flatMap(({ photos }) => photos ?? []))
    counts.set(id, (counts.get(id) ?? 0) + 1);
  return counts;
}

const setPhotos = (item: StashItem, photos: readonly string[]): Change =>
  set("stash", item.id, ["photos"], photos.length > 0 ? photos : undefined);

/**
 * Gives an item a photo. One that the book has already, on something else, is not kept twice.
 * @param id a fresh id for it
 * @returns null when the item has this very photo
 */
export function addItemPhoto(book: Workbook, item: StashItem, picture: Picture, id: string): ActDraft | null {
  const { sha256, bytes } = picture;
  const known = book.photos?.find((photo) => photo.sha256 === sha256);
  const own = item.photos ?? [];
  if (known && own.includes(known.id)) return null;
  const photo: Photo = known ?? { id, type: "image/jpeg", sha256, bytes: bytes.length };
  const changes = [...(known ? [] : [put("photos", photo)]), setPhotos(item, [...own, photo.id])];
  return { ...act(words.addPhotoOf(supplyName(item)), ...changes), pictures: [picture] };
}

/** Takes a photo from an item; it goes with it where nothing else has it. */
export function removeItemPhoto(book: Workbook, item: StashItem, id: string): ActDraft {
  const isLast = (mentions(book).get(id) ?? 0) <= 1;
  const rest = (item.photos ?? []).filter((other) => other !== id);
  const changes = [setPhotos(item, rest), ...(isLast ? [removal("photos", id)] : [])];
  return act(words.removePhotoOf(supplyName(item)), ...changes);
}

/** The removals of photos that only these items have. */
export function photoRemovals(book: Workbook, items: readonly StashItem[]): readonly Change[] {
  const all = mentions(book);
  const theirs = mentions({ ...book, stash: [...items], remakes: [] });
  return [...theirs].filter(([id, count]) => all.get(id) === count).map(([id]) => removal("photos", id));
}
