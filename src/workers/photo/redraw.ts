import { type PhotoFault, photoCaps } from "./fault.ts";
import { bareJpeg, isBareJpeg } from "./jpeg.ts";
import { lookAt, mayBeUnreadable } from "./look.ts";

/** A photo drawn anew, or why there is none. */
export type Redrawn =
  | Readonly<{ ok: true; bytes: Uint8Array<ArrayBuffer>; width: number; height: number }>
  | Readonly<{ ok: false; fault: PhotoFault }>;

/** The longer side of a photo as it is kept, in pixels: small print on a tube can still be read. */
const longestSide = 1_600;

/** How finely a photo is kept, 0 to 1: the lowest at which pencil lines show no blocks (seen, not measured). */
const quality = 0.82;

const fail = (fault: PhotoFault): { ok: false; fault: PhotoFault } => ({ ok: false, fault });

/** Unpacks a picture the way up that it was taken; a fault where it cannot be. */
export async function unpackPhoto(bytes: Uint8Array<ArrayBuffer>): Promise<ImageBitmap | PhotoFault> {
  const fault = lookAt(bytes);
  if (fault) return fault;
  try {
    const bitmap = await createImageBitmap(new Blob([bytes]), { imageOrientation: "from-image" });
    return bitmap.width * bitmap.height > photoCaps.pixels ? "too-many-pixels" : bitmap;
  } catch {
    return mayBeUnreadable(bytes) ? "unreadable-kind" : "damaged";
  }
}

/** A bitmap on a canvas, no side longer than `longest`, on white where it lets through. The bitmap is closed. */
export function onCanvas(bitmap: ImageBitmap, longest: number): OffscreenCanvas {
  const scale = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
  const [width, height] = [bitmap.width, bitmap.height].map((side) => Math.max(1, Math.round(side * scale)));
  const canvas = new OffscreenCanvas(width ?? 1, height ?? 1);
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) throw new Error("this browser gives a worker no canvas");
  context.fillStyle = "#fff";
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.imageSmoothingQuality = "high";
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  return canvas;
}

/**
 * Draws a photo anew, so that nothing but the picture is left of the file, and looks whether that is so: no place
 * where it was taken, no camera, no thumbnail (quality bar X6).
 */
export async function redraw(file: Uint8Array<ArrayBuffer>): Promise<Redrawn> {
  const bitmap = await unpackPhoto(file);
  if (typeof bitmap === "string") return fail(bitmap);
  const canvas = onCanvas(bitmap, longestSide);
  const blob = await canvas.convertToBlob({ type: "image/jpeg", quality });
  const bytes = bareJpeg(new Uint8Array(await blob.arrayBuffer()));
  const { width, height } = canvas;
  return bytes && isBareJpeg(bytes) ? { ok: true, bytes, width, height } : fail("not-clean");
}
