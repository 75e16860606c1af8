import type { Lab } from "../../../engine/colour/index.ts";
import type { SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import { grain, type Page, paper, times, within } from "../page.ts";
import { dash, type Point, sliver } from "../path.ts";
import { noise2From, noiseFrom } from "../random.ts";
import { type Hex, hex, mix, shade } from "../shade.ts";

/** How a stick breaks over the tooth, and how far a finger can drag it. Common practice, no source. */
type Stick = Readonly<{
  /** Height of tooth, −1 to 1, that the stick no longer reaches down to. */
  bare: number;
  fine: number;
  smear: number;
  body: number;
}>;

const sticks: Readonly<Record<"soft" | "hard" | "oil" | "pan", Stick>> = {
  soft: { bare: -0.46, fine: 1, smear: 0.3, body: 0.72 },
  hard: { bare: -0.42, fine: 0.72, smear: 0.14, body: 0.8 },
  oil: { bare: -0.5, fine: 1.25, smear: 0.1, body: 0.86 },
  pan: { bare: -0.6, fine: 0.9, smear: 0.26, body: 0.74 },
};

/** Fuller inside, thinner towards the edges of the patch: 0 outside, 1 well inside. */
function fullness(x: number, y: number, page: Page, end: number): number {
  const { box } = page;
  const soft = 0.08 * box.h;
  const near = Math.min(x - box.x, end - x, y - box.y + 0.5 * soft, box.y + box.h - y + 0.5 * soft);
  return Math.min(1, Math.max(0, near / soft));
}

/**
 * The stick's grain: for each row, the stretches where it touched the paper. Stretches that meet are
 * one stroke, so that a dense patch costs no more than a thin one.
 */
function touched(page: Page, stick: Stick, bare: number): string {
  const { box, random } = page;
  const tooth = noise2From(random);
  const ragged = noiseFrom(random);
  const row = rowOf(page, stick);
  const speck = 1.7 * row;
  const parts: string[] = [];
  for (let y = box.y + 0.5 * row; y < box.y + box.h; y += row) {
    const end = box.x + box.w * (stick.body + 0.035 * ragged(y / (4 * row)));
    let from: number | null = null;
    for (let x = box.x; x <= end + row; x += 0.7 * row) {
      const on =
        x <= end && tooth(x / speck, y / (0.85 * speck)) > bare + 0.9 * (1 - fullness(x, y, page, end));
      if (on && from === null) from = x;
      if (on || from === null) continue;
      parts.push(
        dash(
          from,
          y + 0.3 * row * (random() - 0.5),
          Math.max(0.2, x - from - row),
          0.35 * row * (random() - 0.5),
        ),
      );
      from = null;
    }
  }
  return parts.join("");
}

const rowOf = (page: Page, stick: Stick) =>
  Math.max(1.15, 1.3 * Math.max(grain(page), page.height / 150)) * (0.6 + 0.4 * stick.fine);

/** A finger's drag to the right: veils of tapering streaks, each shorter and deeper than the last. */
function smear(colour: Lab, page: Page, stick: Stick): Mark[] {
  const { box, random } = page;
  const veils = page.level === "gesture" ? 2 : 5;
  const start = box.x + box.w * (stick.body - 0.16);
  return times(veils, (i) => {
    const far = 0.18 + (stick.smear * (veils - i)) / veils;
    const d = times(15, (k) => {
      const at = (k + 0.5) / 15;
      const y = box.y + box.h * (0.04 + 0.92 * at);
      const length = box.w * far * (1 - 0.22 * Math.abs(2 * at - 1) ** 2) * within(random, 0.78, 1);
      return sliver(start, y, Math.min(length, box.x + box.w - start), box.h * within(random, 0.1, 0.2));
    }).join("");
    return { d, fill: hex(mix(colour, paper, 0.86 - (0.34 * i) / veils)) };
  });
}

function dust(page: Page, stick: Stick): string {
  const { box, random } = page;
  return times(page.level === "full" ? 60 : 22, () => {
    const x = box.x + box.w * (stick.body + (1 - stick.body) * random() ** 1.5);
    return dash(x, box.y + box.h * random(), 0.5 * random(), 0.3);
  }).join("");
}

/** Specks of a stick over the tooth of the paper, and a smear to the right. */
export function drawPastel(supply: SupplyOf<"pastel">, colour: Lab, page: Page): Mark[] {
  const stick = sticks[supply.traits?.kind ?? "soft"];
  const row = rowOf(page, stick);
  const own = hex(colour);
  const strokeWidth = Math.round(12.5 * row) / 10;
  const grainOf = (bare: number, tone: Hex): Mark => ({
    d: touched(page, stick, bare),
    stroke: tone,
    strokeWidth,
    round: true,
  });
  // Small grains are mostly edge, so on a small chip fewer of them stay bare.
  const bare = stick.bare - 0.24 * Math.max(0, 1 - page.height / 150);
  const veils = smear(colour, page, stick);
  if (page.level === "gesture") return [...veils, grainOf(stick.bare, own)];
  return [
    ...veils,
    {
      d: dust(page, stick),
      stroke: hex(mix(colour, paper, 0.25)),
      strokeWidth: 0.8 * grain(page),
      round: true,
    },
    grainOf(bare, own),
    grainOf(0.56, hex(shade(colour, -7))),
    grainOf(0.6, hex(shade(colour, 6))),
  ];
}

export function pastelShape(page: Page): Point[][] {
  const { box } = page;
  const end = box.x + 0.75 * box.w;
  return [
    [
      [box.x, box.y],
      [end, box.y],
      [end, box.y + box.h],
      [box.x, box.y + box.h],
    ],
  ];
}
