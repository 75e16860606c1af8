import { crc32 } from "./crc32.ts";
import { refuse } from "./fault.ts";

/** What an archive may not go beyond, looked at before any of it is unpacked. */
export type ZipCaps = Readonly<{ entries: number; unpacked: number; ratio: number; ratioFrom: number }>;

export const zipCaps: ZipCaps = { entries: 2_000, unpacked: 200_000_000, ratio: 400, ratioFrom: 10_000_000 };

/** One file of an archive, as its directory has it. */
export type Entry = Readonly<{
  name: string;
  packed: number;
  unpacked: number;
  crc: number;
  method: number;
  isLocked: boolean;
  offset: number;
}>;

const endMark = 0x06054b50;
const entryMark = 0x02014b50;
const fileMark = 0x04034b50;

/** Where the end record stands: it is last but for a comment of at most 65,535 bytes. */
function endOf(view: DataView): number {
  for (let at = view.byteLength - 22; at >= Math.max(0, view.byteLength - 22 - 65_535); at -= 1)
    if (view.getUint32(at, true) === endMark) return at;
  return refuse("damaged");
}

function entryAt(view: DataView, at: number): Readonly<{ entry: Entry; next: number }> {
  if (at + 46 > view.byteLength || view.getUint32(at, true) !== entryMark) return refuse("damaged");
  const [nameLength, extra, comment] = [28, 30, 32].map((offset) => view.getUint16(at + offset, true));
  const next = at + 46 + (nameLength ?? 0) + (extra ?? 0) + (comment ?? 0);
  if (next > view.byteLength) return refuse("damaged");
  const name = new TextDecoder().decode(new Uint8Array(view.buffer, view.byteOffset + at + 46, nameLength));
  return {
    next,
    entry: {
      name,
      method: view.getUint16(at + 10, true),
      isLocked: (view.getUint16(at + 8, true) & 1) === 1,
      crc: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      unpacked: view.getUint32(at + 24, true),
      offset: view.getUint32(at + 42, true),
    },
  };
}

/**
 * The directory of an archive. One with too many files, too much in them, or more packed than the archive holds (files
 * laid over each other) is refused unopened.
 * @see PKWARE APPNOTE.TXT 6.3, sections 4.3.12 and 4.3.16
 */
export function directoryOf(bytes: Uint8Array, caps: ZipCaps = zipCaps): readonly Entry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOf(view);
  const count = view.getUint16(end + 10, true);
  if (count > caps.entries) return refuse("bomb"); // also what stands there in an archive over 4 GB
  const entries: Entry[] = [];
  let at = view.getUint32(end + 16, true);
  while (entries.length < count) {
    const { entry, next } = entryAt(view, at);
    entries.push(entry);
    at = next;
  }
  const sum = (of: (entry: Entry) => number) => entries.reduce((all, entry) => all + of(entry), 0);
  const isDense = ({ packed, unpacked }: Entry) =>
    unpacked > caps.ratioFrom && unpacked > packed * caps.ratio;
  if (sum(({ unpacked }) => unpacked) > caps.unpacked || entries.some(isDense)) return refuse("bomb");
  return sum(({ packed }) => packed) > bytes.length ? refuse("bomb") : entries;
}

function packedBytes(bytes: Uint8Array, { offset, packed }: Entry): Uint8Array<ArrayBuffer> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (offset + 30 > bytes.length || view.getUint32(offset, true) !== fileMark) return refuse("damaged");
  const start = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (start + packed > bytes.length) return refuse("damaged");
  return bytes.slice(start, start + packed) as Uint8Array<ArrayBuffer>; // a slice has a buffer of its own
}

/** Unpacks until there is more than the directory said: what lies about its size is a bomb. */
async function inflated(packed: Uint8Array<ArrayBuffer>, size: number): Promise<Uint8Array<ArrayBuffer>> {
  const all = new Uint8Array(size);
  let at = 0;
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  const reader = stream.getReader();
  for (let read = await reader.read(); !read.done; read = await reader.read()) {
    if (at + read.value.length > size) {
      await reader.cancel();
      return refuse("bomb");
    }
    all.set(read.value, at);
    at += read.value.length;
  }
  return at === size ? all : refuse("damaged");
}

/** One file of an archive, unpacked and checked against its sum. */
export async function unpack(bytes: Uint8Array, entry: Entry): Promise<Uint8Array<ArrayBuffer>> {
  if (entry.isLocked) return refuse("locked");
  const packed = packedBytes(bytes, entry);
  const content =
    entry.method === 0
      ? packed
      : entry.method === 8
        ? await inflated(packed, entry.unpacked)
        : refuse("damaged");
  return crc32(content) === entry.crc && content.length === entry.unpacked ? content : refuse("damaged");
}
