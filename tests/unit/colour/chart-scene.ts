import { converter } from "culori";
import type { Corners, Lab, Picture, Point } from "../../../src/engine/colour/index.ts";

type Triple = readonly [number, number, number];

/** Chance with a seed (mulberry32), so that each chart is the same on every machine. */
export function dice(seed: number) {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const between = (from: number, to: number) => from + (to - from) * next();
  // Box–Muller.
  const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  return { next, between, normal };
}
export type Dice = ReturnType<typeof dice>;

/** Coloured light, as gains on linear red, green and blue, or on the eye's cones (Bradford's). */
export type Tint = Readonly<{ on: "channels" | "cones"; gains: Triple }>;

/** A round patch of mirrored lamp: where on the chart, in steps; how much white it adds. */
export type Glare = Readonly<{ x: number; y: number; radius: number; adds: number }>;

/** A chart as drawn and as photographed. Lengths on the chart are in steps: from one swatch's start to the next. */
export type ChartScene = Readonly<{
  seed: number;
  rows: number;
  columns: number;
  gap: number;
  labs: readonly Lab[];
  /** By swatch: a second colour over a share of its width, from the left. */
  seconds?: ReadonlyMap<number, Readonly<{ lab: Lab; share: number }>>;
  white: Lab;
  width: number;
  height: number;
  /** Radians: turned in the picture's plane, tipped backwards, turned sideways. */
  pose: Readonly<{ roll: number; pitch: number; yaw: number }>;
  /** Light at the far end of its slope ÷ at the near end, and the direction of the slope in radians. */
  light: Readonly<{ ratio: number; towards: number; exposure: number; tint: Tint }>;
  /** What reaches the paper in the shadow of a hand, by channel; the edge runs through a point at an angle. */
  shadow?: Readonly<{ x: number; y: number; angle: number; soft: number; dims: Triple }>;
  glare: readonly Glare[];
  /** The share of linear light that a ruled line in the middle of the gaps sends back; null without lines. */
  lines: number | null;
  /** Electrons that white is worth to the sensor (shot noise), and its read noise in linear light. */
  noise: Readonly<{ electrons: number; read: number }>;
}>;

const toLinear = converter("lrgb");
const toXyz = converter("xyz65");

/** Linear sRGB of a Lab colour, by culori. */
export function linearOfLab({ l, a, b }: Lab): Triple {
  const { r, g, b: blue } = toLinear({ mode: "lab65", l, a, b });
  return [r, g, blue];
}

const times = (m: readonly Triple[], [x, y, z]: Triple): Triple => {
  const [a = 0, b = 0, c = 0] = m.map((row) => row[0] * x + row[1] * y + row[2] * z);
  return [a, b, c];
};
// ICC.1:2010, Annex E: the Bradford matrix and its inverse, to the digits printed there and by its usual tables.
const toCones: readonly Triple[] = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];
const fromCones: readonly Triple[] = [
  [0.9869929, -0.1470543, 0.1599627],
  [0.4323053, 0.5183603, 0.0492912],
  [-0.0085287, 0.0400428, 0.9684867],
];

/** A colour in linear light under a tinted lamp. */
function tinted({ on, gains }: Tint, [r, g, b]: Triple): Triple {
  if (on === "channels") return [r * gains[0], g * gains[1], b * gains[2]];
  const { x, y, z } = toXyz({ mode: "lrgb", r, g, b });
  const cones = times(toCones, [x, y, z]);
  const [x2, y2, z2] = times(fromCones, [cones[0] * gains[0], cones[1] * gains[1], cones[2] * gains[2]]);
  const under = toLinear({ mode: "xyz65", x: x2, y: y2, z: z2 });
  return [under.r, under.g, under.b];
}

/** IEC 61966-2-1, as a byte. */
const encode = (v: number): number =>
  Math.round(255 * (v <= 0.0031308 ? 12.92 * Math.max(0, v) : 1.055 * Math.min(1, v) ** (1 / 2.4) - 0.055));

