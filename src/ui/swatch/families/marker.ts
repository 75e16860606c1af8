import type { Lab } from "../../../engine/colour/index.ts";
import type { SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import { type Page, times, within } from "../page.ts";
import { type Point, polygon, sliver } from "../path.ts";
import { type Noise, noiseFrom } from "../random.ts";
import { doubled, hex, mix, shade } from "../shade.ts";

/** How much of a second coat adds to the first, by base: dyes most, covering paints hardly. Common practice, no source. */
const coatDepth = {
  "water-dye": 0.42,
  alcohol: 0.34,
  "water-pigment": 0.26,
  acrylic: 0.05,
  oil: 0.05,
  chalk: 0.04,
} as const;
const unknownDepth = 0.2;

/** One pass of the tip: where its ends are at each height t, 0 at its top and 1 at its foot. */
type Pass = Readonly<{
  top: number;
  foot: number;
  left: (t: number) => number;
  right: (t: number) => number;
  waver: Noise;
}>;

type Tip = "chisel" | "bullet" | "fine" | "brush";
type End = (t: number) => number;

/** How far the end of a pass lies inside the pass's box, in heights of the pass. */
const ends: Readonly<Record<Tip, Readonly<{ out: End; back: End; turn: End }>>> = {
  chisel: { out: slant(0.34, 1), back: slant(0.3, 1), turn: slant(0.28, -1) },
  bullet: { out: round(0.42), back: round(0.42), turn: round(0.42) },
  fine: { out: slant(0.07, 1), back: slant(0.08, 1), turn: slant(0.06, -1) },
  brush: { out: round(0.36), back: (t) => 0.85 * Math.abs(2 * t - 0.98) ** 1.25, turn: round(0.34) },
};

/** A slanting end with its corners worn: leaning right towards the top (`side` 1) or the foot (−1). */
function slant(depth: number, side: 1 | -1): End {
  const worn = (t: number) => 0.07 * Math.max(0, 1 - t / 0.09) ** 2;
  return (t) => depth * (side > 0 ? 1 - t : t) + worn(t) + worn(1 - t);
}

function round(depth: number): End {
  return (t) => depth * (1 - Math.sqrt(Math.max(0, 1 - (2 * t - 1) ** 2)));
}

const waverOf = (page: Page) => Math.min(2.4, 0.012 * page.height + 0.25);

function edge(pass: Pass, at: "top" | "foot", page: Page, from: number, to: number): Point[] {
  const y = pass[at];
  const reach = waverOf(page);
  const steps = Math.max(2, Math.round(Math.abs(to - from) / (4 + 0.03 * page.height)));
  const pull = at === "top" ? 0 : 40;
  return times(steps + 1, (i) => {
    const x = from + ((to - from) * i) / steps;
    return [x, y + reach * pass.waver(x / (0.3 * page.height) + pull)];
  });
}

const sides = [0.02, 0.05, 0.1, 0.16, 0.24, 0.36, 0.5, 0.64, 0.76, 0.84, 0.9, 0.95, 0.98];
const atHeight = (pass: Pass, y: number) => Math.min(1, Math.max(0, (y - pass.top) / (pass.foot - pass.top)));

function outline(pass: Pass, page: Page): Point[] {
  const y = (t: number) => pass.top + t * (pass.foot - pass.top);
  return [
    ...edge(pass, "top", page, pass.left(0), pass.right(0)),
    ...sides.map((t): Point => [pass.right(t), y(t)]),
    ...edge(pass, "foot", page, pass.right(1), pass.left(1)),
    ...sides.toReversed().map((t): Point => [pass.left(t), y(t)]),
  ];
}

/** Where both passes lie: from the top of the return to the foot of the way out. */
function overlap(out: Pass, back: Pass, page: Page): Point[] {
  const [top, foot] = [back.top, out.foot];
  const left = (y: number) => Math.max(out.left(atHeight(out, y)), back.left(atHeight(back, y)));
  const right = (y: number) => Math.min(out.right(atHeight(out, y)), back.right(atHeight(back, y)));
  const inner = [0.15, 0.4, 0.6, 0.85].map((t) => top + t * (foot - top));
  return [
    ...edge(back, "top", page, left(top), right(top)),
    ...inner.map((y): Point => [right(y), y]),
    ...edge(out, "foot", page, right(foot), left(foot)),
    ...inner.toReversed().map((y): Point => [left(y), y]),
  ];
}

/** The two passes for a page: out along the top, back along the foot, lapping by a fifth. */
export function passes(tip: Tip, page: Page): readonly [Pass, Pass] {
  const { box, random } = page;
  const deep = 0.58 * box.h;
  const [far, shift] = [box.x + box.w, Math.min(0.05 * box.w, 0.12 * deep)];
  const end = ends[tip];
  const side = (at: number, profile: End, sign: number) => {
    const waver = noiseFrom(random);
    return (t: number) => at + sign * deep * profile(t) + 0.5 * waverOf(page) * waver(3 * t);
  };
  const out: Pass = {
    top: box.y,
    foot: box.y + deep,
    left: side(box.x, end.out, 1),
    right: side(far, end.turn, -1),
    waver: noiseFrom(random),
  };
  const back: Pass = {
    top: box.y + box.h - deep,
    foot: box.y + box.h,
    left: side(box.x + shift, end.back, 1),
    right: side(far - 0.3 * shift, end.turn, -1),
    waver: noiseFrom(random),
  };
  return [out, back];
}

/** Ink gathers where the tip turns or lifts: a sickle along the right end. */
function pool(pass: Pass, page: Page): Point[] {
  const deep = pass.foot - pass.top;
  const y = (t: number) => pass.top + t * deep;
  const thick = Math.min(0.055 * deep, 0.03 * page.box.w);
  const steps = times(11, (i) => 0.04 + 0.092 * i);
  return [
    ...steps.map((t): Point => [pass.right(t), y(t)]),
    ...steps.toReversed().map((t): Point => [pass.right(t) - thick * Math.sin(Math.PI * t), y(t)]),
  ];
}

/** Faint lines that the fibres of the tip leave along the way. */
function streaks(pass: Pass, page: Page): string {
  const { random } = page;
  const [from, to] = [pass.left(0.5), pass.right(0.5)];
  const deep = pass.foot - pass.top;
  const count = page.level === "full" ? 12 : 6;
  return times(count, () => {
    const length = within(random, 0.12, 0.45) * (to - from);
    const x = within(random, from + 0.04 * (to - from), to - length - 0.03 * (to - from));
    return sliver(
      x,
      pass.top + deep * within(random, 0.07, 0.93),
      length,
      within(random, 0.008, 0.02) * deep,
    );
  }).join("");
}

export const tipOf = (supply: SupplyOf<"marker">): Tip => supply.traits?.tips?.[0] ?? "bullet";

/** Out, turned at the right, back; darker where both passes lie, as deep as the base lets them add up. */
export function drawMarker(supply: SupplyOf<"marker">, colour: Lab, page: Page): Mark[] {
  const base = supply.traits?.base;
  const depth = base ? coatDepth[base] : unknownDepth;
  const [out, back] = passes(tipOf(supply), page);
  const own = hex(colour);
  const twice = doubled(colour, depth);
  const bodies: Mark = { d: polygon(outline(out, page)) + polygon(outline(back, page)), fill: own };
  const crossing: Mark = { d: polygon(overlap(out, back, page)), fill: hex(twice) };
  if (page.level === "gesture") return [bodies, crossing];
  const wet = hex(mix(colour, twice, 0.55));
  const pools = polygon(pool(out, page)) + polygon(pool(back, page));
  return [
    bodies,
    { d: pools, fill: wet },
    { d: streaks(out, page) + streaks(back, page), fill: hex(shade(colour, -3)) },
    crossing,
    { d: streaks({ ...back, top: back.top, foot: out.foot }, page), fill: hex(shade(twice, -2.5)) },
  ];
}

/** The outline of both passes, for a marker of unknown colour. */
export const markerShape = (supply: SupplyOf<"marker">, page: Page): Point[][] =>
  passes(tipOf(supply), page).map((pass) => outline(pass, page));
