import {
  type ChartPhoto,
  type ChartReading,
  type Picture,
  type Point,
  paperSpot,
  readChart,
} from "../../engine/colour/index.ts";
import type { Language, Outcome } from "../../engine/record/index.ts";
import type { PhotoFault } from "../photo/fault.ts";
import { unpackPhoto } from "../photo/redraw.ts";

/** A photo as the page sees it: its size in pixels the right way up, and a smaller picture of it to look at. */
export type ChartOpened =
  | Readonly<{ ok: true; width: number; height: number; view: ImageBitmap }>
  | Readonly<{ ok: false; fault: PhotoFault }>;

/** What a person says of the photo; places are in pixels of the size that `open` told. */
export type ChartMarks = Omit<ChartPhoto, "picture">;

/** Pixels that are read at the most: more would only take room. A larger photo is made smaller, evenly. */
const mostPixels = 16_000_000;
/** The longer side of the picture to look at. */
const viewSide = 2_048;

/** The bitmap's pixels, no more than `mostPixels` of them, as sRGB on white. The bitmap is closed. */
function pixelsOf(bitmap: ImageBitmap): Picture {
  const scale = Math.min(1, Math.sqrt(mostPixels / (bitmap.width * bitmap.height)));
  const [width, height] = [Math.floor(bitmap.width * scale), Math.floor(bitmap.height * scale)];
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext("2d", { willReadFrequently: true, colorSpace: "srgb" });
  if (!context) throw new Error("this browser gives a worker no canvas");
  context.fillStyle = "#fff";
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = "high";
  context.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  const { data } = context.getImageData(0, 0, width, height);
  return { width, height, data: new Uint8ClampedArray(data.buffer) };
}

function viewOf({ width, height, data }: Picture): Promise<ImageBitmap> {
  const scale = Math.min(1, viewSide / Math.max(width, height));
  return createImageBitmap(new ImageData(data as Uint8ClampedArray<ArrayBuffer>, width, height), {
    resizeWidth: Math.max(1, Math.round(width * scale)),
    resizeHeight: Math.max(1, Math.round(height * scale)),
    resizeQuality: "medium",
  });
}

/** The photo of a swatch chart that is being read. Only its pixels are held, and only for as long as the thread runs. */
export function createChartSession() {
  let picture: Picture | null = null;
  return {
    async open(file: Blob): Promise<ChartOpened> {
      picture = null;
      const bitmap = await unpackPhoto(new Uint8Array(await file.arrayBuffer()));
      if (typeof bitmap === "string") return { ok: false, fault: bitmap };
      picture = pixelsOf(bitmap);
      const { width, height } = picture;
      return { ok: true, width, height, view: await viewOf(picture) };
    },

    /** A first guess at a spot of bare paper. */
    paperSpot: (marks: ChartMarks): Point | null => picture && paperSpot({ ...marks, picture }),

    /** Reads every swatch, and says in a language what stands in the way; null before a photo was opened. */
    read: (marks: ChartMarks, language: Language): Outcome<ChartReading> | null =>
      picture && readChart({ ...marks, picture }, language),
  };
}

export type ChartSession = ReturnType<typeof createChartSession>;
