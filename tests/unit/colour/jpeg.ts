import { createRequire } from "node:module";
import type { Picture } from "../../../src/engine/colour/index.ts";

/** The JPEG coder in plain JavaScript (jpeg-js) that the browser driver brings along for its own screenshots. */
type Coder = Readonly<{
  encode: (picture: Picture, quality: number) => Readonly<{ data: Uint8Array }>;
  decode: (file: Uint8Array) => Readonly<{ width: number; height: number; data: Uint8Array }>;
}>;

const { jpegjs }: { jpegjs: Coder } = createRequire(import.meta.url)("playwright-core/lib/utilsBundle");

export function decodeJpeg(file: Uint8Array): Picture {
  const { width, height, data } = jpegjs.decode(file);
  return { width, height, data: Uint8ClampedArray.from(data) };
}

export const encodeJpeg = (picture: Picture, quality: number): Uint8Array =>
  jpegjs.encode(picture, quality).data;
