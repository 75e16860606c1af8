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

/** The stand-ins of a remake, with the palette's own solution. */
export const solve = ({ book, kit, remake }: Subject): KitMatch =>
  matchKit({
    kit,
    stash: book.stash ?? [],
    kinships: book.kinships,
    weights: book.weights,
    remake,
    palette: true,
  });

export type Shelves = Readonly<{
  item: (id: string | null | undefined) => StashItem | undefined;
  line: (id: string) => Line | undefined;
  /** Its place on the kit's card, from 1. */
  numberOf: (line: string) => number;
}>;

/** Looks up items and lines by id. */
export function shelvesOf({ book, kit }: Subject): Shelves {
  const items = new Map((book.stash ?? []).map((item) => [item.id, item]));
  const lines = new Map((kit.lines ?? []).map((line, index) => [line.id, { line, number: index + 1 }]));
  return {
    item: (id) => (id ? items.get(id) : undefined),
    line: (id) => lines.get(id)?.line,
    numberOf: (id) => lines.get(id)?.number ?? 0,
  };
}

/** What a person chose for a line, if anything; the later of two. */
export const ownPick = (remake: Remake, line: string): Pick | undefined =>
  remake.picks?.findLast((pick) => pick.line === line && pick.by !== "engine");

export const kitTitle = ({ title, maker, period }: Kit): string => title || `${maker} ${period}`;

/** Likeness as it is said: 0 to 100, whole. */
export const outOfHundred = (likeness: number): number => Math.round(likeness * 100);
