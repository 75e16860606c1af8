import { expect, it } from "vitest";
import { missesOf, photoOf, quantile, readingOf } from "../unit/colour/chart-read.ts";
import { type ChartScene, dice, photograph, type Tint } from "../unit/colour/chart-scene.ts";
import { none, sceneOf } from "../unit/colour/chart-scenes.ts";

// Source: the charts themselves, as in chart.test.ts: colours chosen first and made light by culori, photographed by
// the tests' own camera. There all causes come together; here each stands alone, and stronger.

/** A chart of the other tests without anything that spoils it: seen at a slant, in even white light. */
function clean(seed: number): ChartScene {
  const { shadow: _, ...scene } = sceneOf(seed);
  const light = { ratio: 1, towards: 0, exposure: 0.9, tint: none };
  return { ...scene, light, glare: [], lines: null, noise: { electrons: 20_000, read: 0.001 } };
}

const tinted = (tint: Tint) => (scene: ChartScene) => ({ ...scene, light: { ...scene.light, tint } });

function glared(scene: ChartScene): ChartScene {
  const { between } = dice(scene.seed);
  const glare = Array.from({ length: 12 }, () => ({
    x: between(0, scene.columns),
    y: between(0, scene.rows),
    radius: between(0.15, 0.5),
    adds: between(0.1, 1.5),
  }));
  return { ...scene, glare };
}

type Cause = readonly [string, (scene: ChartScene) => ChartScene, Readonly<{ least: number }>];

/** `least`: the share of swatches that have a colour. Glare costs some: they are in doubt, and have none. */
const causes: readonly Cause[] = [
  ["nothing", (scene) => scene, { least: 0.99 }],
  [
    "noise of a phone by candlelight",
    (scene) => ({ ...scene, noise: { electrons: 80, read: 0.01 } }),
    { least: 0.9 },
  ],
  ["lamplight", tinted({ on: "channels", gains: [1, 0.72, 0.38] }), { least: 0.95 }],
  [
    "lamplight, as eyes and not cameras see it",
    tinted({ on: "cones", gains: [1, 0.9, 0.6] }),
    { least: 0.9 },
  ],
  ["a blue sky", tinted({ on: "channels", gains: [0.66, 0.85, 1] }), { least: 0.95 }],
  [
    "a lamp on one side",
    (scene) => ({ ...scene, light: { ...scene.light, ratio: 3, towards: 1 } }),
    { least: 0.97 },
  ],
  ["glare here and there", glared, { least: 0.6 }],
];

it.each(causes)("%s: a median dE00 under 2, a 95th percentile under 5", (_, spoil, { least }) => {
  const read = [11, 12].map((seed) => {
    const scene = spoil(clean(seed));
    return { scene, cells: readingOf(photoOf(scene, photograph(scene))).cells };
  });
  const misses = read.flatMap(({ scene, cells }) => missesOf(scene, cells));
  expect(quantile(misses, 0.5)).toBeLessThan(2);
  expect(quantile(misses, 0.95)).toBeLessThan(5);
  const all = read.reduce((sum, { cells }) => sum + cells.length, 0);
  expect(misses.length / all).toBeGreaterThan(least);
});
