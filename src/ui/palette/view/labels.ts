import { type Box, beyond, boxAround, crosses, overlap, type Segment } from "./boxes.ts";
import type { Point } from "./room.ts";

/** A text that wants to stand by a mark: `away` is where it should not lean, its partner say. */
export type Wish = Readonly<{ at: Point; away: Point; halfWidth: number; halfHeight: number }>;

/** Where it came to stand: its middle. `stray`: it stands off, or nearer to another's mark, and needs a leader. */
export type LabelPlace = Readonly<{ at: Point; box: Box; stray: boolean }>;

/** A mark, and the wish it belongs to, by its place among them. */
export type OwnedMark = Readonly<{ at: Point; owner: number }>;

/** What labels should keep off. `soft`: what may be crossed at need. */
export type Around = Readonly<{
  frame: Box;
  marks: readonly OwnedMark[];
  words: readonly Box[];
  soft: readonly Segment[];
}>;

const directions = 24;
const reaches = [0, 5, 11, 18, 26, 36, 48] as const;
const rounds = 3;
/** Up to here a label stands by its mark. */
const standsByPx = 5;
/** So much nearer than any other mark a label's own must be, in px, to be plainly its own. */
const leastLead = 4;

/** The least distance between a mark's middle and a label's, in this direction, so that they do not touch. */
function clearance(wish: Wish, mark: number, dx: number, dy: number): number {
  const [wide, high] = [mark + wish.halfWidth, mark + wish.halfHeight];
  return Math.min(dx === 0 ? Infinity : wide / Math.abs(dx), dy === 0 ? Infinity : high / Math.abs(dy));
}

/** A place tried: how far off, in px, and how many steps away from the wished side. */
type Tried = Readonly<{ at: Point; box: Box; reach: number; turn: number }>;

/** Every place tried for a label, nearest first. */
function placesFor(wish: Wish, mark: number): readonly Tried[] {
  const start = Math.atan2(wish.at.y - wish.away.y, wish.at.x - wish.away.x);
  return reaches.flatMap((reach) =>
    Array.from({ length: directions }, (_, step) => {
      const turn = (step % 2 === 0 ? step : -(step + 1)) / 2; // 0, −1, 1, −2, 2 …: from the wished side outwards
      const angle = start + (turn * 2 * Math.PI) / directions;
      const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
      const far = clearance(wish, mark, dx, dy) + 1 + reach;
      const at = { x: wish.at.x + dx * far, y: wish.at.y + dy * far };
      return { at, box: boxAround(at, wish.halfWidth, wish.halfHeight), reach, turn: Math.abs(turn) };
    }),
  );
}

const distance = (one: Point, other: Point): number => Math.hypot(one.x - other.x, one.y - other.y);

/** Whether a reader could take the label for another pair's: its mark is no further off than the own one. */
function isDoubtful({ at }: Tried, wish: Wish, owner: number, marks: readonly OwnedMark[]): boolean {
  const own = distance(at, wish.at) + leastLead;
  return marks.some((mark) => mark.owner !== owner && distance(at, mark.at) < own);
}

type Setting = Readonly<{ around: Around; hard: readonly Box[] }>;

const shared = (box: Box, others: readonly Box[]): number =>
  others.reduce((sum, other) => sum + overlap(box, other), 0);

/** How badly a label stands, but for other labels: on things, out of the frame, across lines, far off. */
function costAlone(place: Tried, wish: Wish, owner: number, { around, hard }: Setting): number {
  const across = around.soft.filter((line) => crosses(line, place.box)).length;
  return (
    shared(place.box, hard) * 15 +
    beyond(place.box, around.frame) * 400 +
    across * 60 +
    (isDoubtful(place, wish, owner, around.marks) ? 24 : 0) +
    place.reach * 3 +
    place.turn * 2
  );
}

/** Everywhere a label may stand, the best first, were it alone. */
const optionsFor = (wish: Wish, owner: number, mark: number, setting: Setting): readonly Option[] =>
  placesFor(wish, mark)
    .map((place) => ({ place, cost: costAlone(place, wish, owner, setting) }))
    .toSorted((one, other) => one.cost - other.cost);

type Option = Readonly<{ place: Tried; cost: number }>;

/** The best place, the other labels standing where they do. */
function bestBeside(options: readonly Option[], labels: readonly Box[]): Tried | undefined {
  let [best, least]: [Tried | undefined, number] = [undefined, Infinity];
  for (const { place, cost } of options) {
    if (cost >= least) break; // sorted: nothing after it can do better
    const whole = cost + shared(place.box, labels) * 40;
    if (whole < least) [best, least] = [place, whole];
  }
  return best;
}

const asPlaced = (place: Tried, wish: Wish, owner: number, marks: readonly OwnedMark[]): LabelPlace => ({
  at: place.at,
  box: place.box,
  stray: place.reach > standsByPx || isDoubtful(place, wish, owner, marks),
});

/**
 * Stands labels by their marks so that they keep off each other: each in turn takes the best place left, then
 * all look round again. Same wishes, same places.
 * @param mark half a mark's width, in px
 * @returns one place for each wish
 */
export function placeLabels(wishes: readonly Wish[], mark: number, around: Around): readonly LabelPlace[] {
  const hard = [...around.marks.map(({ at }) => boxAround(at, mark)), ...around.words];
  const options = wishes.map((wish, owner) => optionsFor(wish, owner, mark, { around, hard }));
  const placed: (Tried | undefined)[] = wishes.map(() => undefined);
  for (let round = 0; round < rounds; round++) {
    for (const [index, own] of options.entries()) {
      const others = placed.flatMap((one, other) => (one && other !== index ? [one.box] : []));
      placed[index] = bestBeside(own, others);
    }
  }
  return wishes.flatMap((wish, index) => {
    const place = placed[index];
    return place ? [asPlaced(place, wish, index, around.marks)] : [];
  });
}
