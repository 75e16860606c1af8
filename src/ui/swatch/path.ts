/**
 * Path data, written short: one digit after the point, relative steps, no needless characters.
 * Steps are taken between rounded points, so that rounding never adds up along a line.
 */
export type Point = readonly [x: number, y: number];

/** A box in px: left, top, width, height. */
export type Box = Readonly<{ x: number; y: number; w: number; h: number }>;

const tenths = (value: number) => Math.round(value * 10);

/** A number of tenths as text. */
function text(t: number): string {
  const size = Math.abs(t);
  const digits =
    size % 10 === 0 ? String(size / 10) : `${size < 10 ? "" : Math.floor(size / 10)}.${size % 10}`;
  return t < 0 ? `-${digits}` : digits;
}

/** The same with what parts it from the number before it: a space, unless its sign does. */
const step = (t: number) => (t < 0 ? text(t) : ` ${text(t)}`);

const start = (x: number, y: number) => `M${text(tenths(x))}${step(tenths(y))}`;

/** Takes out the space after a command. */
const tight = (d: string) => d.replace(/([lq]) /, "$1");

/** Straight lines through all points. */
export function line(points: readonly Point[], close?: "close"): string {
  const [first, ...rest] = points;
  if (!first || rest.length === 0) return ""; // one point alone is no line, and no valid path either
  let [px, py] = [tenths(first[0]), tenths(first[1])];
  let d = `${start(...first)}l`;
  for (const [x, y] of rest) {
    const [qx, qy] = [tenths(x), tenths(y)];
    d += step(qx - px) + step(qy - py);
    [px, py] = [qx, qy];
  }
  return close ? `${tight(d)}z` : tight(d);
}

export const polygon = (points: readonly Point[]) => line(points, "close");

const between = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

/** A soft closed shape: each point pulls the line towards itself, the line passes half way between. */
export function blob(points: readonly Point[]): string {
  const last = points.at(-1);
  const first = points[0];
  if (!last || !first) return "";
  return curve([between(last, first), ...points, between(last, first)], "z");
}

/** A soft open line from the first point to the last. */
export function curve(points: readonly Point[], ending = ""): string {
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last) return "";
  let [px, py] = [tenths(first[0]), tenths(first[1])];
  let d = `${start(...first)}q`;
  for (let i = 1; i < points.length - 1; i++) {
    const pull = points[i] ?? last;
    const next = points[i + 1] ?? last;
    const to = i === points.length - 2 ? next : between(pull, next);
    const at: Point = [tenths(to[0]), tenths(to[1])];
    d += step(tenths(pull[0]) - px) + step(tenths(pull[1]) - py) + step(at[0] - px) + step(at[1] - py);
    [px, py] = at;
  }
  return tight(d) + ending;
}

/** A sliver from (x, y) to the right: `thick` px in its middle, nothing at its ends. */
export function sliver(x: number, y: number, length: number, thick: number): string {
  const half = tenths(length / 2);
  const bend = Math.max(1, tenths(thick));
  return `${start(x, y)}q${text(half)}${step(-bend)}${step(2 * half)} 0${step(-half)}${step(bend)}${step(-2 * half)} 0z`;
}

/** A short straight stroke. */
export function dash(x: number, y: number, dx: number, dy: number): string {
  return `${start(x, y)}l${text(tenths(dx))}${step(tenths(dy))}`;
}

export function rectangle(box: Box): string {
  const w = tenths(box.w);
  return `${start(box.x, box.y)}h${text(w)}v${text(tenths(box.h))}h${text(-w)}z`;
}

export function ellipse(x: number, y: number, rx: number, ry = rx): string {
  const r = `${text(tenths(rx))}${step(tenths(ry))} 0 1 1`;
  const across = tenths(2 * rx);
  return `${start(x - rx, y)}a${r}${step(across)} 0a${r}${step(-across)} 0z`;
}
