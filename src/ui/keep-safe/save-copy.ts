import {
  type BackupFile,
  backupFile,
  type Picture,
  photoSums,
  picture,
  recordsIn,
  useBook,
} from "../../store/index.ts";
import { saveFile } from "../app/save-file.ts";
import { keepSafeWords } from "../words/keep-safe.ts";
import { noteCopy } from "./last-copy.ts";
import { copyName, writtenText, writtenWithPhotos } from "./view/copy.ts";
import { dayOf } from "./view/moment.ts";

/** The photos that are here of those that the notebook names, one after another. */
async function picturesHere(sums: readonly string[]): Promise<readonly Picture[]> {
  const here: Picture[] = [];
  for (const sum of sums) {
    const found = await picture(sum);
    if (found.ok && found.value) here.push(found.value);
  }
  return here;
}

/** The archive of a notebook with its photos; null where it cannot be made just now. */
async function packed({ text }: BackupFile, pictures: readonly Picture[], at: string) {
  try {
    const { startPhotos } = await import("../../workers/index.ts");
    const photos = startPhotos();
    const made = await photos.packCopy(text, pictures, at);
    photos.stop();
    return made;
  } catch {
    return null; // the app's own files cannot be had, or room is short: better a copy without photos than none
  }
}

/**
 * Saves everything as a file, notes when, and says what was written. It needs no room on the device. With photos it is
 * an archive, else the plain notebook.
 */
export async function saveWholeCopy(): Promise<string> {
  const { book } = useBook.getState();
  const at = new Date().toISOString();
  const file = backupFile(book, at);
  const sums = photoSums(book);
  const pictures = sums.length > 0 ? await picturesHere(sums) : [];
  const made = pictures.length > 0 ? await packed(file, pictures, at) : null;
  const name = copyName(book.name, dayOf(at), made ? "zip" : "json");
  saveFile(name, made?.file ?? file.text, file.type);
  noteCopy(at);
  const without = made ? sums.length - pictures.length : sums.length;
  if (!made) {
    const told = writtenText(name, file, recordsIn(book));
    return without > 0 ? `${told} ${keepSafeWords.copy.missing(without)}` : told;
  }
  const whole = made.whole && file.faults.length === 0;
  const facts = { bytes: made.file.size, whole, photos: pictures.length, missing: without };
  return writtenWithPhotos(name, facts, recordsIn(book));
}
