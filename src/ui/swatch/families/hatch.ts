import type { Lab } from "../../../engine/colour/index.ts";
import type { Mark } from "../drawing.ts";
import { grain, type Page, paper, times, within } from "../page.ts";
import { dash, line, type Point } from "../path.ts";
import { noiseFrom } from "../random.ts";
import { hex, mix, shade } from "../shade.ts";

/** How a pencil lays its lines; lengths in px at 96 px of height. */
export type Lead = Readonly<{
  /** Width of one stroke. */
  width: number;
  /** From one stroke to the next in the open layers. */
  pitch: number;
  /** How much paper shows through where it is pressed hardest: flecks to 1,000 square px. */
  tooth: number;
  /** Colour of the lightest layer: 0 the pencil's own, 1 the paper's. */
  soft: number;
}>;

/** Strokes lean to the right by this much of their height. */
const lean = 0.27;

/** Where the slanted field starts and ends at its foot, as a layer from `from` to `to` (0 to 1) needs it. */
function span(page: Page, from: number, to: number): readonly [number, number] {
  const { box } = page;
  const room = box.w - lean * box.h;
  return [box.x + room * from, box.x + room * to];
}

/** A layer of strokes: where it lies (0 to 1 of the field), its pitch in the middle and at its ends, in px. */
type Layer = Readonly<{ from: number; to: number; close: number; open: number; loose: number }>;

/** The middle share of a layer that is pressed evenly, before the strokes drift apart: less on a long field. */
const pressedOn = ({ box }: Page) => Math.max(0.36, 0.78 - 0.16 * (box.w / box.h - 1));

/** One sheet of strokes without lifting: up, back down, a little further along each time. */
function zigzag(page: Page, layer: Layer): Point[] {
  const { box, random } = page;
  const [start, end] = span(page, layer.from, layer.to);
  const swing = noiseFrom(random);
  const ragged = layer.loose * box.h;
  const pressed = pressedOn(page);
  const points: Point[] = [];
  for (let foot = start, i = 0; foot < end; i++) {
    const out = Math.max(0, Math.abs((2 * (foot - start)) / (end - start) - 1) - pressed) / (1 - pressed);
    const pitch = layer.close + (layer.open - layer.close) * out ** 1.2;
    const short = Math.max(0, ragged * (0.4 + 0.6 * swing(i / 7) + 0.9 * (random() - 0.3)));
    const y = i % 2 ? box.y + short : box.y + box.h - short;
    points.push([foot + 0.6 * pitch * (random() - 0.5) + lean * (box.y + box.h - y), y]);
    foot += pitch / 2;
  }
  return points;
}

/** A few strokes the other way, where the hand turned the sheet. */
function across(page: Page, from: number, to: number, pitch: number): Point[] {
  const { box, random } = page;
  const [start, end] = span(page, from, to);
  const count = Math.round((2 * (end - start)) / pitch);
  return times(count, (i) => {
    const foot = start + ((end - start) * i) / count;
    const y = i % 2 ? box.y + box.h * within(random, 0.06, 0.12) : box.y + box.h * within(random, 0.88, 0.95);
    return [foot + 0.16 * (box.y + box.h - y) + 0.07 * box.h, y];
  });
}

/** Bare tooth of the paper, lying along the strokes. */
function flecks(page: Page, lead: Lead, fine: number): Mark {
  const { box, random } = page;
  const [start, end] = span(page, 0.1, 0.9);
  const count = ((end - start) * box.h * lead.tooth) / 1000 / (fine * fine);
  const d = times(Math.min(480, count), () => {
    const rise = box.h * within(random, 0.04, 0.96);
    const x = start + (end - start) * random() + lean * rise;
    const long = fine * within(random, 0.2, 2.4);
    return dash(x, box.y + box.h - rise, lean * long, -long);
  }).join("");
  return { d, stroke: page.ground, strokeWidth: 0.75 * fine, round: true };
}

/** Pencil work: open at the sides, pressed hardest over the middle, where it keeps the item's own colour. */
export function hatch(colour: Lab, lead: Lead, page: Page): Mark[] {
  const fine = grain(page);
  const width = lead.width * fine;
  const pitch = lead.pitch * fine;
  const stroke = (layer: Layer, tone: Lab, wide = 1): Mark => ({
    d: line(zigzag(page, layer)),
    stroke: hex(tone),
    strokeWidth: Math.round(wide * width * 100) / 100,
    round: true,
  });
  const pale = (share: number) => mix(colour, paper, share * lead.soft);
  if (page.level === "gesture")
    return [
      stroke({ from: 0, to: 1, close: 3, open: 5, loose: 0.06 }, pale(0.7), 1.1),
      stroke({ from: 0.14, to: 0.86, close: 2, open: 3.4, loose: 0.04 }, colour, 1.5),
    ];
  return [
    stroke({ from: 0, to: 0.97, close: 1.3 * pitch, open: 1.7 * pitch, loose: 0.08 }, pale(1), 1.05),
    stroke({ from: 0.03, to: 1, close: 1.2 * pitch, open: 2 * pitch, loose: 0.07 }, pale(0.7), 0.9),
    stroke({ from: 0.07, to: 0.9, close: pitch, open: 2 * pitch, loose: 0.06 }, pale(0.4)),
    stroke({ from: 0.08, to: 0.93, close: 0.62 * width, open: 2.6 * pitch, loose: 0.06 }, colour),
    {
      d: line(across(page, 0.2, 0.74, 2.8 * pitch)),
      stroke: hex(pale(0.3)),
      strokeWidth: 0.3 * width,
      round: true,
    },
    stroke(
      { from: 0.16, to: 0.86, close: 2.8 * pitch, open: 3.6 * pitch, loose: 0.05 },
      shade(colour, -5),
      0.4,
    ),
    flecks(page, lead, fine),
  ];
}

/** The leaning field that hatching fills. */
export function hatchShape(page: Page): Point[][] {
  const { box } = page;
  const [start, end] = span(page, 0, 1);
  const over = lean * box.h;
  return [
    [
      [start + over, box.y],
      [end + over, box.y],
      [end, box.y + box.h],
      [start, box.y + box.h],
    ],
  ];
}
