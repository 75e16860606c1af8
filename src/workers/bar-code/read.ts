import { isGtin } from "../../engine/supply/index.ts";
import { type Greys, type Line, profileAlong, runsIn } from "./runs.ts";
import { symbolsIn } from "./symbols.ts";

/** How many lines are laid across a picture in each direction. */
const linesAcross = 40;

/** Directions in degrees: a code may be held any way round. */
const directions = [0, 90, 45, 135, 22, 158, 68, 112];

/** How much of a line's contrast is a turn: with little, narrow bars that have blurred are seen; with more, noise is not. */
const shares = [0.1, 0.2, 0.35];

/** As many lines must say the same number: one alone may be chance. */
const agreeing = 2;

/** Lines in one direction, evenly over the picture. */
function linesIn({ width, height }: Greys, degrees: number): readonly Line[] {
  const [dx, dy] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const across = Math.abs(width * dy) + Math.abs(height * dx);
  return Array.from({ length: linesAcross }, (_, index) => {
    const aside = ((index + 0.5) / linesAcross - 0.5) * across;
    return clipped(width, height, { x: width / 2 - aside * dy, y: height / 2 + aside * dx, dx, dy });
  }).filter(({ length }) => length > 60);
}

/** The part of an endless line that lies over the picture. */
function clipped(width: number, height: number, { x, y, dx, dy }: Omit<Line, "length">): Line {
  const span = (from: number, by: number, size: number): readonly [number, number] => {
    if (Math.abs(by) < 1e-9) return from >= 0 && from < size ? [-Infinity, Infinity] : [0, 0];
    const ends = [-from / by, (size - 1 - from) / by].toSorted((a, b) => a - b);
    return [ends[0] ?? 0, ends[1] ?? 0];
  };
  const [ofX, ofY] = [span(x, dx, width), span(y, dy, height)];
  const [from, to] = [Math.max(ofX[0], ofY[0]), Math.min(ofX[1], ofY[1])];
  return { x: x + from * dx, y: y + from * dy, dx, dy, length: Math.max(0, Math.floor(to - from)) };
}

/** Numbers along a line, either way round, with the right check digit; each once. */
function numbersAlong(greys: Greys, line: Line): ReadonlySet<string> {
  const profile = profileAlong(greys, line);
  const found = shares.flatMap((share) => {
    const runs = runsIn(profile, share);
    const padded = runs.length % 2 === 0 ? [...runs, 0] : runs; // light at both ends
    return [...symbolsIn(padded), ...symbolsIn(padded.toReversed())];
  });
  return new Set(found.filter(isGtin));
}

/**
 * The number under the bar code in a picture: EAN-13, EAN-8 or UPC-A (as the EAN-13 that it is), any way round.
 * @returns null where there is none that two lines agree on
 */
export function readBarCode(greys: Greys): string | null {
  const votes = new Map<string, number>();
  for (const degrees of directions)
    for (const line of linesIn(greys, degrees))
      for (const number of numbersAlong(greys, line)) {
        const count = (votes.get(number) ?? 0) + 1;
        if (count >= agreeing) return number;
        votes.set(number, count);
      }
  return null;
}

/** The greys of pixels, as the eye weighs them (ITU-R BT.601). */
export function greysOf({
  data,
  width,
  height,
}: Readonly<{ data: Uint8ClampedArray; width: number; height: number }>): Greys {
  const greys = new Uint8Array(width * height);
  for (let at = 0; at < greys.length; at += 1) {
    const [red = 0, green = 0, blue = 0] = [data[4 * at], data[4 * at + 1], data[4 * at + 2]];
    greys[at] = 0.299 * red + 0.587 * green + 0.114 * blue;
  }
  return { data: greys, width, height };
}
