import type { Supply } from "../supply/index.ts";
import { type OwnPick, ownPicks } from "./persons.ts";
import { capacityOf, gameOf, type MatchRemake } from "./rules.ts";
import type { Weights } from "./schema.ts";
import { leftOutAt, rankOf, type Scored, type ScoredLine, scoredAt, scoreLine } from "./score.ts";
import type { Shelf } from "./shelf.ts";
import { bestStandIns, type StandIn } from "./standIns.ts";
import { gapUnits } from "./verdict.ts";

/** As much of a kit as matching asks for. */
export type MatchKit = Readonly<{
  id: string;
  lines?: readonly Readonly<{ id: string; supply: Supply }>[] | null | undefined;
  loggedOn?: string | null | undefined;
  received?: boolean | null | undefined;
}>;

/** What plays a line's part. `uses`: places taken, the judged one first (a person may mix two). */
export type Played = Readonly<{
  scored: Scored;
  uses: readonly number[];
  by: "engine" | "person";
  lastResort: boolean;
}>;

/** One line of the board with what plays it. `second`: the next best item and what it would cost in all. */
export type BoardLine = ScoredLine &
  Readonly<{ played: Played | null; second: Readonly<{ place: number; costUnits: number }> | null }>;

export type Board = Readonly<{ kit: string; shelf: Shelf; lines: readonly BoardLine[] }>;

const perPlace = (uses: readonly number[]): ReadonlyMap<number, number> => {
  const counts = new Map<number, number>();
  for (const place of uses) counts.set(place, (counts.get(place) ?? 0) + 1);
  return counts;
};

/** How many more lines each of the given places can serve, once `uses` have had theirs. */
export function roomLeft(shelf: Shelf, uses: readonly number[]): (place: number) => number {
  const taken = perPlace(uses);
  return (place) => {
    const item = shelf.items[place];
    return item ? capacityOf(item) - (taken.get(place) ?? 0) : 0;
  };
}

type Room = (place: number) => number;

/** Whether a place may play a line's part, as far as the line itself goes. */
type Allowed = (line: ScoredLine, place: number) => boolean;

/** The first `count` of a line's places that may play it and have room: best first, so the best. */
function bestPlaces(line: ScoredLine, allowed: Allowed, room: Room, count: number): readonly number[] {
  const found: number[] = [];
  for (const place of line.order) {
    if (found.length === count || (line.units[place] ?? 0) < gapUnits) break;
    if (room(place) > 0 && allowed(line, place)) found.push(place);
  }
  return found;
}

/** Solves some lines over what `allowed` lets them have. More than n + 1 places each could not change the outcome. */
function solve(lines: readonly ScoredLine[], shelf: Shelf, room: Room, allowed: Allowed): readonly StandIn[] {
  const rows = lines.map((line) => bestPlaces(line, allowed, room, lines.length + 1));
  const capacity = new Map(rows.flat().map((place) => [place, room(place)]));
  const choices = lines.map((line, index) =>
    (rows[index] ?? []).map((place) => ({
      column: place,
      units: line.units[place] ?? 0,
      rank: rankOf(line.relations.get(place) ?? null, place, shelf.items.length),
    })),
  );
  return bestStandIns(choices, capacity);
}

const standsIn =
  (shelf: Shelf): Allowed =>
  (line, place) =>
    leftOutAt(shelf, line, place) === null;

/** Rule 2's end: what a line may fall back on when it would otherwise be a gap. */
const isLastResort =
  (shelf: Shelf): Allowed =>
  (line, place) =>
    line.relations.get(place) === "same" && leftOutAt(shelf, line, place) === "received-before";

const playedBy = (by: Played["by"], scored: Scored, uses: readonly number[], lastResort = false): Played => ({
  scored,
  uses,
  by,
  lastResort,
});

const nothing = { played: null, second: null };

function playOwn(shelf: Shelf, line: ScoredLine, own: OwnPick): BoardLine {
  const scored = scoredAt(shelf, line, own.places[0] ?? null);
  return { ...line, ...nothing, played: scored && playedBy("person", scored, own.places) };
}

function playBest(shelf: Shelf, line: ScoredLine, { column, second }: StandIn): BoardLine {
  const scored = scoredAt(shelf, line, column);
  return {
    ...line,
    played: scored && playedBy("engine", scored, [scored.place]),
    second: second && { place: second.column, costUnits: second.costUnits },
  };
}

const usesOf = (lines: readonly BoardLine[]): readonly number[] =>
  lines.flatMap(({ played }) => played?.uses ?? []);

/** Gives what is still a gap the received product itself, where it is there and free. */
function fallBack(
  lines: readonly BoardLine[],
  shelf: Shelf,
  isOpen: (line: BoardLine) => boolean,
): readonly BoardLine[] {
  const gaps = lines.filter((line) => !line.played && isOpen(line));
  const found = solve(gaps, shelf, roomLeft(shelf, usesOf(lines)), isLastResort(shelf));
  const filled = new Map(
    gaps.map((line, index) => [line.line, scoredAt(shelf, line, found[index]?.column ?? null)]),
  );
  return lines.map((line) => {
    const scored = filled.get(line.line);
    if (!scored) return line;
    // Its next best was found against a gap, which counts 0: it would lose this likeness besides.
    const second = line.second && { ...line.second, costUnits: line.second.costUnits + scored.units };
    return { ...line, second, played: playedBy("engine", scored, [scored.place], true) };
  });
}

/**
 * Plays a kit: a person's picks stand, the rest is solved around them, and what is then still a gap may fall
 * back on what was received.
 */
export function boardOf(
  kit: MatchKit,
  shelf: Shelf,
  weights: Weights | null,
  remake: MatchRemake | null | undefined,
): Board {
  const own = ownPicks(remake, shelf);
  const rules = { game: gameOf(kit, remake), weights };
  const lines = (kit.lines ?? []).map((line) =>
    scoreLine(shelf, line, rules, own.get(line.id)?.places[0] ?? null),
  );
  const open = lines.filter(({ line }) => !own.has(line));
  const taken = lines.flatMap(({ line }) => own.get(line)?.places ?? []);
  const best = solve(open, shelf, roomLeft(shelf, taken), standsIn(shelf));
  const solved = new Map(open.map((line, index) => [line.line, best[index]]));
  const played = lines.map((line): BoardLine => {
    const [mine, found] = [own.get(line.line), solved.get(line.line)];
    if (mine) return playOwn(shelf, line, mine);
    return found ? playBest(shelf, line, found) : { ...line, ...nothing };
  });
  return { kit: kit.id, shelf, lines: fallBack(played, shelf, ({ line }) => !own.has(line)) };
}
