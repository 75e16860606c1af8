import { isGtin } from "../../engine/supply/index.ts";
import type { PhotoFault } from "../photo/fault.ts";
import { onCanvas, unpackPhoto } from "../photo/redraw.ts";
import { greysOf, readBarCode } from "./read.ts";

/** What a photo of a bar code gave: its number, or null where none was seen in it. */
export type CodeRead =
  | Readonly<{ ok: true; code: string | null }>
  | Readonly<{ ok: false; fault: PhotoFault }>;

/** What is used of the browser's own reader, where it has one. */
type Detector = Readonly<{
  detect: (picture: ImageBitmap) => Promise<readonly Readonly<{ rawValue: string }>[]>;
}>;
type Detectors = Readonly<{
  BarcodeDetector?: new (options: Readonly<{ formats: readonly string[] }>) => Detector;
}>;

const { BarcodeDetector } = globalThis as Detectors; // not among the types: few browsers have it

/** What the browser's own reader sees; null where there is none, or it sees nothing. */
async function seenByBrowser(picture: ImageBitmap): Promise<string | null> {
  try {
    const detector = BarcodeDetector && new BarcodeDetector({ formats: ["ean_13", "ean_8", "upc_a"] });
    const seen = (await detector?.detect(picture)) ?? [];
    return seen.map(({ rawValue }) => rawValue).find(isGtin) ?? null;
  } catch {
    return null; // it is there in name only, as without the system's own part of it
  }
}

/** The sides that a picture is looked at with, in pixels: bars blurred or noisy at one are clear at another. */
const sides = [1_600, 800];

/** The number in a picture. The bitmap is closed. */
async function codeIn(picture: ImageBitmap, longest: readonly number[]): Promise<string | null> {
  const seen = await seenByBrowser(picture);
  if (seen !== null) {
    picture.close();
    return seen;
  }
  for (const [index, side] of longest.entries()) {
    const isLast = index === longest.length - 1;
    const canvas = onCanvas(isLast ? picture : await createImageBitmap(picture), side);
    const pixels = canvas.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height);
    const code = pixels ? readBarCode(greysOf(pixels)) : null;
    if (code !== null) {
      picture.close();
      return code;
    }
  }
  return null;
}

export const codeInFrame = (frame: ImageBitmap): Promise<string | null> => codeIn(frame, [1_280]);

export async function codeInPhoto(file: Uint8Array<ArrayBuffer>): Promise<CodeRead> {
  const picture = await unpackPhoto(file);
  return typeof picture === "string"
    ? { ok: false, fault: picture }
    : { ok: true, code: await codeIn(picture, sides) };
}
