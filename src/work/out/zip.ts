import { crc32 } from "../file/crc32.ts";

/** One file of an archive to be. `stored`: not packed, for what a reader looks at without unpacking. */
export type Part = Readonly<{ name: string; text: string; stored?: boolean }>;

type Packed = Readonly<{ name: Uint8Array; bytes: Uint8Array; method: 0 | 8; crc: number; size: number }>;

async function deflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

async function packed({ name, text, stored = false }: Part): Promise<Packed> {
  const plain = new TextEncoder().encode(text);
  return {
    name: new TextEncoder().encode(name),
    bytes: stored ? plain : await deflated(plain),
    method: stored ? 0 : 8,
    crc: crc32(plain),
    size: plain.length,
  };
}

/** 1 January 1980, the first day that an archive can tell: the same list always gives the same bytes. */
const firstDay = 0x0021;
/** Names are UTF-8 (bit 11); version 2.0 unpacks them. */
const [flags, version] = [0x0800, 20];

/** What both records say of a file, from the version on. */
function about(view: DataView, at: number, { name, bytes, method, crc, size }: Packed): void {
  view.setUint16(at, version, true);
  view.setUint16(at + 2, flags, true);
  view.setUint16(at + 4, method, true);
  view.setUint16(at + 8, firstDay, true);
  view.setUint32(at + 10, crc, true);
  view.setUint32(at + 14, bytes.length, true);
  view.setUint32(at + 18, size, true);
  view.setUint16(at + 22, name.length, true);
}

function record(length: number, mark: number, fill: (view: DataView) => void): Uint8Array {
  const bytes = new Uint8Array(length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, mark, true);
  fill(view);
  return bytes;
}

const fileRecord = (file: Packed): Uint8Array => record(30, 0x04034b50, (view) => about(view, 4, file));

const entryRecord = (file: Packed, offset: number): Uint8Array =>
  record(46, 0x02014b50, (view) => {
    view.setUint16(4, version, true);
    about(view, 6, file);
    view.setUint32(42, offset, true);
  });

const endRecord = (count: number, length: number, offset: number): Uint8Array =>
  record(22, 0x06054b50, (view) => {
    view.setUint16(8, count, true);
    view.setUint16(10, count, true);
    view.setUint32(12, length, true);
    view.setUint32(16, offset, true);
  });

const lengthOf = (pieces: readonly Uint8Array[]): number =>
  pieces.reduce((sum, { length }) => sum + length, 0);

function joined(pieces: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(lengthOf(pieces));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}

/**
 * An archive of a few files of text, all of it under 4 GB.
 * @see PKWARE APPNOTE.TXT 6.3, sections 4.3.7, 4.3.12 and 4.3.16
 */
export async function zipOf(parts: readonly Part[]): Promise<Uint8Array<ArrayBuffer>> {
  const files = await Promise.all(parts.map(packed));
  const pieces: Uint8Array[] = [];
  const entries: Uint8Array[] = [];
  for (const file of files) {
    entries.push(entryRecord(file, lengthOf(pieces)), file.name);
    pieces.push(fileRecord(file), file.name, file.bytes);
  }
  const [offset, length] = [lengthOf(pieces), lengthOf(entries)];
  return joined([...pieces, ...entries, endRecord(files.length, length, offset)]);
}
