import type { Lab } from "../../../engine/colour/index.ts";
import type { SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import { type Page, times, within } from "../page.ts";
import { curve, dash, line, type Point, polygon } from "../path.ts";
import { noiseFrom } from "../random.ts";
import { hex } from "../shade.ts";

/** Where the width is not known, lines are drawn as wide as the commonest liner's. Common practice, no source. */
const usualMm = 0.3;

const widthOf = (supply: SupplyOf<"liner">, page: Page) => {
  const px = (supply.traits?.widthMm ?? usualMm) * page.mm;
  return Math.min(px, 0.09 * page.height);
};

function ruled(page: Page, y: number, inset: number): string {
  const { box, random } = page;
  const waver = noiseFrom(random);
  const [from, to] = [box.x + inset * random(), box.x + box.w - inset * random()];
  const reach = Math.min(0.9, 0.006 * page.height);
  return line(
    times(12, (i): Point => {
      const x = from + ((to - from) * i) / 11;
      return [x, y + reach * waver(x / (0.5 * page.height))];
    }),
  );
}

/** Loops from side to side, across the seam. */
function coil(page: Page, y: number, height: number, width: number): string {
  const { box, random } = page;
  const loop = Math.max(0.62 * height, 2.6 * width);
  const inset = 0.06 * box.w;
  const turns = Math.max(2, Math.floor((box.w - 2 * inset - height) / loop));
  const start = box.x + (box.w - turns * loop) / 2;
  const waver = noiseFrom(random);
  const points = times(turns * 10 + 1, (i): Point => {
    const turn = (2 * Math.PI * i) / 10 - Math.PI / 2;
    const size = 1 + 0.08 * waver(i / 10);
    return [
      start + (loop * i) / 10 + 0.55 * height * size * Math.cos(turn),
      y + 0.5 * height * size * Math.sin(turn),
    ];
  });
  return curve(points);
}

type Band = Readonly<{ top: number; height: number; slant: number; from: number; to: number }>;

/** Hatching closes up towards the middle: single strokes at the sides, filled in between `from` and `to`. */
function bandOf(page: Page, top: number, height: number): Band {
  const { box } = page;
  const slant = 0.55 * height;
  const room = box.w - slant;
  const side = box.w < 70 ? 0.12 : 0.22; // on a small chip the patch alone shows the colour
  return { top, height, slant, from: box.x + side * room, to: box.x + (1 - side) * room };
}

function filled(band: Band, page: Page): string {
  const { random } = page;
  const rough = () => 0.05 * band.height * (random() - 0.5);
  const count = Math.max(4, Math.round((band.to - band.from) / 4));
  const along = (i: number) => band.from + ((band.to - band.from) * i) / (count - 1);
  const top = times(count, (i): Point => [along(i) + band.slant, band.top + rough()]);
  const foot = times(count, (i): Point => [along(i), band.top + band.height + rough()]);
  return polygon([...top, ...foot.toReversed()]);
}

/** Where strokes did not quite meet: slits of paper, more of them towards the sides. */
function slits(band: Band, page: Page): string {
  const { random } = page;
  return times((band.to - band.from) / 8, () => {
    const side = random() < 0.5 ? -1 : 1;
    const out = 1 - 0.8 * random() ** 1.4;
    const x = (band.from + band.to) / 2 + side * out * 0.49 * (band.to - band.from);
    const [low, long] = [within(random, 0, 0.5), within(random, 0.25, 0.5)];
    const y = band.top + band.height * (1 - low);
    return dash(x + band.slant * low, y, band.slant * long, -band.height * long);
  }).join("");
}

function openStrokes(band: Band, page: Page, width: number): string {
  const { box, random } = page;
  const widest = Math.max(2.6 * width, 0.05 * page.height + 1.2);
  const narrow = Math.max(1.05 * width, 0.9);
  const strokes: string[] = [];
  for (const side of [-1, 1] as const) {
    const start = side < 0 ? band.from : band.to;
    const end = side < 0 ? box.x : box.x + box.w - band.slant;
    let gap = narrow;
    for (let x = start; side * (end - x) >= 0; x += side * gap) {
      gap = Math.min(widest, gap * 1.22);
      const lift = 0.05 * band.height * random();
      strokes.push(
        dash(
          x,
          band.top + band.height - lift,
          band.slant,
          -band.height + lift + within(random, 0, 0.06) * band.height,
        ),
      );
    }
  }
  return strokes.join("");
}

/** The lines of a liner, without a word on their colour. */
function strokesOf(supply: SupplyOf<"liner">, page: Page) {
  const { box } = page;
  const width = widthOf(supply, page);
  const at = (share: number) => box.y + share * box.h;
  const inset = 0.03 * box.w;
  if (page.level === "gesture") {
    const rows = [0.15, 0.5, 0.85].map((share) => ruled(page, at(share), 0));
    return { width: Math.max(width, 0.5), lines: rows.join(""), band: null };
  }
  const band = bandOf(page, at(0.31), 0.36 * box.h);
  const lines = [
    ruled(page, at(0.04), inset),
    ruled(page, at(0.17), inset),
    openStrokes(band, page, width),
    coil(page, at(0.87), 0.21 * box.h, width),
  ];
  return { width, lines: lines.join(""), band };
}

/** Two lines, hatching that closes up to a filled patch, and a coil: all in the pen's true width. */
export function drawLiner(supply: SupplyOf<"liner">, colour: Lab, page: Page): Mark[] {
  const { width, lines, band } = strokesOf(supply, page);
  const ink = hex(colour);
  const drawn: Mark = { d: lines, stroke: ink, strokeWidth: Math.round(width * 100) / 100, round: true };
  if (!band) return [drawn];
  const slit: Mark = { d: slits(band, page), stroke: page.ground, strokeWidth: 0.6, round: true };
  return [drawn, { d: filled(band, page), fill: ink }, slit];
}

/** The same lines in grey, the patch left empty: a liner of unknown colour. */
export function drawLinerUnknown(supply: SupplyOf<"liner">, grey: Lab, page: Page): Mark[] {
  const { width, lines, band } = strokesOf(supply, page);
  const tone = hex(grey);
  const drawn: Mark = { d: lines, stroke: tone, strokeWidth: Math.round(width * 100) / 100, round: true };
  if (!band) return [{ ...drawn, dash: "3 2" }];
  return [drawn, { d: filled(band, page), fill: page.ground, stroke: tone, strokeWidth: 1, dash: "4 3" }];
}