const sizeOf = ({ rows, columns, gap }: ChartScene) => ({ across: columns - gap, down: rows - gap });

/**
 * A pinhole camera over the chart: rays from pixels to the chart's plane, and back. Made of rotations and a
 * depth, so that it shares nothing with a homography solved from corners.
 */
export function cameraOf(scene: ChartScene) {
  const { across, down } = sizeOf(scene);
  const { roll, pitch, yaw } = scene.pose;
  const [cr, sr, cp, sp, cy, sy] = [roll, pitch, yaw].flatMap((t) => [Math.cos(t), Math.sin(t)]) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ]; // six entries by the line before
  // The chart's own axes as the camera sees them: Rz(roll) · Rx(pitch) · Ry(yaw).
  const turn = ([x, y, z]: Triple): Triple => {
    const [x1, z1] = [cy * x + sy * z, -sy * x + cy * z];
    const [y2, z2] = [cp * y - sp * z1, sp * y + cp * z1];
    return [cr * x1 - sr * y2, sr * x1 + cr * y2, z2];
  };
  const [e1, e2, normal] = [turn([1, 0, 0]), turn([0, 1, 0]), turn([0, 0, 1])];
  const diagonal = Math.hypot(across, down);
  const depth = 1.6 * diagonal;
  // Whatever the roll, the whole chart with some paper around it fits.
  const focal = (0.8 * Math.min(scene.width, scene.height) * depth) / diagonal;
  const dot = (a: Triple, b: Triple) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

  /** Where a pixel's ray meets the chart, in steps from its first corner. */
  const toChart = (px: number, py: number): readonly [number, number] => {
    const ray: Triple = [(px - scene.width / 2) / focal, (py - scene.height / 2) / focal, 1];
    const t = (depth * normal[2]) / dot(ray, normal);
    const hit: Triple = [ray[0] * t, ray[1] * t, ray[2] * t - depth];
    return [dot(hit, e1) + across / 2, dot(hit, e2) + down / 2];
  };
  const toPicture = (x: number, y: number): Point => {
    const [cx, cyy] = [x - across / 2, y - down / 2];
    const at: Triple = [e1[0] * cx + e2[0] * cyy, e1[1] * cx + e2[1] * cyy, e1[2] * cx + e2[2] * cyy + depth];
    return {
      x: (focal * at[0]) / at[2] + scene.width / 2,
      y: (focal * at[1]) / at[2] + scene.height / 2,
    };
  };
  const corners: Corners = [
    toPicture(0, 0),
    toPicture(across, 0),
    toPicture(across, down),
    toPicture(0, down),
  ];
  return { toChart, toPicture, corners };
}

const smooth = (t: number): number => {
  const s = Math.min(1, Math.max(0, t));
  return s * s * (3 - 2 * s);
};

/** The share of a patch's white that reaches a place of the chart: full in its middle, soft at its rim. */
export function glareAt({ x, y, radius }: Glare, px: number, py: number): number {
  const squared = (px - x) ** 2 + (py - y) ** 2;
  return squared >= radius ** 2 ? 0 : smooth((radius - Math.sqrt(squared)) / (0.35 * radius));
}

/** 0 in the light, 1 in the hand's shadow. */
export function shadowAt({ shadow }: ChartScene, px: number, py: number): number {
  if (!shadow) return 0;
  const across = (px - shadow.x) * Math.cos(shadow.angle) + (py - shadow.y) * Math.sin(shadow.angle);
  return smooth(0.5 + across / shadow.soft);
}

