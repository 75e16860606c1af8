import { type Kinship, type StashItem, type Supply, sheetMm } from "../supply/index.ts";
import { type Board, type BoardLine, boardOf, type MatchKit, type Played } from "./board.ts";
import { type Cut, cutOf } from "./cut.ts";
import { unitsPerOne } from "./likeness.ts";
import { keptPalette, type Palette } from "./palette.ts";
import { capacityOf, type LeftOut, type MatchRemake } from "./rules.ts";
import type { Weights } from "./schema.ts";
import { type Scored, scoredAt, traceFor } from "./score.ts";
import { type Shelf, shelfOf } from "./shelf.ts";
import type { TraceRow } from "./trace.ts";
import { type Nearness, nearnessOf } from "./verdict.ts";

/** What a match is made from. `limit`: how many candidates to print per line; left out or 0: all. */
export type MatchInput = Readonly<{
  kit: MatchKit;
  stash: readonly StashItem[];
  kinships?: readonly Kinship[] | null | undefined;
  weights?: Weights | null | undefined;
  remake?: MatchRemake | null | undefined;
  limit?: number | null | undefined;
  palette?: boolean | undefined;
}>;

/** How near a stash item comes. Likeness and certainty 0 to 1, ΔE00 null without two colours; four decimals. */
type Nearby = Readonly<{
  stash: string;
  likeness: number;
  certainty: number;
  deltaE00: number | null;
  verdict: Nearness;
  adaptation: Cut | null;
}>;

/** What plays a line's part. */
export type PickResult = Nearby & Readonly<{ by: "engine" | "person"; lastResort?: true }>;

/** Something that could play it, and why not when it is left out. The factors multiply what the trace gives. */
export type Candidate = Nearby &
  Readonly<{ leftOut: LeftOut | null; trace: readonly TraceRow[]; factor: number; farFactor: number }>;

/** One line of a kit. `secondChoice`: the next best item, and how much total likeness it would cost. */
export type LineMatch = Readonly<{
  line: string;
  pick: PickResult | null;
  candidates: readonly Candidate[];
  secondChoice: Readonly<{ stash: string; cost: number }> | null;
}>;

export type KitMatch = Readonly<{
  kit: string;
  totalLikeness: number;
  lines: readonly LineMatch[];
  palette: Palette | null;
}>;

const share = (units: number): number => units / unitsPerOne;
const fourDecimals = (value: number): number => Math.round(value * unitsPerOne) / unitsPerOne;

/** How a larger sheet is cut to the kit's size; null where there is nothing to cut. */
function adaptationOf(kit: Supply, stash: Supply | undefined): Cut | null {
  if (kit.family !== "paper" || stash?.family !== "paper") return null;
  const [piece, sheet] = [sheetMm(kit.traits?.size), sheetMm(stash.traits?.size)];
  return piece && sheet ? cutOf(piece, sheet) : null;
}

function nearby(
  shelf: Shelf,
  kit: Supply,
  { place, units, certaintyUnits, deltaE, relation }: Scored,
): Nearby {
  const item = shelf.items[place];
  return {
    stash: item?.id ?? "",
    likeness: share(units),
    certainty: share(certaintyUnits),
    deltaE00: deltaE === null ? null : fourDecimals(deltaE),
    verdict: nearnessOf(units, relation),
    adaptation: adaptationOf(kit, item?.supply),
  };
}

const pickResult = (shelf: Shelf, kit: Supply, { scored, by, lastResort }: Played): PickResult => ({
  ...nearby(shelf, kit, scored),
  by,
  ...(lastResort ? { lastResort } : {}),
});

/** The lines that use each item, in the kit's order. */
function usersOf(lines: readonly BoardLine[]): ReadonlyMap<number, readonly string[]> {
  const users = new Map<number, string[]>();
  for (const { line, played } of lines) {
    for (const place of played?.uses ?? []) users.set(place, [...(users.get(place) ?? []), line]);
  }
  return users;
}

type Users = ReturnType<typeof usersOf>;

/** An item that other lines have used up says which; one with pieces to spare is free. */
function inUse(shelf: Shelf, users: Users, line: string, place: number): LeftOut | null {
  const [item, by] = [shelf.items[place], users.get(place) ?? []];
  if (!item || by.includes(line) || by.length < capacityOf(item)) return null;
  return by[0] === undefined ? null : `in-use:${by[0]}`;
}

function lineMatch({ shelf }: Board, line: BoardLine, users: Users, limit: number): LineMatch {
  const shown = [...(limit > 0 ? line.order.slice(0, limit) : line.order)];
  const scored = shown.map((place) => scoredAt(shelf, line, place)).filter((one) => one !== null);
  return {
    line: line.line,
    pick: line.played && pickResult(shelf, line.supply, line.played),
    candidates: scored.map((one) => ({
      ...nearby(shelf, line.supply, one),
      leftOut: one.leftOut ?? inUse(shelf, users, line.line, one.place),
      trace: traceFor(shelf, line, one),
      factor: one.factor,
      farFactor: one.farFactor,
    })),
    secondChoice: line.second && {
      stash: shelf.items[line.second.place]?.id ?? "",
      cost: share(line.second.costUnits),
    },
  };
}

const boardFor = ({ kit, stash, kinships, weights, remake }: MatchInput): Board =>
  boardOf(kit, shelfOf(stash, kinships ?? []), weights ?? null, remake);

/**
 * The stand-ins for a kit with the greatest total likeness, kept to the rules of the game.
 * Deterministic: the order of the stash in the workbook does not matter.
 */
export function matchKit(input: MatchInput): KitMatch {
  const board = boardFor(input);
  const users = usersOf(board.lines);
  const total = board.lines.reduce((sum, { played }) => sum + (played?.scored.units ?? 0), 0);
  return {
    kit: board.kit,
    totalLikeness: share(total),
    lines: board.lines.map((line) => lineMatch(board, line, users, input.limit ?? 0)),
    palette: input.palette ? keptPalette(board) : null,
  };
}

/** A second solution that keeps the kit's colour relations; see `Palette`. */
export const keepPalette = (input: MatchInput): Palette => keptPalette(boardFor(input));
