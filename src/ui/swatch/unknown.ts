import type { Supply } from "../../engine/supply/index.ts";
import type { Mark } from "./drawing.ts";
import { hatchShape } from "./families/hatch.ts";
import { bottleWith } from "./families/ink.ts";
import { drawLinerUnknown } from "./families/liner.ts";
import { markerShape } from "./families/marker.ts";
import { paintShape } from "./families/paint.ts";
import { pastelShape } from "./families/pastel.ts";
import type { Page } from "./page.ts";
import { line, type Point, polygon } from "./path.ts";
import { hex, lab } from "./shade.ts";

const grey = lab(52, -2, 1);
const pale = lab(74, -1, 0.5);

/** Where a slanting line x − y = `at` crosses the edges of a shape, from the left. */
function crossings(shape: readonly Point[], at: number): Point[] {
  const found: Point[] = [];
  for (const [i, [x1, y1]] of shape.entries()) {
    const [x2, y2] = shape[(i + 1) % shape.length] ?? [x1, y1];
    const [d1, d2] = [x1 - y1 - at, x2 - y2 - at];
    if (d1 < 0 === d2 < 0) continue;
    const t = d1 / (d1 - d2);
    found.push([x1 + t * (x2 - x1), y1 + t * (y2 - y1)]);
  }
  return found.toSorted((a, b) => a[0] - b[0]);
}

/** Slanting lines inside a shape. */
function hatching(shape: readonly Point[], pitch: number): string {
  const sums = shape.map(([x, y]) => x - y);
  const parts: string[] = [];
  for (let at = Math.min(...sums) + pitch / 2; at < Math.max(...sums); at += pitch) {
    const found = crossings(shape, at);
    for (let i = 0; i + 1 < found.length; i += 2) parts.push(line(found.slice(i, i + 2)));
  }
  return parts.join("");
}

function empty(shapes: readonly (readonly Point[])[], page: Page): Mark[] {
  const small = page.level === "gesture";
  const pitch = small ? 5 : 5 + 0.03 * page.height;
  return [
    { d: shapes.map((shape) => hatching(shape, pitch)).join(""), stroke: hex(pale), strokeWidth: 0.8 },
    { d: shapes.map(polygon).join(""), stroke: hex(grey), strokeWidth: 1, dash: small ? "2 1.5" : "4 3" },
  ];
}

/**
 * A supply whose colour is not known: what its family would leave, as a dashed outline with grey hatching.
 * @returns null for families that have a look without a colour
 */
export function drawUnknown(supply: Supply, page: Page): Mark[] | null {
  switch (supply.family) {
    case "marker":
      return empty(markerShape(supply, page), page);
    case "paint":
      return empty(paintShape(supply, page), page);
    case "pastel":
      return empty(pastelShape(page), page);
    case "colour-pencil":
      return empty(hatchShape(page), page);
    case "ink":
      return bottleWith(page, (shape) => empty([shape], page));
    case "liner":
      return drawLinerUnknown(supply, grey, page);
    default:
      return null;
  }
}
