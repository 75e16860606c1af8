import type { Point } from "./room.ts";

/** An upright box in px. */
export type Box = Readonly<{ left: number; top: number; right: number; bottom: number }>;

/** A straight line in px. */
export type Segment = Readonly<{ from: Point; to: Point }>;

export const boxAround = ({ x, y }: Point, halfWidth: number, halfHeight = halfWidth): Box => ({
  left: x - halfWidth,
  top: y - halfHeight,
  right: x + halfWidth,
  bottom: y + halfHeight,
});

/** The area two boxes share, in px²; 0 when apart. */
export function overlap(one: Box, other: Box): number {
  const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
  const high = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
  return wide > 0 && high > 0 ? wide * high : 0;
}

/** How far `box` reaches out of `frame`, in px. */
export const beyond = (box: Box, frame: Box): number =>
  Math.max(0, frame.left - box.left, frame.top - box.top, box.right - frame.right, box.bottom - frame.bottom);

/** The part of a line, 0 to 1, that lies within [low, high] along one axis; null for none. */
function within(from: number, step: number, low: number, high: number): readonly [number, number] | null {
  if (step === 0) return from >= low && from <= high ? [0, 1] : null;
  const [a, b] = [(low - from) / step, (high - from) / step];
  return [Math.min(a, b), Math.max(a, b)];
}

/** Whether a line passes through a box. */
export function crosses({ from, to }: Segment, box: Box): boolean {
  const across = within(from.x, to.x - from.x, box.left, box.right);
  const down = within(from.y, to.y - from.y, box.top, box.bottom);
  if (!across || !down) return false;
  return Math.max(0, across[0], down[0]) <= Math.min(1, across[1], down[1]);
}
