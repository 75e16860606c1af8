import type { Room } from "../../parts/room.ts";
import type { Entry } from "./entries.ts";

export type { Room };

/** A place in px. */
export type Point = Readonly<{ x: number; y: number }>;

/** How large everything is drawn: the one scale of both pictures, and where they stand. */
export type Measures = Readonly<{
  /** Both pictures side by side, rather than one under the other. */
  beside: boolean;
  /** Chroma at the outermost ring: a multiple of 10, at least 50. */
  most: number;
  radius: number;
  /** px of one CIELAB unit, the same in both. */
  unit: number;
  /** Half a mark's width. */
  mark: number;
  /** Room for the hue words, at the sides and above and below; large text on little room reaches over the ring. */
  side: number;
  edge: number;
  /** Width of the ladder with its figures. */
  ladder: number;
}>;

const besidePx = 720;
const leastMost = 50;
const mostRadius = 224;
const gapPx = 48;

const chromaOf = ({ kit, standIn }: Entry): number =>
  Math.max(...[kit, standIn].map((spot) => (spot ? Math.hypot(spot.lab.a, spot.lab.b) : 0)));

/** The outermost ring: the strongest colour lies inside it, not on it. */
const ringFor = (entries: readonly Entry[]): number =>
  Math.max(leastMost, Math.ceil((Math.max(0, ...entries.map(chromaOf)) + 2) / 10) * 10);

/** With the least ring at 50, the ladder's hundred steps are never taller than the disc is wide. */
export function measuresFor(entries: readonly Entry[], { width, textScale }: Room): Measures {
  const beside = width >= besidePx * textScale;
  const side = Math.min(44 * textScale, width * 0.16);
  const room = beside ? width * 0.54 : width;
  const radius = Math.max(Math.min(mostRadius, room / 2 - side), 72);
  const most = ringFor(entries);
  const disc = 2 * (radius + side);
  return {
    beside,
    most,
    radius,
    unit: radius / most,
    mark: radius > 150 ? 5 : 4.25,
    side,
    edge: 26 * textScale,
    ladder: beside ? width - disc - gapPx : width,
  };
}
