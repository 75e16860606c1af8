import type { Lab } from "../../../src/engine/colour/index.ts";
import { type ChartScene, type Dice, dice, type Glare, linearOfLab, type Tint } from "./chart-scene.ts";

/** A colour that sRGB can show with a little room, and that is not the paper's own. */
function someInk({ between }: Dice): Lab {
  for (;;) {
    const lab: Lab = { white: "D65", l: between(18, 90), a: between(-75, 80), b: between(-80, 85) };
    const linear = linearOfLab(lab);
    if (Math.min(...linear) > 0.004 && Math.max(...linear) < 0.9) return lab;
  }
}

/** By number: neutral, warm and cool light; a little of it acts on cones, since no two cameras agree. */
const tints: readonly Tint[] = [
  { on: "channels", gains: [1, 1, 1] },
  { on: "channels", gains: [1, 0.86, 0.66] },
  { on: "channels", gains: [0.8, 0.93, 1] },
  { on: "cones", gains: [1, 0.97, 0.85] },
  { on: "cones", gains: [0.95, 0.98, 1.05] },
];

export const none: Tint = { on: "channels", gains: [1, 1, 1] };

const neutral: Lab = { white: "D65", l: 96, a: 0, b: 0 };

/** Glare on some swatches: a lamp's image over a part of one, from a fifth to three quarters of its width. */
const someGlare = ({ between }: Dice, rows: number, columns: number, count: number): readonly Glare[] =>
  Array.from({ length: count }, () => ({
    x: Math.floor(between(0, columns)) + between(0.1, 0.65),
    y: Math.floor(between(0, rows)) + between(0.1, 0.65),
    radius: between(0.1, 0.35),
    adds: between(0.25, 1.2),
  }));

/**
 * Chart `seed`: perspective up to about 25° either way and any roll, light that falls off up to 2 : 1, a warm or
 * cool tint, noise as of a phone indoors; on every other one glare, on every third a hand's shadow, on every
 * fourth ruled lines between the swatches.
 */
export function sceneOf(seed: number): ChartScene {
  const chance = dice(seed);
  const { between } = chance;
  const [rows, columns] = [Math.floor(between(3, 8)), Math.floor(between(3, 10))];
  const edge = { x: between(0, columns), y: between(0, rows), angle: between(0, 2 * Math.PI) };
  const depth = between(0.35, 0.6);
  return {
    seed,
    rows,
    columns,
    gap: between(0.15, 0.35),
    labs: Array.from({ length: rows * columns }, () => someInk(chance)),
    white: neutral,
    width: 720,
    height: 560,
    pose: { roll: between(-Math.PI, Math.PI), pitch: between(-0.45, 0.45), yaw: between(-0.45, 0.45) },
    light: {
      ratio: between(1.2, 2),
      towards: between(0, 2 * Math.PI),
      exposure: between(0.75, 0.95),
      tint: tints[seed % tints.length] ?? none,
    },
    ...(seed % 3 === 1 && {
      shadow: { ...edge, soft: between(0.1, 0.5), dims: [depth, depth * 1.03, depth * 1.08] as const },
    }),
    glare: seed % 2 === 0 ? someGlare(chance, rows, columns, 4) : [],
    lines: seed % 4 === 3 ? 0.12 : null,
    noise: { electrons: between(1500, 6000), read: 0.003 },
  };
}
