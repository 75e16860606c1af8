import { sizeLimitBytes } from "../../../engine/workbook/index.ts";
import { type Picture, photoSums, type Restorable, restorable } from "../../../store/index.ts";
import { keepSafeWords } from "../../words/keep-safe.ts";

const words = keepSafeWords.restore;

/** What is needed of a chosen file. */
export type ChosenFile = Pick<Blob, "size" | "arrayBuffer" | "slice">;

/** The photos of a copy: their bytes, how many were damaged, and how many the notebook names that are not in it. */
export type CopyPhotos = Readonly<{ pictures: readonly Picture[]; leftOut: number; missing: number }>;

/** What a chosen file holds. */
export type CopyIn = Restorable & Readonly<{ photos: CopyPhotos }>;

/** The largest archive that is read: a whole notebook and all photos that the store takes in. */
const archiveLimitBytes = 320_000_000;

const without: CopyPhotos = { pictures: [], leftOut: 0, missing: 0 };

const refused = (fault: Readonly<{ problem: string; remedy: string }>): CopyIn => ({
  ok: false,
  faults: [{ place: "file", ...fault }],
  photos: without,
});

/** A notebook's photos, of those that came with it. What it does not name is left behind. */
function withPhotos(read: Restorable, came: readonly Picture[], leftOut: number): CopyIn {
  if (!read.ok) return { ...read, photos: without };
  const named = new Set(photoSums(read.book));
  const pictures = came.filter(({ sha256 }) => named.has(sha256));
  return { ...read, photos: { pictures, leftOut, missing: named.size - pictures.length - leftOut } };
}

async function bytesOf(file: Pick<Blob, "arrayBuffer">): Promise<ArrayBuffer | null> {
  try {
    return await file.arrayBuffer();
  } catch {
    return null; // moved or changed since it was chosen, or the device took it back
  }
}

function decoded(bytes: ArrayBuffer): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Whether a file begins as an archive does, whatever it is called. */
async function isArchive(file: ChosenFile): Promise<boolean> {
  const start = await bytesOf(file.slice(0, 4));
  return (
    start !== null && ["PK\x03\x04", "PK\x05\x06"].includes(String.fromCharCode(...new Uint8Array(start)))
  );
}

async function readArchive(bytes: ArrayBuffer): Promise<CopyIn> {
  const { startPhotos } = await import("../../../workers/index.ts");
  const photos = startPhotos();
  const read = await photos.readCopy(bytes);
  photos.stop();
  if (!read.ok) return refused(words.archive[read.fault]);
  const { json, photos: came, leftOut } = read.copy;
  const text = decoded(json.buffer);
  return text === null ? refused(words.notText) : withPhotos(restorable(text, json.length), came, leftOut);
}

/**
 * Reads a chosen file whole, changing nothing. One over the limit of its kind is not even taken into memory, and one
 * that is not UTF-8 is refused rather than read with its letters lost.
 */
export async function readCopy(file: ChosenFile): Promise<CopyIn> {
  const packed = await isArchive(file);
  if (packed && file.size > archiveLimitBytes) return refused(words.archive["too-large"]);
  if (!packed && file.size > sizeLimitBytes) return withPhotos(restorable("", file.size), [], 0);
  const bytes = await bytesOf(file);
  if (bytes === null) return refused(words.unread);
  if (packed) return readArchive(bytes);
  const text = decoded(bytes);
  return text === null ? refused(words.notText) : withPhotos(restorable(text, file.size), [], 0);
}
