import type { StashItem } from "../../../engine/supply/index.ts";
import { addItemPhoto, hasRoomFor, newId, pictureOf, useBook } from "../../../store/index.ts";
import { type PhotoFault, photoCaps, startPhotos } from "../../../workers/index.ts";
import { doAct } from "../../app/do-act.ts";
import { notify } from "../../parts/index.ts";
import { photoWords as words } from "../../words/photos.ts";

/** Why a photo was not taken in. */
export type Refusal = PhotoFault | "unread" | "full";

async function bytesOf(file: File): Promise<ArrayBuffer | null> {
  try {
    return await file.arrayBuffer();
  } catch {
    return null; // moved or changed since it was chosen
  }
}

/** Draws a file anew, off the page's thread. */
async function drawn(file: File): Promise<Uint8Array<ArrayBuffer> | Refusal> {
  if (file.size > photoCaps.bytes) return "too-large"; // not even taken into memory
  const bytes = await bytesOf(file);
  if (bytes === null) return "unread";
  const photos = startPhotos();
  const result = await photos.redraw(bytes);
  photos.stop();
  return result.ok ? result.bytes : result.fault;
}

/**
 * Makes a file a photo of an item, without what else the file says.
 * @returns why not, or null when it was added or was here already
 */
export async function takePhoto(file: File, item: StashItem): Promise<Refusal | null> {
  const bytes = await drawn(file);
  if (typeof bytes === "string") return bytes;
  const { book } = useBook.getState();
  if (!hasRoomFor(book, bytes.length)) return "full";
  const now = book.stash?.find(({ id }) => id === item.id) ?? item; // it may have changed meanwhile
  const draft = addItemPhoto(book, now, await pictureOf(bytes), newId("ph-", book.photos));
  if (draft) await doAct(draft, words.added(item.supply.name));
  else notify(words.twice);
  return null;
}