/** Light on a place of the chart: a lamp to one side, falling off with the square of the distance. */
function lampOf(scene: ChartScene): (x: number, y: number) => number {
  const { across, down } = sizeOf(scene);
  const { ratio, towards } = scene.light;
  const far = Math.hypot(across, down) / 2;
  // (d + far)² ÷ (d − far)² = ratio, in the plane of the lamp's direction.
  const root = Math.sqrt(ratio);
  const distance = ratio === 1 ? Number.POSITIVE_INFINITY : (far * (root + 1)) / (root - 1);
  return (x, y) => {
    if (distance === Number.POSITIVE_INFINITY) return 1;
    const along = (x - across / 2) * Math.cos(towards) + (y - down / 2) * Math.sin(towards);
    const aside = -(x - across / 2) * Math.sin(towards) + (y - down / 2) * Math.cos(towards);
    return (distance - far) ** 2 / ((distance - along) ** 2 + aside ** 2);
  };
}

/** The colour of a place of the chart in linear light, the lamp's tint on it, before its fall-off. */
function inkOf(scene: ChartScene): (x: number, y: number) => Triple {
  const { rows, columns, gap, lines, light } = scene;
  const under = (lab: Lab) => tinted(light.tint, linearOfLab(lab));
  const white = under(scene.white);
  const inks = scene.labs.map(under);
  const seconds = new Map(
    [...(scene.seconds ?? [])].map(([at, { lab, share }]) => [at, { ink: under(lab), share }]),
  );
  const desk = tinted(light.tint, [0.2, 0.14, 0.09]);
  const line: Triple = [white[0] * (lines ?? 1), white[1] * (lines ?? 1), white[2] * (lines ?? 1)];
  const nearLine = (at: number) => lines !== null && Math.abs(at - Math.floor(at) - (1 - gap / 2)) < 0.02;
  return (x, y) => {
    if (x < -0.6 || y < -0.6 || x > columns - gap + 0.6 || y > rows - gap + 0.6) return desk;
    const [column, row] = [Math.floor(x), Math.floor(y)];
    const isOn = column >= 0 && row >= 0 && column < columns && row < rows;
    if (isOn && x - column < 1 - gap && y - row < 1 - gap) {
      const second = seconds.get(row * columns + column);
      const ink = inks[row * columns + column] ?? white;
      return second && x - column < second.share * (1 - gap) ? second.ink : ink;
    }
    return nearLine(x) || nearLine(y) ? line : white;
  };
}

/** The photo of a scene: four rays a pixel, then the sensor's noise, then sRGB bytes. */
export function photograph(scene: ChartScene): Picture {
  const { width, height, light, noise } = scene;
  const { toChart } = cameraOf(scene);
  const [ink, lamp, chance] = [inkOf(scene), lampOf(scene), dice(scene.seed ^ 0x5eed)];
  const lampColour = tinted(light.tint, [1, 1, 1]);
  const data = new Uint8ClampedArray(4 * width * height);
  const offsets = [0.25, 0.75];
  for (let py = 0, at = 0; py < height; py++)
    for (let px = 0; px < width; px++, at += 4) {
      const sum: [number, number, number] = [0, 0, 0];
      for (const dy of offsets)
        for (const dx of offsets) {
          const [x, y] = toChart(px + dx, py + dy);
          const colour = ink(x, y);
          const lit = light.exposure * lamp(x, y);
          const shade = shadowAt(scene, x, y);
          const adds = scene.glare.reduce((all, one) => all + one.adds * glareAt(one, x, y), 0);
          for (const channel of [0, 1, 2] as const) {
            const dims = 1 - shade * (1 - (scene.shadow?.dims[channel] ?? 1));
            sum[channel] += (lit * dims * (colour[channel] + adds * lampColour[channel])) / 4;
          }
        }
      for (const channel of [0, 1, 2] as const) {
        const clean = sum[channel];
        const deviation = Math.sqrt(Math.max(0, clean) / noise.electrons + noise.read ** 2);
        data[at + channel] = encode(clean + deviation * chance.normal());
      }
      data[at + 3] = 255;
    }
  return { width, height, data };
}
