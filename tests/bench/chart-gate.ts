import { readChart } from "../../src/engine/colour/index.ts";
import { cameraOf, photograph } from "../unit/colour/chart-scene.ts";
import { sceneOf } from "../unit/colour/chart-scenes.ts";
import { timed } from "./timing.ts";

/** A JPEG of a photographed chart with known colours, 4000 × 3000. */
async function photoFile() {
  const scene = { ...sceneOf(104), width: 4000, height: 3000 };
  const { width, height, data } = photograph(scene);
  const canvas = new OffscreenCanvas(width, height);
  canvas.getContext("2d")?.putImageData(new ImageData(new Uint8ClampedArray(data), width, height), 0, 0);
  return { scene, blob: await canvas.convertToBlob({ type: "image/jpeg", quality: 0.92 }) };
}

async function pixelsOf(blob: Blob): Promise<ImageData> {
  const bitmap = await createImageBitmap(blob, { colorSpaceConversion: "default" });
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) throw new Error("no canvas");
  context.drawImage(bitmap, 0, 0);
  return context.getImageData(0, 0, bitmap.width, bitmap.height);
}

/** From a 12-megapixel JPEG to the colours of its chart: decoding, and of that the engine's reading alone. */
export async function readChartPhoto(runs: number) {
  const { scene, blob } = await photoFile();
  const [whole, reading]: [number[], number[]] = [[], []];
  for (let run = 0; run < runs; run += 1) {
    const began = performance.now();
    const picture = await pixelsOf(blob);
    reading.push(
      await timed(() => {
        const { rows, columns, gap } = scene;
        const read = readChart({ picture, corners: cameraOf(scene).corners, rows, columns, gap });
        if (!read.ok) throw new Error(read.fault.problem);
      }),
    );
    whole.push(performance.now() - began);
  }
  return { whole, reading, bytes: blob.size };
}
