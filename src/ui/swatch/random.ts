/**
 * Chance that can be repeated: the same item always gets the same marks.
 * Hash: FNV-1a, 32 bits. Generator: mulberry32 (public domain). Noise: value noise, two octaves.
 */

/** A number from 0 up to but not including 1, another at each call. */
export type Random = () => number;

/** A wandering line: about −1 to 1 for any x, smooth over a distance of 1. */
export type Noise = (x: number) => number;

/** A wandering surface: about −1 to 1. */
export type Noise2 = (x: number, y: number) => number;

/** 32-bit FNV-1a of a text's UTF-16 units. */
export function hash(text: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return h >>> 0;
}

export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** −1 to 1 for a whole number: the heights that noise joins. */
function knot(i: number, seed: number): number {
  let t = Math.imul(i ^ seed, 0x9e3779b1);
  t = Math.imul(t ^ (t >>> 15), 0x85ebca6b);
  return ((t ^ (t >>> 13)) >>> 0) / 2147483648 - 1;
}

const ease = (t: number) => t * t * (3 - 2 * t);

function octave(x: number, seed: number): number {
  const i = Math.floor(x);
  const a = knot(i, seed);
  return a + (knot(i + 1, seed) - a) * ease(x - i);
}

export function noiseFrom(random: Random): Noise {
  const seed = Math.floor(random() * 4294967296);
  return (x) => (octave(x, seed) + 0.5 * octave(2 * x + 0.5, seed ^ 0x5bd1e995)) / 1.5;
}

function octave2(x: number, y: number, seed: number): number {
  const row = Math.floor(y);
  const a = octave(x, seed ^ Math.imul(row, 0x27d4eb2f));
  return a + (octave(x, seed ^ Math.imul(row + 1, 0x27d4eb2f)) - a) * ease(y - row);
}

export function noise2From(random: Random): Noise2 {
  const seed = Math.floor(random() * 4294967296);
  return (x, y) => (octave2(x, y, seed) + 0.5 * octave2(2 * x, 2 * y, seed ^ 0x5bd1e995)) / 1.5;
}
