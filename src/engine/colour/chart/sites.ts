import { linearFromHex } from "../lab.ts";
import { type Homography, project } from "./homography.ts";
import type { Box } from "./layout.ts";
import type { Picture } from "./shapes.ts";

/** Linear light of each sRGB byte. */
const linearOfByte = Float64Array.from(
  { length: 256 },
  (_, byte) => linearFromHex(`#${byte.toString(16).padStart(2, "0").repeat(3)}`)[0],
);

/** Linear light, 0 to 1, of one byte of a picture. */
export const linearOf = (byte: number): number => linearOfByte[byte] ?? 0;

/** A picture and how the chart lies in it. */
export type Scene = Readonly<{ picture: Picture; map: Homography }>;

/** How many rows (v) and columns (u) of pixels to read in a box. */
export type Raster = Readonly<{ across: number; down: number }>;

const away = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(a.x - b.x, a.y - b.y);

/** As many places as a box has pixels either way in the picture, but no more than `most`; 0 if not even one. */
export function rasterOf({ map }: Scene, { u0, u1, v0, v1 }: Box, most: Raster): Raster {
  const [u, v] = [(u0 + u1) / 2, (v0 + v1) / 2];
  const across = away(project(map, u0, v), project(map, u1, v));
  const down = away(project(map, u, v0), project(map, u, v1));
  return { across: Math.min(most.across, Math.floor(across)), down: Math.min(most.down, Math.floor(down)) };
}

/** Where a pixel's bytes start; −1 outside the picture. */
const startOf = ({ width, height }: Picture, x: number, y: number): number =>
  x >= 0 && y >= 0 && x < width && y < height ? 4 * (Math.floor(y) * width + Math.floor(x)) : -1;

/**
 * Where the bytes of each pixel of a box start, row by row of the chart, evenly spread over it; −1 for those
 * outside the picture. `into` is written over, since there is one such list for each of thousands of boxes.
 */
export function placeSites(scene: Scene, box: Box, raster: Raster, into: Int32Array): void {
  const { picture, map } = scene;
  const stepU = (box.u1 - box.u0) / raster.across;
  const stepV = (box.v1 - box.v0) / raster.down;
  for (let row = 0, site = 0; row < raster.down; row++) {
    const v = box.v0 + (row + 0.5) * stepV;
    for (let column = 0; column < raster.across; column++, site++) {
      // As in `project`, without an object for each pixel.
      const u = box.u0 + (column + 0.5) * stepU;
      const w = map[6] * u + map[7] * v + map[8];
      const x = (map[0] * u + map[1] * v + map[2]) / w;
      const y = (map[3] * u + map[4] * v + map[5]) / w;
      into[site] = startOf(picture, x, y);
    }
  }
}

/** A byte this high or higher may have been higher still, before the camera cut it off. */
export const highestByte = 254;
