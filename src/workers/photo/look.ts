import { type PhotoFault, photoCaps } from "./fault.ts";
import { jpegOf, jpegSize } from "./jpeg.ts";

/** Why a file cannot be a photo, by its first bytes and its own figures; null where nothing speaks against it. */
export type Looked = PhotoFault | null;

const textOf = (bytes: Uint8Array, from: number, to: number): string =>
  String.fromCharCode(...bytes.subarray(from, to));

const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

const bySize = (width: number, height: number): Looked => {
  if (width === 0 || height === 0) return "damaged";
  return width * height > photoCaps.pixels ? "too-many-pixels" : null;
};

function jpeg(bytes: Uint8Array): Looked {
  const parts = jpegOf(bytes);
  const size = parts && jpegSize(parts);
  return size ? bySize(...size) : "damaged";
}

/** @see W3C PNG, third edition, 5.3 and 11.2: the size stands in IHDR, which is first, and IEND is last */
function png(bytes: Uint8Array): Looked {
  const isWhole = bytes.length > 45 && textOf(bytes, 12, 16) === "IHDR" && endsWithChunk(bytes);
  return isWhole ? bySize(viewOf(bytes).getUint32(16), viewOf(bytes).getUint32(20)) : "damaged";
}

/** Steps over the chunks of a PNG to the one that ends it. */
function endsWithChunk(bytes: Uint8Array): boolean {
  const view = viewOf(bytes);
  for (let at = 8; at + 12 <= bytes.length; at += 12 + view.getUint32(at))
    if (textOf(bytes, at + 4, at + 8) === "IEND") return true;
  return false;
}

/** @see RFC 9649: the size stands in the first chunk, of three kinds */
function webp(bytes: Uint8Array): Looked {
  const view = viewOf(bytes);
  if (bytes.length < 30 || view.getUint32(4, true) + 8 > bytes.length) return "damaged";
  const kind = textOf(bytes, 12, 16);
  const bits = view.getUint32(21, true);
  if (kind === "VP8 ") return bySize(view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff);
  if (kind === "VP8L") return bySize((bits & 0x3fff) + 1, ((bits >>> 14) & 0x3fff) + 1);
  if (kind === "VP8X")
    return bySize((view.getUint32(24, true) & 0xffffff) + 1, (view.getUint32(26, true) >>> 8) + 1);
  return "damaged";
}

function gif(bytes: Uint8Array): Looked {
  return bytes.length < 14
    ? "damaged"
    : bySize(viewOf(bytes).getUint16(6, true), viewOf(bytes).getUint16(8, true));
}

/** HEIC, HEIF and AVIF, which not every browser reads: whether this one does, only trying will tell. */
export const mayBeUnreadable = (bytes: Uint8Array): boolean =>
  /^ftyp(?:hei|hev|mif|msf|avi)/.test(textOf(bytes, 4, 12));

/**
 * The largest size that the parts of a HEIC or AVIF picture say.
 * @see ISO/IEC 23008-12, 6.5.3 (the `ispe` box)
 */
function boxed(bytes: Uint8Array): Looked {
  const head = bytes.subarray(0, 65_536);
  const view = viewOf(head);
  for (let at = 4; at + 16 <= head.length; at += 1) {
    if (textOf(head, at, at + 4) !== "ispe") continue;
    const looked = bySize(view.getUint32(at + 8), view.getUint32(at + 12));
    if (looked) return looked;
  }
  return null;
}

const isTiff = (start: string): boolean => start.startsWith("II*\0") || start.startsWith("MM\0*");

/** Looks at a file before any of it is unpacked: its kind, by content, its size, and whether it is all there. */
export function lookAt(bytes: Uint8Array): Looked {
  if (bytes.length === 0) return "empty";
  if (bytes.length > photoCaps.bytes) return "too-large";
  const start = textOf(bytes, 0, 12);
  if (start.startsWith("\xff\xd8\xff")) return jpeg(bytes);
  if (start.startsWith("\x89PNG\r\n\x1a\n")) return png(bytes);
  if (/^RIFF.{4}WEBP/s.test(start)) return webp(bytes);
  if (/^GIF8[79]a/.test(start)) return gif(bytes);
  if (mayBeUnreadable(bytes)) return boxed(bytes);
  if (isTiff(start)) return "unreadable-kind"; // also what cameras write unprocessed
  return "not-a-photo";
}
