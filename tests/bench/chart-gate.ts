import { createChartSession } from "../../src/workers/chart/session.ts";
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

/**
 * From a 12-megapixel JPEG to the colours of its chart by the session that the app's thread for photos runs: looked at,
 * unpacked, made a picture to mark, and of that the engine's reading alone.
 */
export async function readChartPhoto(runs: number) {
  const { scene, blob } = await photoFile();
  const { rows, columns, gap } = scene;
  const marks = { corners: cameraOf(scene).corners, rows, columns, gap };
  const session = createChartSession();
  const [whole, reading]: [number[], number[]] = [[], []];
  for (let run = 0; run < runs; run += 1) {
    const began = performance.now();
    const opened = await session.open(blob);
    if (!opened.ok) throw new Error(opened.fault);
    reading.push(
      await timed(() => {
        const read = session.read(marks, "en");
        if (!read?.ok) throw new Error(read?.fault.problem);
      }),
    );
    whole.push(performance.now() - began);
    opened.view.close();
  }
  return { whole, reading, bytes: blob.size };
}
