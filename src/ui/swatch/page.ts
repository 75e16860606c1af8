import type { Surface } from "./drawing.ts";
import type { Box } from "./path.ts";
import { hash, type Random, randomFrom } from "./random.ts";
import { lab } from "./shade.ts";

/** How much is drawn: under 34 px the gesture only, to 150 a sketch, above that everything. */
export type Level = "gesture" | "sketch" | "full";

/** What a family's hand is given to draw on. */
export type Page = Readonly<{
  width: number;
  height: number;
  level: Level;
  /** Where marks go: the page less its margin. */
  box: Box;
  random: Random;
  /** What shows between the marks. */
  ground: Surface;
  /** Pixels to a millimetre: 96 / 25.4 where things are shown in true size. */
  mm: number;
}>;

/** The chip's paper in light, for mixing thin coats; the same in every theme, so that colours are too. */
export const paper = lab(98.9, -0.3, 1.4);

const levelOf = (size: number): Level => (size < 34 ? "gesture" : size <= 150 ? "sketch" : "full");

export function pageOf(
  size: Readonly<{ width: number; height: number; scale?: number | undefined }>,
  seed: string,
  ground: Surface,
): Page {
  const { width, height, scale = 1 } = size;
  const least = Math.min(width, height);
  const margin = least < 34 ? 2 : 2 + 0.08 * least;
  return {
    width,
    height,
    level: levelOf(least),
    box: { x: margin, y: margin, w: width - 2 * margin, h: height - 2 * margin },
    random: randomFrom(hash(seed)),
    ground,
    mm: (96 / 25.4) * scale,
  };
}

/** A number from `low` to `high`. */
export const within = (random: Random, low: number, high: number) => low + (high - low) * random();

/** How fine bristles and tooth are: grows with the square root of height; 1 at 96 px. */
export const grain = (page: Page) => Math.sqrt(page.height / 96);

/** `count` values made by `make`. */
export const times = <T>(count: number, make: (i: number) => T): T[] =>
  Array.from({ length: Math.max(0, Math.round(count)) }, (_, i) => make(i));
