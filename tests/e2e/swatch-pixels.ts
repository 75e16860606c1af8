import type { Page } from "@playwright/test";
import { differenceCiede2000 } from "culori";

/** A part of a screenshot, in px of the screenshot. */
export type Region = Readonly<{ x: number; y: number; w: number; h: number }>;

/** How many pixels of a region have which colour, as `#rrggbb`. */
export type Tones = Readonly<Record<string, number>>;

/** Draws the page and counts the colours in each region, in the page itself: no decoder of ours is trusted. */
export async function tonesIn(page: Page, regions: readonly Region[]): Promise<readonly Tones[]> {
  const png = (await page.screenshot({ fullPage: true })).toString("base64");
  return page.evaluate(
    async ({ png, regions }) => {
      const bytes = Uint8Array.from(atob(png), (sign) => sign.charCodeAt(0));
      const picture = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
      const canvas = new OffscreenCanvas(picture.width, picture.height);
      const context = canvas.getContext("2d", { willReadFrequently: true });
      if (!context) throw new Error("no canvas to read pixels from");
      context.drawImage(picture, 0, 0);
      return regions.map(({ x, y, w, h }) => {
        const { data } = context.getImageData(x, y, w, h);
        // Counted as numbers: to write a million pixels out as text took longer than to draw them.
        const counts = new Map<number, number>();
        for (let i = 0; i < data.length; i += 4) {
          const tone = ((data[i] ?? 0) << 16) | ((data[i + 1] ?? 0) << 8) | (data[i + 2] ?? 0);
          counts.set(tone, (counts.get(tone) ?? 0) + 1);
        }
        return Object.fromEntries(
          [...counts].map(([tone, count]) => [`#${tone.toString(16).padStart(6, "0")}`, count]),
        );
      });
    },
    { png, regions },
  );
}

/** Source: the npm package culori 4, an implementation of CIEDE2000 that is not ours. */
const judge = differenceCiede2000();

/** The middle value of the pixels' differences from a colour. */
export function medianDifference(tones: Tones, hex: string): number {
  const rows = Object.entries(tones)
    .map(([tone, count]) => ({ count, difference: judge(tone, hex) }))
    .toSorted((a, b) => a.difference - b.difference);
  const half = rows.reduce((sum, row) => sum + row.count, 0) / 2;
  let seen = 0;
  for (const { count, difference } of rows) {
    seen += count;
    if (seen >= half) return difference;
  }
  return Number.NaN;
}

/** The largest difference of any pixel from a colour. */
export const worstDifference = (tones: Tones, hex: string): number =>
  Math.max(...Object.keys(tones).map((tone) => judge(tone, hex)));
