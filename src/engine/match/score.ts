import type { Relation, Supply } from "../supply/index.ts";
import {
  canPlay,
  type KitSide,
  kitSideOf,
  type Likeness,
  likenessOf,
  partsOf,
  unitsPerOne,
} from "./likeness.ts";
import { type Game, type LeftOut, reasonToLeaveOut } from "./rules.ts";
import type { Weights } from "./schema.ts";
import type { Shelf } from "./shelf.ts";
import { type TraceRow, traceOf } from "./trace.ts";

/**
 * A kit line with the places of everything on the shelf that may be listed under it, best first. Only the order
 * and the likeness (in units, by place) are kept: sixty lines by ten thousand items would fill the memory.
 */
export type ScoredLine = Readonly<{
  line: string;
  supply: Supply;
  kit: KitSide;
  relations: ReadonlyMap<number, Relation>;
  order: Int32Array;
  units: Int32Array;
  game: Game;
}>;

/** How one stash item (by place on the shelf) does for one kit line. `rank` settles ties: lower goes first. */
export type Scored = Likeness &
  Readonly<{ place: number; relation: Relation | null; leftOut: LeftOut | null; rank: number }>;

const tiers: Readonly<Record<Relation, number>> = { same: 0, twin: 1, "same-colour": 2 };
const tierCount = 3;

/** Under ties: *same*, then *twin*, then the lower id. */
export const rankOf = (relation: Relation | null, place: number, count: number): number =>
  (relation ? tiers[relation] : 2) * count + place;

/** Best first: by likeness, then by rank. Sorting one number each is many times faster than sorting records. */
function bestFirst(units: Int32Array, relations: ReadonlyMap<number, Relation>, listed: number): Int32Array {
  const count = units.length;
  const keys = new Float64Array(listed);
  let filled = 0;
  for (let place = 0; place < count; place++) {
    const own = units[place] ?? -1;
    if (own < 0) continue;
    keys[filled++] =
      (unitsPerOne - own) * tierCount * count + rankOf(relations.get(place) ?? null, place, count);
  }
  return Int32Array.from(keys.sort(), (key) => key % count);
}

/** What is listed under a line: its role, what practice lets cross over, and what is the same product or a twin. */
const isListed = (kit: KitSide, values: Shelf["values"][number], relation: Relation | null): boolean =>
  relation === "same" || relation === "twin" || canPlay(kit.values, values);

/** @param also a place that is listed whatever it is: what a person has picked */
export function scoreLine(
  shelf: Shelf,
  { id, supply }: Readonly<{ id: string; supply: Supply }>,
  { game, weights }: Readonly<{ game: Game; weights: Weights | null }>,
  also: number | null,
): ScoredLine {
  const kit = kitSideOf(supply, weights);
  const relations = shelf.relations.of(supply);
  const units = new Int32Array(shelf.items.length).fill(-1);
  let listed = 0;
  for (const [place, values] of shelf.values.entries()) {
    const relation = relations.get(place) ?? null;
    if (place !== also && !isListed(kit, values, relation)) continue;
    units[place] = likenessOf(kit, values, relation).units;
    listed++;
  }
  return { line: id, supply, kit, relations, order: bestFirst(units, relations, listed), units, game };
}

/** Why the item at a place is left out of a line, but for its being in use. */
export function leftOutAt(shelf: Shelf, { relations, game }: ScoredLine, place: number): LeftOut | null {
  const item = shelf.items[place];
  return item ? reasonToLeaveOut(item, relations.get(place) ?? null, game) : null;
}

/** All there is to say of a listed place; null for one that is not on the shelf. */
export function scoredAt(shelf: Shelf, line: ScoredLine, place: number | null): Scored | null {
  const values = place === null ? undefined : shelf.values[place];
  if (place === null || !values) return null;
  const relation = line.relations.get(place) ?? null;
  const rank = rankOf(relation, place, shelf.items.length);
  return {
    ...likenessOf(line.kit, values, relation),
    place,
    relation,
    leftOut: leftOutAt(shelf, line, place),
    rank,
  };
}

/** The trait-by-trait "why?" of one candidate. */
export function traceFor(shelf: Shelf, { supply, kit }: ScoredLine, scored: Scored): readonly TraceRow[] {
  const [item, values] = [shelf.items[scored.place], shelf.values[scored.place]];
  return item && values
    ? traceOf(supply, item.supply, partsOf(kit, values, scored.relation, scored.deltaE))
    : [];
}
