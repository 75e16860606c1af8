import { type KitMatch, matchKit, type Pick } from "../../../engine/match/index.ts";
import type { Line } from "../../../engine/price/index.ts";
import type { StashItem } from "../../../engine/supply/index.ts";
import type { Remake, Workbook } from "../../../engine/workbook/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";

/** A remake with its kit, in the book they are in. */
export type Subject = Readonly<{ book: Workbook; kit: Kit; remake: Remake }>;

/** @returns null where the remake, or the kit it is of, is not in the book */
export function subjectOf(book: Workbook, id: string): Subject | null {
  const remake = book.remakes?.find((one) => one.id === id);
  const kit = remake && book.kits?.find((one) => one.id === remake.kit);
  return remake && kit ? { book, kit, remake } : null;
}

type Asked = Readonly<{ limit?: number; palette?: boolean }>;

const matchOf = ({ book, kit, remake }: Subject, asked: Asked): KitMatch =>
  matchKit({
    kit,
    stash: book.stash ?? [],
    kinships: book.kinships,
    weights: book.weights,
    remake,
    ...asked,
  });

/** As many candidates a line as anybody looks through; each costs a comparison to be printed. */
const looked = 120;

/** Whether everything that a screen speaks of is among the candidates listed. */
function isWhole({ lines, palette }: KitMatch): boolean {
  const inPalette = new Map((palette?.picks ?? []).map(({ line, stash }) => [line, stash]));
  return lines.every(({ line, pick, secondChoice, candidates }) => {
    const listed = new Set(candidates.map(({ stash }) => stash));
    const spoken = [pick?.stash, secondChoice?.stash, inPalette.get(line)];
    return spoken.every((stash) => stash === undefined || listed.has(stash));
  });
}

/** The stand-ins of a remake, with the palette's own solution. A pick from far down asks for the whole list. */
export function solve(subject: Subject): KitMatch {
  const match = matchOf(subject, { palette: true, limit: looked });
  return isWhole(match) ? match : matchOf(subject, { palette: true });
}

/** Only what plays each line: all that a list, a verdict or a notice asks for. */
export const picksOf = (subject: Subject): KitMatch => matchOf(subject, { limit: 1 });

export type Shelves = Readonly<{
  item: (id: string | null | undefined) => StashItem | undefined;
  line: (id: string) => Line | undefined;
  /** Its place on the kit's card, from 1. */
  numberOf: (line: string) => number;
  /** How many lines the kit has. */
  count: number;
}>;

/** Looks up items and lines by id. */
export function shelvesOf({ book, kit }: Subject): Shelves {
  const items = new Map((book.stash ?? []).map((item) => [item.id, item]));
  const lines = new Map((kit.lines ?? []).map((line, index) => [line.id, { line, number: index + 1 }]));
  return {
    item: (id) => (id ? items.get(id) : undefined),
    line: (id) => lines.get(id)?.line,
    numberOf: (id) => lines.get(id)?.number ?? 0,
    count: lines.size,
  };
}

/** What a person chose for a line, if anything; the later of two. */
export const ownPick = (remake: Remake, line: string): Pick | undefined =>
  remake.picks?.findLast((pick) => pick.line === line && pick.by !== "engine");

export const kitTitle = ({ title, maker, period }: Kit): string => title || `${maker} ${period}`;

/** Likeness as it is said: 0 to 100, whole. */
export const outOfHundred = (likeness: number): number => Math.round(likeness * 100);
