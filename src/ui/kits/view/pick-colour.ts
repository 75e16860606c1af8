import {
  deltaE2000,
  hexFromLab,
  type Lab,
  labFromLinear,
  linearFromHex,
} from "../../../engine/colour/index.ts";

/** Pixels as a canvas gives them: red, green, blue and alpha, 0–255, row by row. */
export type Pixels = Readonly<{ data: Uint8ClampedArray; width: number; height: number }>;

export type Spot = Readonly<{ x: number; y: number }>;

/** What a spot of a photo shows: its mean colour, and how far nine in ten of its pixels lie from it at most (ΔE00). */
export type Picked = Readonly<{ hex: string; spread: number }>;

type Linear = readonly [number, number, number];

/** Share of light that white paper throws back. Common practice, no source. */
const paperWhite = 0.87;

/** A white whose brightest channel is at the end of the scale says nothing of the light any more. */
const clippedFrom = 0.98;

const two = (value: number): string => value.toString(16).padStart(2, "0");

/** The pixels of a small disc, in linear light. */
function discOf({ data, width, height }: Pixels, { x, y }: Spot, radius: number): readonly Linear[] {
  const found: Linear[] = [];
  for (let row = Math.max(0, y - radius); row <= Math.min(height - 1, y + radius); row += 1)
    for (let column = Math.max(0, x - radius); column <= Math.min(width - 1, x + radius); column += 1) {
      if ((row - y) ** 2 + (column - x) ** 2 > radius ** 2) continue;
      const at = (row * width + column) * 4;
      const [red = 0, green = 0, blue = 0] = data.subarray(at, at + 3);
      found.push(linearFromHex(`#${two(red)}${two(green)}${two(blue)}`));
    }
  return found;
}

const mean = (all: readonly Linear[], channel: 0 | 1 | 2): number =>
  all.reduce((sum, one) => sum + one[channel], 0) / Math.max(1, all.length);

const meanOf = (all: readonly Linear[]): Linear => [mean(all, 0), mean(all, 1), mean(all, 2)];

/** The light that a white spot stands in; null where it is too bright, or too dark, to tell. */
export function whiteAt(pixels: Pixels, spot: Spot, radius: number): Linear | null {
  const light = meanOf(discOf(pixels, spot, radius));
  return Math.max(...light) > clippedFrom || Math.min(...light) < 0.02 ? null : light;
}

/** In the light of the white: channel by channel, with white paper at its own lightness. */
const underWhite = ([r, g, b]: Linear, white: Linear | null): Linear => {
  const share = (value: number, of: number) => Math.min(1, (value / of) * paperWhite);
  return white ? [share(r, white[0]), share(g, white[1]), share(b, white[2])] : [r, g, b];
};

/**
 * The colour of a spot: the mean of a small disc in linear light, since means of coded values come out too dark.
 * @param white the light as a white spot shows it; null leaves the photo's own light in
 */
export function pickColour(pixels: Pixels, spot: Spot, radius: number, white: Linear | null): Picked {
  const all = discOf(pixels, spot, radius).map((pixel) => underWhite(pixel, white));
  const lab: Lab = labFromLinear([...meanOf(all)]);
  const apart = all.map((pixel) => deltaE2000(lab, labFromLinear([...pixel]))).toSorted((a, b) => a - b);
  return { hex: hexFromLab(lab), spread: apart[Math.floor(apart.length * 0.9)] ?? 0 };
}
