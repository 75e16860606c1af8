import type { Lab } from "../../../engine/colour/index.ts";
import type { SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import { type Page, times } from "../page.ts";
import { type Box, blob, dash, ellipse, type Point, polygon, rectangle } from "../path.ts";
import { hex, lab, shade } from "../shade.ts";
import { drawTag } from "./other.ts";

const plain = lab(86, -2, 1.5);
const steel = lab(76, -0.6, -0.6);
const wood = lab(72, 8, 24);

type Draw = (tone: Lab, page: Page, colour: Lab | null) => Mark[];

const edged = (tone: Lab, d: string, page: Page): Mark => ({
  d,
  fill: hex(tone),
  stroke: hex(shade(tone, -38)),
  strokeWidth: page.level === "gesture" ? 0.7 : 1,
});

const middle = ({ box }: Page): Point => [box.x + box.w / 2, box.y + box.h / 2];

/** Ticks a true millimetre apart, longer at five and ten. */
const ruler: Draw = (tone, page) => {
  const { box, mm } = page;
  const body: Box = { ...box, y: box.y + 0.16 * box.h, h: 0.68 * box.h };
  const fit = page.level === "gesture" ? 5 : mm < 3 ? 5 : 1;
  const inset = 0.03 * box.w;
  const count = Math.floor((box.w - 2 * inset) / (mm * fit));
  const ticks = times(count + 1, (i) => {
    const at = i * fit;
    const tall = at % 10 === 0 ? 0.46 : at % 5 === 0 ? 0.34 : 0.2;
    return dash(box.x + inset + at * mm, body.y, 0, tall * body.h);
  });
  return [
    edged(tone, rectangle(body), page),
    { d: ticks.join(""), stroke: hex(shade(tone, -50)), strokeWidth: 0.8 },
  ];
};

const sharpener: Draw = (tone, page) => {
  const { box } = page;
  const [x, y] = middle(page);
  const [w, h] = [Math.min(0.46 * box.w, 0.75 * box.h), 0.42 * box.h];
  const body: Point[] = [
    [x - w, y - 0.72 * h],
    [x - 0.5 * w, y - h],
    [x + w, y - h],
    [x + w, y + h],
    [x - 0.5 * w, y + h],
    [x - w, y + 0.72 * h],
  ];
  const blade: Point[] = [
    [x - 0.82 * w, y - 0.5 * h],
    [x + 0.78 * w, y - 0.8 * h],
    [x + 0.78 * w, y - 0.36 * h],
    [x - 0.82 * w, y - 0.1 * h],
  ];
  return [
    edged(tone, polygon(body), page),
    edged(shade(steel, 10), polygon(blade), page),
    { d: ellipse(x + 0.04 * w, y - 0.46 * h, 0.08 * h), fill: hex(shade(steel, -34)) },
  ];
};

const knife: Draw = (_tone, page, colour) => {
  const { box } = page;
  const y = box.y + box.h / 2;
  const half = Math.min(0.3 * box.h, 0.1 * box.w);
  const [grip, far] = [box.x + 0.62 * box.w, box.x + box.w];
  const blade: Point[] = [
    [grip, y - 0.7 * half],
    [far, y - 0.7 * half],
    [far - 1.7 * half, y + 0.8 * half],
    [grip, y + 0.8 * half],
  ];
  const handle = colour ?? lab(42, -4, -2);
  return [
    edged(steel, polygon(blade), page),
    { d: rectangle({ x: box.x, y: y - half, w: grip - box.x, h: 2 * half }), fill: hex(handle) },
    {
      d: times(4, (i) => dash(grip - (0.06 + 0.04 * i) * box.w, y - 0.6 * half, 0, 1.2 * half)).join(""),
      stroke: hex(shade(handle, 22)),
      strokeWidth: 1,
    },
  ];
};

const palette: Draw = (tone, page) => {
  const { box } = page;
  const columns = Math.max(2, Math.round((box.w / box.h) * 2.4));
  const cell = Math.min((0.9 * box.w) / columns, 0.3 * box.h);
  const left = box.x + (box.w - cell * columns) / 2 + cell / 2;
  const well = (row: number) => (i: number) => ellipse(left + cell * i, box.y + box.h * row, 0.36 * cell);
  const wells = [0.2, 0.8].flatMap((row) => times(columns, well(row))).join("");
  return [
    edged(tone, rectangle(box), page),
    { d: wells, fill: hex(shade(tone, 9)), stroke: hex(shade(tone, -22)), strokeWidth: 0.8 },
  ];
};

const tape: Draw = (_tone, page, colour) => {
  const [x, y] = middle(page);
  const r = 0.48 * Math.min(page.box.w, page.box.h);
  const roll = colour ?? lab(84, 1, 14);
  const rings = [0.88, 0.76].map((share) => ellipse(x, y, share * r)).join("");
  return [
    { ...edged(roll, ellipse(x, y, r) + ellipse(x, y, 0.56 * r), page), evenOdd: true },
    { d: rings, stroke: hex(shade(roll, -10)), strokeWidth: 0.8 },
    { d: ellipse(x, y, 0.58 * r), stroke: hex(wood), strokeWidth: 0.09 * r },
  ];
};

const stencil: Draw = (tone, page) => {
  const { box } = page;
  const unit = 0.17 * Math.min(box.h, 0.62 * box.w);
  const at = (share: number) => box.x + share * box.w;
  const y = box.y + box.h / 2;
  const triangle: Point[] = [
    [at(0.82), y - unit],
    [at(0.82) + unit, y + unit],
    [at(0.82) - unit, y + unit],
  ];
  const square: Box = { x: at(0.18) - unit, y: y - unit, w: 2 * unit, h: 2 * unit };
  const holes = rectangle(square) + ellipse(at(0.5), y, unit) + polygon(triangle);
  return [
    {
      ...edged(tone, rectangle({ ...box, y: box.y + 0.14 * box.h, h: 0.72 * box.h }) + holes, page),
      evenOdd: true,
    },
  ];
};

/** A rolled paper stump, pointed at both ends. */
const blender: Draw = (_tone, page, colour) => {
  const { box } = page;
  const y = box.y + box.h / 2;
  const half = Math.min(0.26 * box.h, 0.1 * box.w);
  const tone = colour ?? lab(85, 0, 4);
  const far = box.x + box.w;
  const body: Point[] = [
    [box.x, y],
    [box.x + 2.2 * half, y - half],
    [far - 2.2 * half, y - half],
    [far, y],
    [far - 2.2 * half, y + half],
    [box.x + 2.2 * half, y + half],
  ];
  const wraps = times(5, (i) =>
    dash(box.x + 2.6 * half + (i + 0.4) * 0.16 * (box.w - 4 * half), y + half, half, -2 * half),
  );
  return [
    edged(tone, polygon(body), page),
    { d: wraps.join(""), stroke: hex(shade(tone, -14)), strokeWidth: 0.8 },
    {
      d: polygon([
        [far, y],
        [far - 1.2 * half, y - 0.54 * half],
        [far - 1.2 * half, y + 0.54 * half],
      ]),
      fill: hex(lab(40)),
    },
  ];
};

const clip: Draw = (tone, page, colour) => {
  const [x, y] = middle(page);
  const u = 0.46 * Math.min(page.box.h, page.box.w);
  const wire: Point[] = [
    [x - 0.42 * u, y + 0.05 * u],
    [x - 0.56 * u, y - 0.9 * u],
    [x, y - 1.1 * u],
    [x + 0.56 * u, y - 0.9 * u],
    [x + 0.42 * u, y + 0.05 * u],
  ];
  const jaw: Point[] = [
    [x - 0.62 * u, y - 0.1 * u],
    [x + 0.62 * u, y - 0.1 * u],
    [x + u, y + u],
    [x - u, y + u],
  ];
  return [
    { d: blob(wire), stroke: hex(shade(steel, -20)), strokeWidth: 0.1 * u, round: true },
    edged(colour ?? shade(tone, -50), polygon(jaw), page),
  ];
};

const kinds = { ruler, sharpener, knife, palette, tape, stencil, blender, clip } as const;

/** The tool by kind; a plain tag for any other. */
export function drawTool(supply: SupplyOf<"tool">, colour: Lab | null, page: Page): Mark[] {
  const kind = supply.traits?.kind ?? "other";
  return kind === "other" ? drawTag(colour, page) : kinds[kind](colour ?? plain, page, colour);
}
