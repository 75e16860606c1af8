import type { Lab } from "../../../engine/colour/index.ts";
import type { SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import type { Page } from "../page.ts";
import { ellipse, type Point, polygon } from "../path.ts";
import { hex, lab, shade } from "../shade.ts";

/** A luggage tag, for whatever has no hand of its own. */
export function drawTag(colour: Lab | null, page: Page): Mark[] {
  const { box } = page;
  const tone = colour ?? lab(94, 0.4, 2.6);
  const h = Math.min(0.82 * box.h, 0.6 * box.w);
  const [top, foot] = [box.y + (box.h - h) / 2, box.y + (box.h + h) / 2];
  const w = Math.min(box.w, 2.2 * h);
  const left = box.x + (box.w - w) / 2;
  const right = left + w;
  const cut = 0.34 * h;
  const body: Point[] = [
    [left + cut, top],
    [right, top],
    [right, foot],
    [left + cut, foot],
    [left, foot - cut],
    [left, top + cut],
  ];
  const thin = page.level === "gesture" ? 0.8 : 1.1;
  const edge = hex(shade(tone, -40));
  return [
    { d: polygon(body), fill: hex(tone), stroke: edge, strokeWidth: thin },
    {
      d: ellipse(left + 0.3 * h, box.y + box.h / 2, 0.08 * h),
      fill: page.ground,
      stroke: edge,
      strokeWidth: thin,
    },
  ];
}

export const drawOther = (_supply: SupplyOf<"other">, colour: Lab | null, page: Page): Mark[] =>
  drawTag(colour, page);
