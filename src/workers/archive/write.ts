import { crc32 } from "../file/crc32.ts";

/** A file that goes into an archive: as it is, or with `packed` as it was deflated. */
export type Member = Readonly<{
  name: string;
  bytes: Uint8Array<ArrayBuffer>;
  packed?: Uint8Array<ArrayBuffer>;
}>;

/** Writes little-endian figures of two or four bytes, one after the other. */
function figures(...pairs: readonly (readonly [size: 2 | 4, value: number])[]): Uint8Array<ArrayBuffer> {
  const view = new DataView(new ArrayBuffer(pairs.reduce((sum, [size]) => sum + size, 0)));
  let at = 0;
  for (const [size, value] of pairs) {
    if (size === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
    at += size;
  }
  return new Uint8Array(view.buffer);
}

const namesInUtf8 = 0x0800;
const [asItIs, deflated] = [0, 8];

/** A day and time as MS-DOS has them: seconds by twos, years from 1980. */
function dosTime(at: string): readonly [time: number, date: number] {
  const when = new Date(at);
  const time = (when.getUTCHours() << 11) | (when.getUTCMinutes() << 5) | (when.getUTCSeconds() >> 1);
  const date = ((when.getUTCFullYear() - 1980) << 9) | ((when.getUTCMonth() + 1) << 5) | when.getUTCDate();
  return [time, date];
}

/** What a file's own head and its line in the directory have in common. */
function about({ name, bytes, packed }: Member, at: string) {
  const [time, date] = dosTime(at);
  const nameBytes = new TextEncoder().encode(name);
  const shared = [
    ...([
      [2, 20],
      [2, namesInUtf8],
      [2, packed ? deflated : asItIs],
      [2, time],
      [2, date],
    ] as const),
    ...([
      [4, crc32(bytes)],
      [4, (packed ?? bytes).length],
      [4, bytes.length],
      [2, nameBytes.length],
      [2, 0],
    ] as const),
  ] as const;
  return { nameBytes, shared };
}

/**
 * An archive of files, under 4 GB. Copies of everything hold them as they are: photos are packed already, and what
 * needs no unpacking is read in more ways.
 * @param at when they were written, ISO 8601
 * @see PKWARE APPNOTE.TXT 6.3, section 4.3
 */
export function writeZip(members: readonly Member[], at: string): Blob {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  const directory: Uint8Array<ArrayBuffer>[] = [];
  let offset = 0;
  for (const member of members) {
    const { nameBytes, shared } = about(member, at);
    const head = figures([4, 0x04034b50], ...shared);
    const held = member.packed ?? member.bytes;
    parts.push(head, nameBytes, held);
    directory.push(
      figures([4, 0x02014b50], [2, 20], ...shared, [2, 0], [2, 0], [2, 0], [4, 0], [4, offset]),
      nameBytes,
    );
    offset += head.length + nameBytes.length + held.length;
  }
  const size = directory.reduce((sum, { length }) => sum + length, 0);
  const { length } = members;
  const end = figures(
    [4, 0x06054b50],
    [2, 0],
    [2, 0],
    [2, length],
    [2, length],
    [4, size],
    [4, offset],
    [2, 0],
  );
  return new Blob([...parts, ...directory, end], { type: "application/zip" });
}
