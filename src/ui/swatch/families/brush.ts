import type { Lab } from "../../../engine/colour/index.ts";
import type { SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import { grain, type Page, times, within } from "../page.ts";
import { curve, dash, line, type Point, polygon } from "../path.ts";
import { type Hex, hex, lab, shade } from "../shade.ts";

type Shape = "round" | "flat" | "filbert" | "mop" | "liner" | "fan" | "angle" | "wash";

/** Hair length in widths of the ferrule, and the outline of the upper half: x along, y across, 0 to 1. */
const hairs: Readonly<
  Record<Shape, Readonly<{ length: number; top: readonly Point[]; foot?: readonly Point[] }>>
> = {
  round: {
    length: 2.7,
    top: [
      [0, 0.8],
      [0.2, 0.98],
      [0.42, 1],
      [0.64, 0.82],
      [0.84, 0.42],
      [1, 0.04],
    ],
  },
  flat: {
    length: 1.45,
    top: [
      [0, 0.94],
      [0.5, 1],
      [0.98, 1.02],
      [1, 0.98],
    ],
  },
  filbert: {
    length: 1.5,
    top: [
      [0, 0.9],
      [0.45, 1.02],
      [0.72, 0.98],
      [0.9, 0.68],
      [1, 0.16],
    ],
  },
  mop: {
    length: 1.9,
    top: [
      [0, 0.7],
      [0.22, 1.18],
      [0.48, 1.38],
      [0.72, 1.14],
      [0.9, 0.6],
      [1, 0.12],
    ],
  },
  liner: {
    length: 6,
    top: [
      [0, 0.8],
      [0.3, 0.86],
      [0.65, 0.58],
      [1, 0.05],
    ],
  },
  fan: {
    length: 1.5,
    top: [
      [0, 0.9],
      [0.4, 1.3],
      [0.82, 2.3],
      [0.94, 1.5],
      [1, 0.3],
    ],
  },
  angle: {
    length: 1.5,
    top: [
      [0, 0.94],
      [0.5, 1],
      [0.58, 1],
    ],
    foot: [
      [0, 0.94],
      [0.5, 1],
      [1, 1.02],
    ],
  },
  wash: {
    length: 0.95,
    top: [
      [0, 0.96],
      [0.5, 1],
      [0.98, 1.02],
      [1, 1],
    ],
  },
};

const hairTone = { natural: lab(36, 15, 22), synthetic: lab(58, 22, 42), mixed: lab(47, 18, 32) } as const;
const lacquers: readonly Lab[] = [lab(27, -8, 1), lab(28, 30, 17), lab(24, 1, -16), lab(27, 7, 11)];
const barrel = lab(86, -3, -3);
const steel = lab(74, -0.6, -0.4);

/** Sizes in px: half the ferrule's width, and where hair, ferrule and handle begin. */
type Build = Readonly<{
  y: number;
  half: number;
  hair: number;
  ferrule: number;
  tip: number;
  handle: number;
}>;

/** True size where it fits; the belly of the hair lies over the middle, so that a pair cuts through it. */
function build(shape: Shape, widthMm: number | null | undefined, page: Page): Build {
  const { box } = page;
  const flare = shape === "fan" ? 2.3 : shape === "mop" ? 1.4 : 1;
  const wanted = page.level === "gesture" ? 0.8 * box.h : widthMm ? widthMm * page.mm : 0.22 * box.h;
  const wide = Math.max(0.05 * box.h, Math.min(wanted, (0.86 * box.h) / flare));
  const length = Math.min(hairs[shape].length * wide, 0.62 * box.w);
  const centre = page.width > 2 * page.height ? 0.5 * page.width : box.x + box.w - 0.52 * length;
  const hair = Math.max(box.x + 0.16 * box.w, centre - 0.5 * length);
  const ferrule = hair - Math.min(1.35 * wide + 0.03 * box.w, 0.26 * box.w);
  const handle = ferrule - (3.4 * wide + 70 * (page.mm / 3.78));
  return {
    y: page.height / 2,
    half: wide / 2,
    hair,
    ferrule,
    tip: Math.min(hair + length, box.x + box.w),
    handle,
  };
}

function hairShape(shape: Shape, b: Build): Point[] {
  const { top, foot = top } = hairs[shape];
  const at =
    (side: number) =>
    ([x, y]: Point): Point => [b.hair + x * (b.tip - b.hair), b.y + side * y * b.half];
  return [...top.map(at(-1)), ...foot.toReversed().map(at(1))];
}

function strands(shape: Shape, b: Build, page: Page): string {
  const { random } = page;
  const pointed = shape === "round" || shape === "liner" || shape === "mop" || shape === "filbert";
  const count = Math.min(26, Math.max(3, b.half / (0.9 * grain(page))));
  return times(count, (i) => {
    const across = -0.86 + (1.72 * (i + 0.5)) / count;
    const spread = shape === "fan" ? 2 : 1;
    const reach = within(random, 0.6, 0.93) * (pointed ? 1 - 0.35 * across * across : 1);
    const length = (b.tip - b.hair) * Math.min(reach, shape === "angle" && across < 0 ? 0.6 : 1);
    const end = b.y + across * b.half * (pointed ? 0.3 : spread);
    const y = b.y + across * b.half * 0.86;
    return curve([
      [b.hair, y],
      [b.hair + 0.55 * length, y + 0.2 * (y - b.y)],
      [b.hair + length, end],
    ]);
  }).join("");
}

const profile = (b: Build, from: number, to: number, half: readonly Point[]): Point[] => {
  const at =
    (side: number) =>
    ([x, y]: Point): Point => [from + x * (to - from), b.y + side * y];
  return [...half.map(at(-1)), ...half.toReversed().map(at(1))];
};

/** The handle swells behind the ferrule and thins to its end; it leaves the page where it is too long. */
function handleShape(b: Build, page: Page): Point[] {
  const thick = Math.max(b.half, 0.022 * page.height);
  const [neck, belly] = [0.72 * thick, Math.min(1.04 * thick, 0.07 * page.height + 0.5 * thick)];
  return profile(b, b.handle, b.ferrule + 1, [
    [0, 0.3 * belly],
    [0.02, 0.42 * belly],
    [0.35, 0.55 * belly],
    [0.66, 0.86 * belly],
    [0.84, belly],
    [0.95, 0.92 * belly],
    [1, neck],
  ]);
}

function ferrule(shape: Shape, b: Build, page: Page): Mark[] {
  const round = shape === "round" || shape === "liner" || shape === "mop";
  const end = hairs[shape].top[0]?.[1] ?? 1;
  const start = 0.72 * Math.max(b.half, 0.022 * page.height);
  const half: Point[] = [
    [0, start],
    [0.3, start * 1.04],
    [1, end * b.half],
  ];
  const stripe = (share: number, thick: number, tone: Hex): Mark => {
    const band = (sign: number): Point[] =>
      half.map(([x, y]) => [b.ferrule + x * (b.hair - b.ferrule), b.y + y * share + sign * thick * y]);
    return { d: polygon([...band(-1), ...band(1).toReversed()]), fill: tone };
  };
  const rings = [0.34, 0.42].map((t) => {
    const x = b.ferrule + t * (b.hair - b.ferrule);
    const y = start * 1.06 + (end * b.half - start) * Math.max(0, t - 0.3);
    return line([
      [x, b.y - y],
      [x, b.y + y],
    ]);
  });
  return [
    { d: polygon(profile(b, b.ferrule, b.hair, half)), fill: hex(steel) },
    stripe(-0.3, round ? 0.14 : 0.2, hex(shade(steel, 17))),
    stripe(0.72, 0.28, hex(shade(steel, -15))),
    { d: rings.join(""), stroke: hex(shade(steel, -30)), strokeWidth: 0.7 * grain(page) },
  ];
}

/** Handle, ferrule and hair, from the left; at gesture size the tip only. */
export function drawBrush(supply: SupplyOf<"brush">, colour: Lab | null, page: Page): Mark[] {
  const traits = supply.traits;
  const shape = traits?.shape ?? "round";
  const b = build(shape, traits?.widthMm, page);
  const own = lacquers[Math.floor(page.random() * lacquers.length)] ?? barrel;
  const tone = colour ?? (traits?.waterReservoir ? barrel : own);
  const hair = hairTone[traits?.hair ?? "mixed"];
  const tuft: Mark = { d: polygon(hairShape(shape, b)), fill: hex(hair) };
  if (page.level === "gesture") return [...ferrule(shape, b, page).slice(0, 1), tuft];
  const shine = line([
    [b.handle + 0.3 * (b.ferrule - b.handle), b.y - 0.2 * b.half],
    [b.handle + 0.82 * (b.ferrule - b.handle), b.y - 0.42 * b.half],
  ]);
  return [
    {
      d: polygon(handleShape(b, page)),
      fill: hex(tone),
      ...(traits?.waterReservoir ? { stroke: hex(shade(tone, -30)), strokeWidth: 1 } : {}),
    },
    { d: shine, stroke: hex(shade(tone, 22)), strokeWidth: Math.max(0.6, 0.12 * b.half), round: true },
    ...ferrule(shape, b, page),
    tuft,
    {
      d: strands(shape, b, page),
      stroke: hex(shade(hair, -9)),
      strokeWidth: 0.55 * grain(page),
      round: true,
    },
    {
      d: dash(b.hair, b.y - 0.9 * b.half, 0, 1.8 * b.half),
      stroke: hex(shade(hair, -14)),
      strokeWidth: 0.9 * grain(page),
    },
  ];
}
