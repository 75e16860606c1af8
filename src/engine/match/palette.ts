import { deltaE2000, type Lab } from "../colour/index.ts";
import { type Board, type BoardLine, roomLeft } from "./board.ts";
import { unitsPerOne } from "./likeness.ts";
import { leftOutAt, scoredAt } from "./score.ts";
import type { Shelf } from "./shelf.ts";
import { gapUnits } from "./verdict.ts";

/**
 * Stand-ins chosen so that the kit's colours keep their relations to each other. `cost` and `costOfFirst`
 * (the same figure for the stand-ins of greatest likeness) to four decimals; `cost` is never the greater.
 */
export type Palette = Readonly<{
  picks: readonly Readonly<{ line: string; stash: string }>[];
  cost: number;
  costOfFirst: number;
}>;

/** How much a distorted relation counts beside a missed colour. */
const mu = 1;
/** Likeness a line may give up for the palette. */
const mayGiveUp = 0.1 * unitsPerOne;
/** How many stand-ins are tried per line: the nearest in colour. */
const triedPerLine = 60;

/** A line with a pick and both colours. `options`: places it may take, its first pick among them. */
type ColourLine = Readonly<{ line: string; lab: Lab; first: number; options: readonly number[] }>;

/** Places by coloured line, in the lines' order. */
type Places = readonly number[];

type Relations = Readonly<{
  count: number;
  miss: (line: number, place: number) => number;
  /** How far the difference of two stand-ins is from that of the two kit colours. */
  distortion: (i: number, j: number, placeI: number, placeJ: number) => number;
}>;

const labAt = (shelf: Shelf, place: number): Lab | null => shelf.values[place]?.lab ?? null;

/** A person's pick and a last resort stay; any other line may take what stands in and gives up little. */
function optionsOf(shelf: Shelf, line: BoardLine): readonly number[] {
  if (!line.played) return [];
  const first = line.played.scored;
  if (line.played.by === "person" || line.played.lastResort) return [first.place];
  const least = Math.max(gapUnits, first.units - mayGiveUp);
  const past = line.order.findIndex((place) => (line.units[place] ?? 0) < least);
  return [...line.order.slice(0, past < 0 ? undefined : past)]
    .filter((place) => labAt(shelf, place) !== null && leftOutAt(shelf, line, place) === null)
    .map((place) => scoredAt(shelf, line, place))
    .filter((scored) => scored !== null)
    .toSorted((a, b) => (a.deltaE ?? 0) - (b.deltaE ?? 0) || a.rank - b.rank)
    .slice(0, triedPerLine)
    .map(({ place }) => place);
}

function colourLines({ shelf, lines }: Board): readonly ColourLine[] {
  return lines.flatMap((line) => {
    const [lab, first] = [line.kit.values.lab, line.played?.scored.place];
    if (!lab || first === undefined || !labAt(shelf, first)) return [];
    return [{ line: line.line, lab, first, options: optionsOf(shelf, line) }];
  });
}

/** Remembers what it has computed: the search asks for the same pairs again and again. */
function differencesOf(shelf: Shelf): (a: number, b: number) => number {
  const known = new Map<number, number>();
  return (a, b) => {
    const key = Math.min(a, b) * shelf.items.length + Math.max(a, b);
    const before = known.get(key);
    if (before !== undefined) return before;
    const [one, other] = [labAt(shelf, a), labAt(shelf, b)];
    const difference = one && other ? deltaE2000(one, other) : 0;
    known.set(key, difference);
    return difference;
  };
}

function relationsOf(lines: readonly ColourLine[], shelf: Shelf): Relations {
  const between = differencesOf(shelf);
  const kit = lines.map(({ lab }) => lines.map((other) => deltaE2000(lab, other.lab)));
  const misses = lines.map(() => new Map<number, number>());
  return {
    count: lines.length,
    miss: (line, place) => {
      const [own, stash] = [lines[line]?.lab, labAt(shelf, place)];
      const before = misses[line]?.get(place);
      if (before !== undefined) return before;
      const miss = own && stash ? deltaE2000(own, stash) : 0;
      misses[line]?.set(place, miss);
      return miss;
    },
    distortion: (i, j, placeI, placeJ) => Math.abs((kit[i]?.[j] ?? 0) - between(placeI, placeJ)),
  };
}

