import type { MatchRemake } from "./rules.ts";
import { capacityOf } from "./rules.ts";
import type { Pick } from "./schema.ts";
import type { Shelf } from "./shelf.ts";

/** What a person chose for a line: `places` on the shelf, the judged one first; empty when left open. */
export type OwnPick = Readonly<{ places: readonly number[] }>;

const shareOf = (use: NonNullable<Pick["uses"]>[number]): number => Number(use.share ?? 1);

/**
 * A pick as places on the shelf, larger share first: the line is judged by that one.
 * @returns null when it has run out or is no longer there, so that the line is solved again
 */
function placesOf(pick: Pick, shelf: Shelf): OwnPick | null {
  const uses = pick.uses ?? [];
  if (uses.length === 0) return { places: [] };
  const ordered = uses
    .toSorted((a, b) => shareOf(b) - shareOf(a))
    .map(({ stash }) => shelf.placeOf.get(stash ?? ""));
  const usable = (place: number | undefined): place is number => {
    const item = place === undefined ? undefined : shelf.items[place];
    return item !== undefined && capacityOf(item) > 0;
  };
  return usable(ordered[0]) ? { places: [...new Set(ordered.filter(usable))] } : null;
}

/** The picks of a person by line; the later of two for one line. What the engine once picked is only a record. */
export function ownPicks(remake: MatchRemake | null | undefined, shelf: Shelf): ReadonlyMap<string, OwnPick> {
  const picks = new Map<string, OwnPick>();
  for (const pick of remake?.picks ?? []) {
    const own = pick.by === "engine" || !pick.line ? null : placesOf(pick, shelf);
    if (own && pick.line) picks.set(pick.line, own);
  }
  return picks;
}
