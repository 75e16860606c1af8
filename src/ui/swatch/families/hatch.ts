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
const lean = 0.3;

/** Where the slanted field starts and ends at its foot, as a layer from `from` to `to` (0 to 1) needs it. */
function span(page: Page, from: number, to: number): readonly [number, number] {
  const { box } = page;
  const room = box.w - lean * box.h;
  return [box.x + room * from, box.x + room * to];
}

/** One sheet of strokes without lifting: up, back down, a little further along each time. */
function zigzag(page: Page, from: number, to: number, pitch: number, loose: number): Point[] {
  const { box, random } = page;
  const [start, end] = span(page, from, to);
  const swing = noiseFrom(random);
  const count = Math.max(3, Math.round((2 * (end - start)) / pitch));
  const ragged = loose * box.h;
  return times(count, (i) => {
    const foot = start + ((end - start) * i) / count;
    const up = i % 2 === 1;
    const short = ragged * (0.5 + 0.5 * swing(i / 7) + 0.7 * (random() - 0.3));
    const y = up ? box.y + short : box.y + box.h - short;
    const jitter = 0.7 * pitch * (random() - 0.5);
    return [foot + jitter + lean * (box.y + box.h - y), Math.min(box.y + box.h, Math.max(box.y, y))];
  });
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
  const d = times(Math.min(420, count), () => {
    const rise = box.h * within(random, 0.04, 0.96);
    const x = start + (end - start) * random() + lean * rise;
    const long = fine * within(random, 0.3, 2.6);
    return dash(x, box.y + box.h - rise, lean * long, -long);
  }).join("");
  return { d, stroke: page.ground, strokeWidth: 0.85 * fine, round: true };
}

/** Pencil work: open at the sides, pressed hardest over the middle, where it keeps the item's own colour. */
export function hatch(colour: Lab, lead: Lead, page: Page): Mark[] {
  const fine = grain(page);
  const width = lead.width * fine;
  const pitch = lead.pitch * fine;
  const layer = (from: number, to: number, gap: number, tone: Lab, wide = 1, loose = 0.05): Mark => ({
    d: line(zigzag(page, from, to, gap, loose)),
    stroke: hex(tone),
    strokeWidth: Math.round(wide * width * 100) / 100,
    round: true,
  });
  const pale = (share: number) => mix(colour, paper, share * lead.soft);
  if (page.level === "gesture")
    return [layer(0, 1, 4.2, pale(0.7), 1.1), layer(0.16, 0.84, 2, colour, 1.5, 0.03)];
  return [
    layer(0, 1, 1.5 * pitch, pale(1), 1.05, 0.06),
    layer(0.03, 0.95, 1.7 * pitch, pale(0.75), 0.95, 0.05),
    layer(0.1, 0.9, 1.35 * pitch, pale(0.5), 1, 0.05),
    layer(0.19, 0.81, Math.min(1.3 * pitch, 1.5 * width), colour, 1.15, 0.04),
    layer(0.24, 0.76, 0.62 * width, colour, 1, 0.05),
    {
      d: line(across(page, 0.2, 0.72, 2.6 * pitch)),
      stroke: hex(shade(colour, 5)),
      strokeWidth: 0.55 * width,
      round: true,
    },
    layer(0.22, 0.78, 3.4 * pitch, shade(colour, -5), 0.6, 0.04),
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
