import type { Lab } from "../../../engine/colour/index.ts";
import type { SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import { grain, type Page, times, within } from "../page.ts";
import { type Box, blob, curve, type Point, polygon, rectangle } from "../path.ts";
import { noiseFrom } from "../random.ts";
import { hex, lab, mix, shade } from "../shade.ts";

const glass = hex(lab(91.5, -1, 0.8));
const glassEdge = hex(lab(45, -1.5, 0.5));
const cap = hex(lab(19, -1.5, -0.3));
const shine = lab(97, -0.5, 0.5);

/** Where the bottle stands: alone and wide on a narrow chip, at the left of a wide one. */
function bottleBox(page: Page): Box {
  const { box } = page;
  const alone = page.level === "gesture" || box.w < 1.15 * box.h;
  const w = Math.min(box.w, (alone ? 0.86 : 0.7) * box.h);
  const aside = alone ? 0.5 : box.w < 2 * box.h ? 0.4 : 0;
  return { x: box.x + aside * (box.w - w), y: box.y, w, h: box.h };
}

/** Half of a bottle's outline from neck to foot, mirrored: shares of its box. */
const half: readonly Point[] = [
  [0.22, 0.14],
  [0.22, 0.22],
  [0.3, 0.28],
  [0.44, 0.34],
  [0.5, 0.42],
  [0.5, 0.52],
  [0.5, 0.94],
  [0.49, 0.985],
  [0.45, 1],
];

function bottleOutline(box: Box, inset: number): Point[] {
  const middle = box.x + box.w / 2;
  const at =
    (side: number) =>
    (point: Point): Point => [
      middle + side * (point[0] * box.w - inset),
      box.y + point[1] * box.h - (point[1] > 0.9 ? inset : 0),
    ];
  return [...half.map(at(1)), ...half.toReversed().map(at(-1))];
}

/** The ink in the bottle: its outline, a little in, below the level. */
export function filling(box: Box, inset: number): Point[] {
  const level = box.y + 0.36 * box.h;
  return bottleOutline(box, inset).map(([x, y]) => [x, Math.max(y, level)]);
}

function bottle(page: Page, inside: readonly Mark[]): Mark[] {
  const box = bottleBox(page);
  const thin = page.level === "gesture" ? 0.8 : 1.1 * grain(page);
  const lid: Box = { x: box.x + 0.25 * box.w, y: box.y, w: 0.5 * box.w, h: 0.16 * box.h };
  return [
    { d: polygon(bottleOutline(box, 0)), fill: glass, stroke: glassEdge, strokeWidth: thin, round: true },
    ...inside,
    { d: rectangle(lid), fill: cap },
  ];
}

const insetOf = (page: Page) => (page.level === "gesture" ? 1 : 0.032 * page.height);

/** The empty bottle, its contents drawn by `inside`. */
export const bottleWith = (page: Page, inside: (shape: Point[]) => readonly Mark[]): Mark[] =>
  bottle(page, inside(filling(bottleBox(page), insetOf(page))));

/** A pooled stroke from the bottle to the right edge: swelling, then lifting off. */
function strokeShape(page: Page, from: number): Point[] {
  const { box, random } = page;
  const waver = noiseFrom(random);
  const to = box.x + box.w;
  const count = 26;
  const centre = (t: number) => box.y + box.h * (0.45 + 0.1 * Math.sin(5.2 * t - 0.4) - 0.12 * t * t);
  const thick = (t: number) =>
    0.29 * box.h * Math.min(1, 0.45 + 5 * t) * (1 - 0.9 * Math.max(0, (t - 0.62) / 0.38) ** 1.3);
  const side =
    (sign: number) =>
    (i: number): Point => {
      const t = i / (count - 1);
      const y = centre(t) + sign * thick(t) * (1 + 0.07 * waver(6 * t + 9 * sign));
      return [from + (to - from) * t, y];
    };
  return [...times(count, side(-1)), ...times(count, side(1)).toReversed()];
}

/** Where there is no room for a long stroke: a small swash, thick and thin. */
function swash(page: Page, from: number): Point[] {
  const { box } = page;
  const long = box.x + box.w - from;
  const side =
    (sign: number) =>
    (i: number): Point => {
      const t = i / 20;
      const y = box.y + box.h * (0.34 + 0.11 * Math.cos(8.4 * t + 0.5) - 0.06 * t);
      return [from + long * t, y + sign * 0.062 * box.h * Math.sin(Math.PI * t) ** 0.7];
    };
  return [...times(21, side(-1)), ...times(21, side(1)).toReversed()];
}

function drops(page: Page, from: number): Point[][] {
  const { box, random } = page;
  const spot = (x: number, y: number, r: number) => {
    const waver = noiseFrom(random);
    return times(14, (i): Point => {
      const turn = (2 * Math.PI * i) / 14;
      const size = r * (1 + 0.1 * waver(2 * (1 + Math.cos(turn))));
      return [x + size * Math.cos(turn), y + size * Math.sin(turn)];
    });
  };
  const right = box.x + box.w;
  const unit = Math.min(0.075 * box.h, 0.13 * (right - from));
  return [
    spot(right - 4.6 * unit - within(random, 0, unit), box.y + box.h - 1.7 * unit, 1.25 * unit),
    spot(right - 2.6 * unit, box.y + box.h - 1.1 * unit, 0.62 * unit),
    spot(right - 1.3 * unit, box.y + box.h - 2.3 * unit, 0.4 * unit),
  ];
}

/** A bottle, a stroke of what is in it, and the drops that fell. */
export function drawInk(_supply: SupplyOf<"ink">, colour: Lab, page: Page): Mark[] {
  const own = hex(colour);
  const deep = hex(shade(colour, colour.l < 20 ? 6 : -8));
  const place = bottleBox(page);
  const drawn = bottleWith(page, (shape) => [{ d: polygon(shape), fill: own }]);
  if (page.level === "gesture") return drawn;
  const light: Mark = {
    d: curve([
      [place.x + 0.12 * place.w, place.y + 0.44 * place.h],
      [place.x + 0.11 * place.w, place.y + 0.6 * place.h],
      [place.x + 0.12 * place.w, place.y + 0.84 * place.h],
    ]),
    stroke: hex(mix(colour, shine, 0.45)),
    strokeWidth: 0.045 * place.w,
    round: true,
  };
  const surface: Mark = {
    d: rectangle({
      x: place.x + 0.09 * place.w,
      y: place.y + 0.36 * place.h,
      w: 0.82 * place.w,
      h: 0.022 * place.h,
    }),
    fill: hex(mix(colour, shine, 0.25)),
  };
  const lip: Mark = {
    d: rectangle({
      x: place.x + 0.25 * place.w,
      y: place.y + 0.125 * place.h,
      w: 0.5 * place.w,
      h: 0.012 * place.h,
    }),
    fill: hex(lab(36)),
  };
  const bottleMarks = [...drawn, surface, light, lip];
  const from = place.x + place.w + 0.09 * page.box.h;
  if (page.box.w < 1.15 * page.box.h) return bottleMarks;
  const short = page.box.w < 2 * page.box.h;
  const pooled = blob(short ? swash(page, from) : strokeShape(page, from));
  const spots = drops(page, from);
  const rim = 1.2 * grain(page);
  return [
    ...bottleMarks,
    { d: pooled + spots.map(blob).join(""), fill: own, stroke: deep, strokeWidth: rim, round: true },
  ];
}
