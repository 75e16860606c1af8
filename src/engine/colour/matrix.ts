export type Triple = readonly [number, number, number];
export type Matrix = readonly [Triple, Triple, Triple];

const dot = (row: Triple, v: Triple): number => row[0] * v[0] + row[1] * v[1] + row[2] * v[2];

/** Matrix times column vector. */
export const apply = (m: Matrix, v: Triple): Triple => [dot(m[0], v), dot(m[1], v), dot(m[2], v)];
