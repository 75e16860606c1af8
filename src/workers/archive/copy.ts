import { Refused } from "../file/fault.ts";
import { directoryOf, type Entry, unpack, type ZipCaps } from "../file/zip.ts";
import { photoCaps } from "../photo/fault.ts";
import { isBareJpeg, jpegOf, jpegSize } from "../photo/jpeg.ts";
import { type Member, writeZip } from "./write.ts";

/** A photo of a copy: its bytes by the SHA-256 that the notebook knows it by. */
export type Photograph = Readonly<{ sha256: string; bytes: Uint8Array<ArrayBuffer> }>;

/** What a copy with photos holds. `leftOut`: photos that are damaged, or are not what their names say. */
export type Copy = Readonly<{
  json: Uint8Array<ArrayBuffer>;
  photos: readonly Photograph[];
  leftOut: number;
}>;

/** Why a copy is not read. The screens say each in words. */
export type CopyFault = "bomb" | "damaged" | "locked" | "hostile" | "no-copy";

export type CopyRead = Readonly<{ ok: true; copy: Copy }> | Readonly<{ ok: false; fault: CopyFault }>;

/** A copy may hold the largest notebook and all photos that the store takes in. */
const caps: ZipCaps = { entries: 2_000, unpacked: 320_000_000, ratio: 400, ratioFrom: 10_000_000 };

const bookName = "workbook.json";
const photoName = /^photos\/([0-9a-f]{64})\.jpg$/;

/** A notebook and its photos as one file. */
export const packCopy = (json: string, photos: readonly Photograph[], at: string): Blob =>
  writeZip(
    [
      { name: bookName, bytes: new TextEncoder().encode(json) },
      ...photos.map(({ sha256, bytes }): Member => ({ name: `photos/${sha256}.jpg`, bytes })),
    ],
    at,
  );

/** Nothing is ever written where a name says; one that points out of the archive was made to do harm all the same. */
const isHostile = ({ name }: Entry): boolean =>
  name.includes("\0") ||
  name.includes("\\") ||
  /^(?:\/|[a-z]:)/i.test(name) ||
  name.split("/").includes("..");

async function sumOf(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(sum, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** Whether bytes are a photo as this app keeps them: a JPEG that is nothing but its picture, and no larger than we take. */
function isKept(bytes: Uint8Array): boolean {
  const jpeg = isBareJpeg(bytes) ? jpegOf(bytes) : null;
  const [width, height] = (jpeg && jpegSize(jpeg)) ?? [0, 0];
  return width > 0 && height > 0 && width * height <= photoCaps.pixels;
}

async function photoAt(bytes: Uint8Array, entry: Entry, sha256: string): Promise<Photograph | null> {
  try {
    const own = await unpack(bytes, entry);
    return (await sumOf(own)) === sha256 && isKept(own) ? { sha256, bytes: own } : null;
  } catch (error) {
    if (error instanceof Refused && error.fault !== "bomb") return null; // the rest of the copy is worth having
    throw error;
  }
}

async function read(bytes: Uint8Array): Promise<Copy | CopyFault> {
  const entries = directoryOf(bytes, caps);
  if (entries.some(isHostile)) return "hostile";
  if (new Set(entries.map(({ name }) => name)).size < entries.length) return "damaged";
  const book = entries.find(({ name }) => name === bookName);
  if (!book) return "no-copy";
  const json = await unpack(bytes, book);
  const named = entries.flatMap((entry) => {
    const sha256 = photoName.exec(entry.name)?.[1];
    return sha256 === undefined ? [] : [{ entry, sha256 }];
  });
  const photos: Photograph[] = [];
  for (const { entry, sha256 } of named) {
    const photo = await photoAt(bytes, entry, sha256);
    if (photo) photos.push(photo);
  }
  return { json, photos, leftOut: named.length - photos.length };
}

/** Reads a copy with photos, changing nothing. Whatever stands in the way is said, and nothing is thrown. */
export async function readArchive(bytes: Uint8Array): Promise<CopyRead> {
  try {
    const copy = await read(bytes);
    return typeof copy === "string" ? { ok: false, fault: copy } : { ok: true, copy };
  } catch (error) {
    const fault = error instanceof Refused ? error.fault : "damaged";
    return { ok: false, fault: fault === "bomb" || fault === "locked" ? fault : "damaged" };
  }
}
