import type { Corners, Point } from "./shapes.ts";
import { solve } from "./solve.ts";

/** Row by row, the 3 × 3 matrix that takes a place of the chart to a place in the picture. */
export type Homography = readonly [number, number, number, number, number, number, number, number, number];

/** The corners of the chart in its own measure: 0 to 1 along its rows (u) and down its columns (v). */
const square = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
] as const;

/** The two equations that one pair of places gives, with h33 taken as 1. */
const equationsOf = (u: number, v: number, { x, y }: Point) => [
  [u, v, 1, 0, 0, 0, -u * x, -v * x, x],
  [0, 0, 0, u, v, 1, -u * y, -v * y, y],
];

/**
 * The map from the chart, 0 to 1 either way, to the picture, by its four corners (Hartley & Zisserman, Multiple
 * View Geometry, 2nd ed. 2004, section 4.1: the inhomogeneous solution; h33 is no 0 here, since the chart's
 * first corner is in the picture). The corners are scaled to about 1 first, as section 4.4 asks.
 * @returns null when the corners do not span an area
 */
export function homographyOf(corners: Corners): Homography | null {
  const size = Math.max(1, ...corners.flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)]));
  const rows = square.flatMap(([u, v], at) => {
    const { x, y } = corners[at] ?? corners[0];
    return equationsOf(u, v, { x: x / size, y: y / size });
  });
  const found = solve(rows)?.[0];
  if (!found) return null;
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = found;
  return [a * size, b * size, c * size, d * size, e * size, f * size, g, h, 1];
}

/** Where a place of the chart lies in the picture. */
export function project(m: Homography, u: number, v: number): Point {
  const w = m[6] * u + m[7] * v + m[8];
  return { x: (m[0] * u + m[1] * v + m[2]) / w, y: (m[3] * u + m[4] * v + m[5]) / w };
}

/** The map the other way: from the picture to the chart. The adjugate serves, since scale does not matter. */
export function inverseOf([a, b, c, d, e, f, g, h, i]: Homography): Homography {
  return [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
}
