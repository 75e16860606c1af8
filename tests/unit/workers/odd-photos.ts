import { crc32 } from "../../../src/workers/file/crc32.ts";

/** A PNG's chunk after W3C PNG, third edition, 5.3. */
function chunk(kind: string, data: readonly number[]): readonly number[] {
  const body = [...Buffer.from(kind, "latin1"), ...data];
  return [...figure(data.length), ...body, ...figure(crc32(new Uint8Array(body)))];
}

const figure = (value: number): readonly number[] => [24, 16, 8, 0].map((shift) => (value >>> shift) & 0xff);

const pngMark = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** A PNG that says it has these pixels, in a hundred bytes. */
export const pngOf = (width: number, height: number): Uint8Array<ArrayBuffer> =>
  new Uint8Array([
    ...pngMark,
    ...chunk("IHDR", [...figure(width), ...figure(height), 8, 2, 0, 0, 0]),
    ...chunk("IDAT", [0x78, 0x9c, 0x63, 0x00, 0x00, 0x00, 0x01, 0x00, 0x01]),
    ...chunk("IEND", []),
  ]);

/** Two and a half thousand million pixels. */
export const hugePng = pngOf(50_000, 50_000);

/** The start of a HEIC file, as phones write it: its boxes `ftyp` and `meta` after ISO/IEC 23008-12. */
export const heic = new Uint8Array([
  ...[...figure(24), ...Buffer.from("ftypheic", "latin1"), 0, 0, 0, 0, ...Buffer.from("mif1heic", "latin1")],
  ...[...figure(12), ...Buffer.from("meta", "latin1"), 0, 0, 0, 0],
]);
