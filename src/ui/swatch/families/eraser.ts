import type { Lab } from "../../../engine/colour/index.ts";
import type { SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import { grain, type Page, times, within } from "../page.ts";
import { type Box, blob, curve, ellipse, type Point, polygon, rectangle } from "../path.ts";
import { noiseFrom } from "../random.ts";
import { hex, lab, shade } from "../shade.ts";

type Kind = "kneaded" | "plastic" | "rubber" | "gum" | "powered" | "pencil";

/** What each kind looks like new, where its colour is not known. Common practice, no source. */
const usual: Readonly<Record<Kind, Lab>> = {
  kneaded: lab(70, -0.6, -2),
  plastic: lab(92, 0.6, 2.6),
  rubber: lab(68, 24, 14),
  gum: lab(72, 6, 26),
  powered: lab(93, 0, 1.5),
  pencil: lab(88, 7, 5),
};
const sleeve = lab(48, -5, 1);

/** A lump dented by fingers, lying in its own shadow. */
function kneaded(tone: Lab, page: Page): Mark[] {
  const { box, random } = page;
  const waver = noiseFrom(random);
  const [rx, ry] = [Math.min(box.w * 0.47, box.h), Math.min(box.h * 0.47, box.w * 0.34)];
  const [x, y] = [box.x + box.w / 2, box.y + box.h * 0.48];
  const ring = (cx: number, cy: number, sx: number, sy: number, rough: number): Point[] =>
    times(22, (i) => {
      const turn = (2 * Math.PI * i) / 22;
      const size = 1 + rough * waver(1.7 * (1 + Math.cos(turn)) + 2.2 * (1 + Math.sin(turn)));
      return [cx + sx * size * Math.cos(turn), cy + sy * size * Math.sin(turn)];
    });
  const lump = ring(x, y, rx, ry, 0.17);
  const drop = 0.05 * box.h;
  const marks: Mark[] = [
    { d: blob(lump.map(([px, py]): Point => [px + 0.5 * drop, py + drop])), fill: hex(shade(tone, -18)) },
    { d: blob(lump), fill: hex(tone) },
  ];
  if (page.level === "gesture") return marks;
  const dent = (dx: number, dy: number, long: number) =>
    curve([
      [x + dx * rx, y + dy * ry],
      [x + (dx + 0.3 * long) * rx, y + (dy - 0.16) * ry],
      [x + (dx + 0.66 * long) * rx, y + (dy + 0.1) * ry],
      [x + (dx + long) * rx, y + (dy - 0.14) * ry],
    ]);
  return [
    ...marks,
    { d: blob(ring(x - 0.22 * rx, y - 0.52 * ry, 0.42 * rx, 0.24 * ry, 0.16)), fill: hex(shade(tone, 6)) },
    {
      d: dent(-0.55, 0.16, 1) + dent(-0.15, 0.6, 0.8) + dent(0.4, -0.3, 0.35),
      stroke: hex(shade(tone, -16)),
      strokeWidth: 1.3 * grain(page),
      round: true,
    },
  ];
}

function crumbs(tone: Lab, page: Page, from: number): Mark {
  const { box, random } = page;
  const size = 0.9 * grain(page);
  const d = times(7, () => {
    const x = within(random, from, box.x + box.w);
    const y = box.y + box.h * within(random, 0.93, 1);
    return curve([
      [x, y],
      [x + 1.5 * size, y - 1.3 * size],
      [x + 3.4 * size, y + 0.3 * size],
    ]);
  }).join("");
  return { d, stroke: hex(shade(tone, -34)), strokeWidth: size, round: true };
}

/** The front and the two lit sides of a block, seen from the right. */
function solid(box: Box, deep: number, worn: number): Readonly<{ front: string; top: string; side: string }> {
  const [right, foot] = [box.x + box.w, box.y + box.h];
  return {
    front: curve(
      [
        [box.x, foot],
        [box.x, foot],
        [box.x, box.y],
        [box.x, box.y],
        [right - worn, box.y],
        [right - 0.12 * worn, box.y + 0.12 * worn],
        [right, box.y + worn],
        [right, foot],
        [right, foot],
        [box.x, foot],
      ],
      "z",
    ),
    top: polygon([
      [box.x, box.y],
      [box.x + deep, box.y - deep],
      [right + deep - 0.8 * worn, box.y - deep],
      [right - 0.8 * worn, box.y],
    ]),
    side: curve(
      [
        [right - worn, box.y],
        [right - worn, box.y],
        [right + deep - worn, box.y - deep],
        [right + deep - 0.1 * worn, box.y - deep + 0.1 * worn],
        [right + deep, box.y - deep + worn],
        [right + deep, foot - deep],
        [right + deep, foot - deep],
        [right, foot],
        [right, foot],
        [right - worn, box.y],
      ],
      "z",
    ),
  };
}

function blockBox(page: Page, deep: number): Box {
  const { box } = page;
  const h = Math.min(0.86 * box.h, 0.62 * box.w) - deep;
  const w = Math.min(box.w - deep, 2.6 * h);
  return { x: box.x + (box.w - w - deep) / 2, y: box.y + (box.h - h + deep) / 2 - 0.02 * box.h, w, h };
}

/** A block in a cardboard sleeve with one corner rubbed round. */
function plastic(tone: Lab, page: Page): Mark[] {
  const deep = Math.min(0.13 * page.box.h, 0.1 * page.box.w);
  const box = blockBox(page, deep);
  const parts = solid(box, deep, 0.42 * box.h);
  const cover: Box = { ...box, w: 0.36 * box.w };
  const right = cover.x + cover.w;
  const outline = hex(shade(tone, -36));
  const marks: Mark[] = [
    { d: parts.top + parts.side, fill: hex(shade(tone, -9)) },
    { d: parts.front, fill: hex(tone), stroke: outline, strokeWidth: 0.8 * Math.min(1.4, grain(page)) },
    {
      d: polygon([
        [box.x, box.y],
        [box.x + deep, box.y - deep],
        [right + deep, box.y - deep],
        [right, box.y],
      ]),
      fill: hex(shade(sleeve, -12)),
    },
    { d: rectangle(cover), fill: hex(sleeve) },
  ];
  if (page.level === "gesture") return marks;
  return [
    ...marks,
    { d: rectangle({ ...cover, y: cover.y + 0.32 * cover.h, h: 0.36 * cover.h }), fill: hex(lab(88, -1, 1)) },
    crumbs(tone, page, right),
  ];
}

/** A bevelled block: rubber slants at both ends, gum crumbles at its corners. */
function bar(kind: Kind, tone: Lab, page: Page): Mark[] {
  const { box, random } = page;
  const deep = Math.min(0.13 * box.h, 0.1 * box.w);
  const b = blockBox(page, deep);
  const slant = kind === "rubber" ? 0.34 * b.h : 0;
  const rough = () => (kind === "gum" ? 0.025 * b.h * random() : 0);
  const corner = kind === "gum" ? 0.1 * b.h : 0;
  const front: Point[] = [
    [b.x + slant + corner, b.y + rough()],
    [b.x + 0.55 * b.w, b.y + rough()],
    [b.x + b.w - corner, b.y + rough()],
    [b.x + b.w - rough(), b.y + corner],
    [b.x + b.w - slant - rough(), b.y + b.h - corner],
    [b.x + b.w - slant - corner, b.y + b.h - rough()],
    [b.x + 0.4 * b.w, b.y + b.h - rough()],
    [b.x + corner, b.y + b.h],
    [b.x + rough(), b.y + b.h - corner],
    [b.x + slant, b.y + corner],
  ];
  const back = front.map(([x, y]): Point => [x + deep, y - deep]);
  const hull: Point[] = [
    front[9] ?? [0, 0],
    front[0] ?? [0, 0],
    ...back.slice(0, 5),
    front[4] ?? [0, 0],
    front[3] ?? [0, 0],
  ];
  const marks: Mark[] = [
    { d: polygon(hull), fill: hex(shade(tone, -14)) },
    { d: polygon(front), fill: hex(tone), stroke: hex(shade(tone, -22)), strokeWidth: 0.8 },
  ];
  return page.level === "gesture" ? marks : [...marks, crumbs(tone, page, b.x + 0.2 * b.w)];
}

/** A stick of eraser in a holder: a pencil to sharpen, or a machine to press. */
function stick(kind: Kind, tone: Lab, page: Page): Mark[] {
  const { box } = page;
  const half = Math.min(0.3 * box.h, 0.17 * box.w);
  const y = box.y + box.h / 2;
  const [grip, tip] = [box.x + 0.34 * box.w, box.x + 0.86 * box.w];
  const holder = kind === "powered" ? lab(40, -4, -3) : lab(55, -3, -14);
  const nib = kind === "powered" ? 0.86 : 0.98;
  const rod: Point[] = [
    [grip, y - nib * half],
    [tip, y - nib * half],
    [box.x + box.w, y - 0.34 * half],
    [box.x + box.w, y + 0.34 * half],
    [tip, y + nib * half],
    [grip, y + nib * half],
  ];
  return [
    { d: polygon(rod), fill: hex(tone), stroke: hex(shade(tone, -34)), strokeWidth: 0.8 },
    { d: rectangle({ x: box.x, y: y - 1.06 * half, w: grip - box.x, h: 2.12 * half }), fill: hex(holder) },
    {
      d: rectangle({ x: box.x, y: y - 0.7 * half, w: grip - box.x, h: 0.3 * half }),
      fill: hex(shade(holder, 12)),
    },
    ...(kind === "powered"
      ? [{ d: ellipse(box.x + 0.2 * box.w, y + 0.25 * half, 0.26 * half), fill: hex(shade(holder, 32)) }]
      : []),
  ];
}

/** The eraser itself, by kind; of unknown kind, a block in a sleeve. */
export function drawEraser(supply: SupplyOf<"eraser">, colour: Lab | null, page: Page): Mark[] {
  const kind = supply.traits?.kind ?? "plastic";
  const tone = colour ?? usual[kind];
  if (kind === "kneaded") return kneaded(tone, page);
  if (kind === "plastic") return plastic(tone, page);
  if (kind === "powered" || kind === "pencil") return stick(kind, tone, page);
  return bar(kind, tone, page);
}
