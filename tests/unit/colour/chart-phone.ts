import { readFileSync } from "node:fs";
import { differenceCiede2000 } from "culori";
import * as z from "zod/mini";
import type { CellReading, Corners, Picture } from "../../../src/engine/colour/index.ts";

const Place = z.object({ x: z.number(), y: z.number() });

/** What fixtures/charts/make.py knows of phone.jpg: places are in pixels of the picture the right way up. */
export const phone = z
  .object({
    width: z.number(),
    height: z.number(),
    rows: z.number(),
    columns: z.number(),
    gap: z.number(),
    corners: z.tuple([Place, Place, Place, Place]),
    inks: z.array(z.string()),
    second: z.number(),
    glare: z.number(),
    blank: z.number(),
  })
  .parse(JSON.parse(readFileSync("fixtures/charts/phone.json", "utf8")));

export const corners: Corners = phone.corners;

/** A picture that lies on its left side, turned a quarter to the right. */
export function upright({ width, height, data }: Picture): Picture {
  const from = new Uint32Array(data.buffer, data.byteOffset, width * height);
  const to = new Uint32Array(width * height);
  for (let y = 0; y < width; y++)
    for (let x = 0; x < height; x++) to[y * height + x] = from[(height - 1 - x) * width + y] ?? 0;
  return { width: height, height: width, data: new Uint8ClampedArray(to.buffer) };
}

const apart = differenceCiede2000();

/** CIEDE2000, by culori, between a Lab colour and the one that a swatch was made with. */
export const missOf = (at: number, [l, a, b]: readonly [number, number, number]): number =>
  apart({ mode: "lab65", l, a, b }, phone.inks[at] ?? "");

/** The same for each swatch that has a colour. */
export const missesOf = (cells: readonly CellReading[]): readonly number[] =>
  cells.flatMap(({ lab }, at) => (lab ? missOf(at, [lab.l, lab.a, lab.b]) : []));