/** The part of the cost that the lines in `touched` have a hand in; all lines: the whole cost. */
function costOf(relations: Relations, places: Places, touched: readonly number[]): number {
  const { count, miss, distortion } = relations;
  const weight = count > 1 ? (mu * 2) / (count - 1) : 0;
  let [missed, distorted] = [0, 0];
  for (const [order, i] of touched.entries()) {
    missed += miss(i, places[i] ?? -1);
    for (let j = 0; j < count; j++) {
      const at = touched.indexOf(j);
      if (at >= 0 && at <= order) continue; // the line itself, or a pair counted with its other line
      distorted += distortion(i, j, places[i] ?? -1, places[j] ?? -1);
    }
  }
  return missed + weight * distorted;
}

/** New places for one or two lines. */
type Move = readonly Readonly<{ line: number; place: number }>[];

const after = (places: Places, move: Move): Places =>
  places.map((place, line) => move.find((step) => step.line === line)?.place ?? place);

const gainOf = (relations: Relations, places: Places, move: Move): number => {
  const touched = move.map(({ line }) => line);
  return costOf(relations, places, touched) - costOf(relations, after(places, move), touched);
};

/** What line `i` can do: take a place with room, or one whose holder swaps with it or moves to a place with room. */
function movesOf(
  lines: readonly ColourLine[],
  places: Places,
  i: number,
  room: (place: number) => number,
): readonly Move[] {
  const own = places[i];
  if (own === undefined) return [];
  const free = (place: number): boolean => room(place) > places.filter((other) => other === place).length;
  const others = (lines[i]?.options ?? []).filter((place) => place !== own);
  return others.flatMap((place): readonly Move[] => {
    const take = { line: i, place };
    if (free(place)) return [[take]];
    const holders = lines.map((_, holder) => holder).filter((holder) => places[holder] === place);
    return holders.flatMap((holder) =>
      (lines[holder]?.options ?? [])
        .filter((other) => other !== place && (other === own || free(other)))
        .map((other): Move => [take, { line: holder, place: other }]),
    );
  });
}

/** Gains below this are floating-point dust; following them could go round in circles. */
const dust = 1e-9;

/** Line by line, the move that gains most, until no line has one. Every step lowers the cost, so it ends. */
function improve(
  lines: readonly ColourLine[],
  relations: Relations,
  room: (place: number) => number,
): Places {
  let places: Places = lines.map(({ first }) => first);
  for (let improved = true; improved; ) {
    improved = false;
    for (const i of lines.keys()) {
      let [best, most]: [Move, number] = [[], dust];
      for (const move of movesOf(lines, places, i, room)) {
        const gain = gainOf(relations, places, move);
        if (gain > most) [best, most] = [move, gain];
      }
      if (best.length === 0) continue;
      places = after(places, best);
      improved = true;
    }
  }
  return places;
}

const fourDecimals = (value: number): number => Math.round(value * 10_000) / 10_000;

/**
 * Σᵢ ΔE(kᵢ,sᵢ) + μ · 2/(n−1) · Σᵢ<ⱼ |ΔE(kᵢ,kⱼ) − ΔE(sᵢ,sⱼ)| with μ = 1 over the n lines with a pick and both
 * colours, lowered by local search from the stand-ins of greatest likeness. Fills the same lines, keeps a
 * person's picks, and gives up at most 0.10 likeness on any line.
 */
export function keptPalette(board: Board): Palette {
  const lines = colourLines(board);
  const relations = relationsOf(lines, board.shelf);
  const coloured = new Map(lines.map(({ line }, index) => [line, index]));
  const fixed = board.lines.flatMap(({ line, played }) => {
    const uses = played?.uses ?? [];
    return coloured.has(line) ? uses.slice(1) : uses; // the judged use of a coloured line is counted as it moves
  });
  const places = improve(lines, relations, roomLeft(board.shelf, fixed));
  const all = [...lines.keys()];
  const first = lines.map((line) => line.first);
  return {
    picks: board.lines.flatMap(({ line, played }) => {
      const place = places[coloured.get(line) ?? -1] ?? played?.scored.place;
      const item = place === undefined ? undefined : board.shelf.items[place];
      return item ? [{ line, stash: item.id }] : [];
    }),
    cost: fourDecimals(costOf(relations, places, all)),
    costOfFirst: fourDecimals(costOf(relations, first, all)),
  };
}
