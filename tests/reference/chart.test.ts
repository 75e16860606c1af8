import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { corners, missesOf as missesOfInks, phone, upright } from "../unit/colour/chart-phone.ts";
import { isSpoilt, missesOf, photoOf, quantile, readingOf } from "../unit/colour/chart-read.ts";
import { photograph } from "../unit/colour/chart-scene.ts";
import { sceneOf } from "../unit/colour/chart-scenes.ts";
import { decodeJpeg, encodeJpeg } from "../unit/colour/jpeg.ts";

/**
 * Source: the charts themselves. Their colours are chosen first and made light by culori 4.0; a pinhole camera of
 * the tests' own then photographs them. Nothing of the engine takes part in it.
 */
const read = Array.from({ length: 48 }, (_, at) => {
  const scene = sceneOf(at + 1);
  // Every other photo has been a JPEG file on its way, as nearly every real one has.
  const raw = photograph(scene);
  const picture = at % 2 === 0 ? raw : decodeJpeg(encodeJpeg(raw, 88));
  return { scene, reading: readingOf(photoOf(scene, picture)) };
});
const cells = read.flatMap(({ scene, reading }) => reading.cells.map((cell) => ({ scene, cell })));
const misses = read.flatMap(({ scene, reading }) => missesOf(scene, reading.cells));

describe("48 charts with known colours, under perspective, uneven and tinted light, noise, glare and shadow", () => {
  it("come back with a median dE00 under 2 and a 95th percentile under 5", () => {
    expect(misses.length).toBeGreaterThan(1300);
    expect(quantile(misses, 0.5)).toBeLessThan(2);
    expect(quantile(misses, 0.95)).toBeLessThan(5);
  });
  it("and better than that, as they do now", () => {
    expect(quantile(misses, 0.5)).toBeLessThan(0.5);
    expect(quantile(misses, 0.95)).toBeLessThan(1.5);
    expect(Math.max(...misses)).toBeLessThan(5);
  });
  it("no chart as a whole is worse than that", () => {
    for (const { scene, reading } of read) {
      const own = missesOf(scene, reading.cells);
      expect({ seed: scene.seed, good: quantile(own, 0.5) < 2 && quantile(own, 0.95) < 5 }).toEqual({
        seed: scene.seed,
        good: true,
      });
    }
  });
  it("few swatches are in doubt, and nearly all of these were spoilt or beyond sRGB", () => {
    const doubtful = cells.filter(({ cell }) => cell.doubts.length > 0);
    expect(doubtful.length).toBeGreaterThan(20);
    expect(doubtful.length / cells.length).toBeLessThan(0.06);
    const unfounded = doubtful.filter(
      ({ scene, cell }) => !cell.doubts.includes("clipped") && !isSpoilt(scene, cell),
    );
    expect(unfounded.length / doubtful.length).toBeLessThan(0.1);
  });
  it("one in doubt has no colour, and one without doubt has one", () => {
    for (const { cell } of cells) expect(cell.lab === null).toBe(cell.doubts.length > 0);
  });
});

// Source: fixtures/charts/README.md, encoded by Chromium's canvas and by ImageMagick.
describe("the same from a file", () => {
  it.each([
    { file: "chart-101-canvas.jpg", seed: 101 },
    { file: "chart-104-magick.jpg", seed: 104 },
  ])("$file", ({ file, seed }) => {
    const scene = sceneOf(seed);
    const { cells } = readingOf(photoOf(scene, decodeJpeg(readFileSync(`fixtures/charts/${file}`))));
    const own = missesOf(scene, cells);
    expect(own.length).toBeGreaterThanOrEqual(0.9 * cells.length);
    expect(quantile(own, 0.5)).toBeLessThan(2);
    expect(quantile(own, 0.95)).toBeLessThan(5);
  });
});

// Source: fixtures/charts/make.py, which chooses the colours, photographs them with a camera of its own and has Pillow
// encode them. Here the file is decoded by the tests' own decoder and turned by hand; in the browser by the browser.
describe("a photo as a phone saves it", () => {
  const { rows, columns, gap, second, glare, blank } = phone;
  const picture = upright(decodeJpeg(readFileSync("fixtures/charts/phone.jpg")));
  const { cells } = readingOf({ picture, corners, rows, columns, gap });

  it("has the colours that it was made with", () => {
    const misses = missesOfInks(cells);
    expect(misses.length).toBeGreaterThanOrEqual(21);
    expect(quantile(misses, 0.5)).toBeLessThan(2);
    expect(quantile(misses, 0.95)).toBeLessThan(5);
  });
  it("has none where two colours, glare or nothing is", () => {
    const doubts = (at: number) => cells[at]?.doubts;
    expect(doubts(second)).toContain("uneven");
    expect(doubts(glare)).toContain("glare");
    expect(doubts(blank)).toEqual(["empty"]);
  });
});
