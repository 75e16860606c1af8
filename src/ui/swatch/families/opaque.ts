import type { Lab } from "../../../engine/colour/index.ts";
import type { SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import { grain, type Page, paper, times, within } from "../page.ts";
import { type Box, type Point, polygon, sliver } from "../path.ts";
import { type Noise, noiseFrom } from "../random.ts";
import { hex, mix, shade } from "../shade.ts";

/** A brushed body: how many rows, and how far its right edge reaches at each height. */
type Body = Readonly<{ box: Box; rows: number; waver: Noise; left: Noise; offsets: number[]; clump: Noise }>;

const rowsFor = (page: Page) => (page.height < 50 ? 1 : page.height <= 150 ? 2 : 3);

function bodyOf(page: Page): Body {
  const { box, random } = page;
  const rows = rowsFor(page);
  return {
    box,
    rows,
    waver: noiseFrom(random),
    left: noiseFrom(random),
    clump: noiseFrom(random),
    offsets: times(rows, () => within(random, 0, 0.03) * box.h),
  };
}

/** Where the paint stops covering at height y: bristles that run dry in clumps. */
function reach(body: Body, y: number): number {
  const { box } = body;
  const at = (y - box.y) / box.h;
  const share = 0.79 + 0.07 * body.clump(4.5 * at) + 0.022 * body.clump(60 + 17 * at);
  return box.x + box.w * share;
}

function leftEdge(body: Body, y: number): number {
  const { box, rows, offsets } = body;
  const row = Math.min(rows - 1, Math.max(0, Math.floor((rows * (y - box.y)) / box.h)));
  const at = (y - box.y) / box.h;
  const waver = 0.02 * (1 + body.left(9 * at)) + 0.006 * body.left(50 + 31 * at);
  return box.x + (offsets[row] ?? 0) + waver * box.h;
}

const longEdge = (body: Body, y: number, from: number, to: number, page: Page): Point[] =>
  times(14, (i) => {
    const x = from + ((to - from) * i) / 13;
    return [x, y + (0.3 + 0.011 * page.height) * body.waver(x / (0.4 * page.height) + y)];
  });

/** Tips and notches down the right edge, one to a bristle; here and there a notch goes deep. */
function bristles(body: Body, page: Page): Point[] {
  const { box } = body;
  const small = page.level === "gesture";
  const count = Math.round(small ? 9 : box.h / (1.25 * grain(page)));
  const long = (small ? 0.07 : 0.06) * box.w;
  return times(count, (i) => {
    const y = box.y + (box.h * (i + 0.5)) / count;
    const edge = reach(body, y);
    const tip = edge + long * page.random() ** 2.6 * (1 + Math.max(0, body.clump(7 + (9 * y) / box.h)));
    const notch = edge - 0.75 * long * page.random() ** 2;
    return [
      [Math.min(tip, box.x + box.w), y],
      [notch, y + (0.5 * box.h) / count],
    ] satisfies Point[];
  }).flat();
}

export function bodyShape(page: Page, body: Body = bodyOf(page)): Point[] {
  const { box } = body;
  const foot = box.y + box.h;
  const steps = page.level === "gesture" ? 6 : Math.min(60, box.h / 2.5);
  const heights = times(steps, (i) => foot - (box.h * (i + 0.5)) / Math.round(steps));
  return [
    ...longEdge(body, box.y, leftEdge(body, box.y + 0.1), reach(body, box.y), page),
    ...bristles(body, page),
    ...longEdge(body, foot, reach(body, foot), leftEdge(body, foot - 0.1), page),
    ...heights.map((y): Point => [leftEdge(body, y), y]),
  ];
}

/** Touches past the edge, where single hairs still leave paint: long near it, then ever shorter. */
function touches(body: Body, page: Page): string {
  const { box, random } = page;
  const many = Math.min(page.level === "full" ? 300 : 120, 1.9 * box.h);
  return times(many, () => {
    const y = box.y + box.h * random();
    const lively = 1 + 0.8 * body.clump((4.5 * (y - box.y)) / box.h);
    const far = -0.01 + 0.14 * random() ** 1.6 * lively;
    const x = reach(body, y) + far * box.w;
    const length = within(random, 0.25, 1) * (0.055 - 0.28 * far) * box.w;
    const room = box.x + box.w - x;
    return length > 0.5 && room > length ? sliver(x, y, length, within(random, 0.6, 1.3) * grain(page)) : "";
  }).join("");
}

/** Bare lines running back into the body from between the bristles. */
function gaps(body: Body, page: Page): string {
  const { box, random } = page;
  return times(Math.min(page.level === "full" ? 70 : 34, 0.5 * box.h), () => {
    const y = box.y + box.h * within(random, 0.02, 0.98);
    const length = (0.03 + 0.17 * random() ** 2) * box.w;
    const end = reach(body, y) + 0.02 * box.w;
    return sliver(end - length, y, length, within(random, 0.6, 1.7) * grain(page));
  }).join("");
}

/** Lines along the body: what the hairs ploughed up or thinned. */
function ridges(body: Body, page: Page, count: number, thick: number): string {
  const { box, random } = page;
  return times(count, () => {
    const y = box.y + box.h * within(random, 0.03, 0.97);
    const from = leftEdge(body, y);
    const whole = reach(body, y) - from;
    const length = whole * within(random, 0.12, 0.5);
    const x = from + (whole - length) * within(random, 0.03, 0.97);
    return sliver(x, y, length, thick * grain(page) * within(random, 0.5, 1));
  }).join("");
}

const seams = (body: Body) =>
  times(body.rows - 1, (i) => {
    const y = body.box.y + (body.box.h * (i + 1)) / body.rows;
    const from = leftEdge(body, y);
    return sliver(from + 1, y, 0.97 * (reach(body, y) - from), 0.012 * body.box.h);
  }).join("");

/** How much shows through, as paler lines: the body itself keeps the item's colour. */
const seeThrough = { opaque: 0, semi: 0.6, transparent: 1 } as const;

/** Covering paint: a loaded brush, wet at the left, dry at the right. */
export function drawOpaque(supply: SupplyOf<"paint">, colour: Lab, page: Page): Mark[] {
  const body = bodyOf(page);
  const solid: Mark = { d: polygon(bodyShape(page, body)), fill: hex(colour) };
  if (page.level === "gesture") return [solid];
  const medium = supply.traits?.medium;
  const shiny = medium === "acrylic" || medium === "oil";
  const thin = seeThrough[supply.traits?.opacity ?? "opaque"];
  const full = page.level === "full" ? 2 : 1;
  return [
    solid,
    { d: touches(body, page), fill: hex(colour) },
    ...(thin
      ? [{ d: ridges(body, page, 9 * thin * full, 2.6), fill: hex(mix(colour, paper, 0.2 * thin)) }]
      : []),
    { d: ridges(body, page, 15 * full, 1.1) + seams(body), fill: hex(shade(colour, -6)) },
    { d: ridges(body, page, 12 * full, 1), fill: hex(shade(colour, shiny ? 8 : 4)) },
    ...(shiny ? [{ d: ridges(body, page, 4 * full, 1.2), fill: hex(shade(colour, 16)) }] : []),
    { d: gaps(body, page), fill: page.ground },
  ];
}
