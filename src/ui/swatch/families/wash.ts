import type { Lab } from "../../../engine/colour/index.ts";
import type { SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import { grain, type Page, paper, times, within } from "../page.ts";
import { blob, dash, type Point } from "../path.ts";
import { noise2From, noiseFrom } from "../random.ts";
import { hex, mix, shade } from "../shade.ts";

/** Colour Index names of pigments that settle into the tooth of the paper. From memory. */
const granulating = new Set([
  "PB27",
  "PB28",
  "PB29",
  "PB35",
  "PB36",
  "PBk9",
  "PBk11",
  "PBr7",
  "PG18",
  "PG50",
  "PV14",
  "PV15",
]);

/** A superellipse with a wavering edge: what a puddle of thin paint dries to. */
export function washShape(page: Page): Point[] {
  const { box, random } = page;
  const waver = noiseFrom(random);
  const count = page.level === "gesture" ? 24 : 56;
  const [rx, ry] = [box.w / 2, box.h / 2];
  // Long puddles have ends as round as square ones, so the sides get straighter.
  const power = 3.4 + 1.6 * Math.min(2, box.w / box.h - 1);
  return times(count, (i) => {
    const turn = (2 * Math.PI * i) / count;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const bend = (v: number, p: number) => Math.sign(v) * Math.abs(v) ** (2 / p);
    const swell = 1 - 0.035 * (1 + waver(8 * (1 + c)) * 0.6 + 0.5 * waver(9 * (1 + s) + 31));
    return [box.x + rx + rx * swell * bend(c, power), box.y + ry + ry * swell * bend(s, power)];
  });
}

/** The part of a shape under (`side` 1) or over (−1) a wavering level. */
function cut(shape: readonly Point[], level: (x: number) => number, side: 1 | -1): Point[] {
  const kept = shape.map(([x, y]): Point => [x, side * (y - level(x)) > 0 ? y : level(x)]);
  return kept;
}

/** Lobed like a cauliflower: big lobes, and small ones on them. */
function bloomShape(x: number, y: number, r: number, lobes: number, page: Page): Point[] {
  const waver = noise2From(page.random);
  const count = 44;
  return times(count, (i) => {
    const turn = (2 * Math.PI * i) / count;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const lobe = 1 + lobes * (waver(1.9 * c + 5, 1.9 * s + 5) + 0.45 * waver(5.5 * c + 20, 5.5 * s + 20));
    return [x + 1.12 * r * lobe * c, y + r * lobe * s];
  });
}

/** Where a drop of water pushed the paint outwards: paler, with a rim of its own. */
function bloom(colour: Lab, page: Page): Mark[] {
  const { box, random } = page;
  const r = 0.2 * Math.min(box.h, box.w);
  const x = box.x + box.w - r * 1.5 - within(random, 0, 0.04) * box.w;
  const y = box.y + box.h * within(random, 0.34, 0.4);
  return [
    {
      d: blob(bloomShape(x, y, r, 0.3, page)),
      fill: hex(mix(colour, paper, 0.14)),
      stroke: hex(shade(colour, -8)),
      strokeWidth: 0.9 * grain(page),
    },
    {
      d: blob(bloomShape(x + 0.1 * r, y - 0.06 * r, 0.66 * r, 0.3, page)),
      fill: hex(mix(colour, paper, 0.28)),
    },
  ];
}

function settled(colour: Lab, page: Page, heavy: boolean): Mark {
  const { box, random } = page;
  const count = (heavy ? 0.02 : 0.0035) * box.w * box.h;
  const size = 0.7 * grain(page);
  const d = times(Math.min(420, count), () => {
    const x = box.x + box.w * within(random, 0.07, 0.93);
    const y = box.y + box.h * within(random, 0.07, 0.93);
    return dash(x, y, size * random(), size * (random() - 0.5));
  }).join("");
  return { d, stroke: hex(shade(colour, heavy ? -8 : -6)), strokeWidth: size, round: true };
}

/** Thin paint: paler at the head, deeper at the foot where it gathered, with a dark rim. */
export function drawWash(supply: SupplyOf<"paint">, colour: Lab, page: Page): Mark[] {
  const { box } = page;
  const shape = washShape(page);
  const outline = blob(shape);
  const fine = grain(page);
  const rim: Mark[] = [
    { d: outline, stroke: hex(shade(colour, -7)), strokeWidth: 3.2 * fine, round: true },
    { d: outline, stroke: hex(shade(colour, -15)), strokeWidth: 1.3 * fine, round: true },
  ];
  if (page.level === "gesture")
    return [{ d: outline, fill: hex(colour), stroke: hex(shade(colour, -12)), strokeWidth: 1 }];
  const levelAt = (share: number) => {
    const waver = noiseFrom(page.random);
    return (x: number) => box.y + box.h * (share + 0.025 * waver(x / (0.35 * box.h)));
  };
  const step = (share: number, side: 1 | -1, tone: Lab): Mark => ({
    d: blob(cut(shape, levelAt(share), side)),
    fill: hex(tone),
  });
  const heavy = (supply.traits?.pigments ?? []).some((name) => granulating.has(name));
  return [
    { d: outline, fill: hex(colour) },
    step(0.26, -1, mix(colour, paper, 0.07)),
    step(0.14, -1, mix(colour, paper, 0.13)),
    step(0.74, 1, shade(colour, -2.5)),
    step(0.86, 1, shade(colour, -5)),
    ...bloom(colour, page),
    settled(colour, page, heavy),
    ...rim,
  ];
}
