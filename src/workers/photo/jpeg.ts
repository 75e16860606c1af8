/**
 * The segments of a JPEG file.
 * @see ITU-T T.81 (ISO/IEC 10918-1), annex B; JFIF: ISO/IEC 10918-5
 */

/** One segment: its marker's second byte, the bytes that follow its length, and where all of it stands. */
export type Segment = Readonly<{ marker: number; body: Uint8Array; from: number; to: number }>;

/** What a JPEG holds, up to and with its end; `after`: how many bytes stand behind it. Null: it has no end. */
export type Jpeg = Readonly<{ segments: readonly Segment[]; after: number }>;

const [startOfImage, endOfImage, startOfScan] = [0xd8, 0xd9, 0xda];
const isRestart = (marker: number): boolean => marker >= 0xd0 && marker <= 0xd7;

/** Where the next marker stands behind the packed picture of a scan. */
function afterScan(bytes: Uint8Array, from: number): number {
  let at = from;
  while (at < bytes.length - 1) {
    const found = bytes.indexOf(0xff, at);
    if (found === -1) return bytes.length;
    const marker = bytes[found + 1] ?? 0;
    if (marker !== 0 && marker !== 0xff && !isRestart(marker)) return found;
    at = found + (marker === 0xff ? 1 : 2);
  }
  return bytes.length;
}

/** Takes a JPEG apart; null for one that is cut off or is none. */
export function jpegOf(bytes: Uint8Array): Jpeg | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes[0] !== 0xff || bytes[1] !== startOfImage) return null;
  const segments: Segment[] = [];
  let at = 2;
  while (at + 1 < bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at += 1; // a filling byte
      continue;
    }
    if (marker === endOfImage) return { segments, after: bytes.length - at - 2 };
    if (at + 4 > bytes.length) return null;
    const length = view.getUint16(at + 2);
    if (length < 2 || at + 2 + length > bytes.length) return null;
    const end = at + 2 + length;
    const to = marker === startOfScan ? afterScan(bytes, end) : end;
    segments.push({ marker, body: bytes.subarray(at + 4, end), from: at, to });
    at = to;
  }
  return null;
}

const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/** The width and height that a JPEG says it has, in pixels as they are stored. */
export function jpegSize({ segments }: Jpeg): readonly [number, number] | null {
  const frame = segments.find(({ marker }) => isFrame(marker));
  if (!frame || frame.body.length < 6) return null;
  const view = new DataView(frame.body.buffer, frame.body.byteOffset);
  return [view.getUint16(3), view.getUint16(1)];
}

const textAt = (body: Uint8Array, length: number): string => String.fromCharCode(...body.subarray(0, length));

/** Segments that are needed to draw the picture: tables, frames, scans, restarts. */
const draws = (marker: number): boolean =>
  (marker >= 0xc0 && marker <= 0xcf) || [0xda, 0xdb, 0xdd].includes(marker);

/** A JFIF head without a thumbnail, and what kind of colours the picture has: nothing about who took it, or where. */
function isPlain({ marker, body }: Segment): boolean {
  if (marker === 0xe0)
    return textAt(body, 5) === "JFIF\0" && body[12] === 0 && body[13] === 0 && body.length === 14;
  if (marker === 0xee) return textAt(body, 5) === "Adobe" && body.length === 12;
  return false;
}

const isOfThePicture = (segment: Segment): boolean => draws(segment.marker) || isPlain(segment);

/**
 * Whether a JPEG is nothing but its picture: no EXIF, place, XMP, IPTC, thumbnail, comment or colour profile, and
 * nothing behind its end. Without a profile its colours are sRGB.
 */
export function isBareJpeg(bytes: Uint8Array): boolean {
  const jpeg = jpegOf(bytes);
  return jpeg !== null && jpeg.after === 0 && jpeg.segments.every(isOfThePicture);
}

/** The same picture without the rest: browsers write their own colour profile into what they draw. */
export function bareJpeg(bytes: Uint8Array): Uint8Array<ArrayBuffer> | null {
  const jpeg = jpegOf(bytes);
  if (!jpeg) return null;
  const kept = jpeg.segments.filter(isOfThePicture);
  const bare = new Uint8Array(kept.reduce((sum, { from, to }) => sum + to - from, 4));
  bare.set([0xff, startOfImage]);
  let at = 2;
  for (const { from, to } of kept) {
    bare.set(bytes.subarray(from, to), at);
    at += to - from;
  }
  bare.set([0xff, endOfImage], at);
  return bare;
}
