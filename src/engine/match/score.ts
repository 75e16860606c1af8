import type { Relation, Supply } from "../supply/index.ts";
import { canPlay, type KitSide, kitSideOf, type Likeness, likenessOf, partsOf } from "./likeness.ts";
import { type Game, type LeftOut, reasonToLeaveOut } from "./rules.ts";
import type { Weights } from "./schema.ts";
import type { Shelf } from "./shelf.ts";
import { type TraceRow, traceOf } from "./trace.ts";

/** How one stash item (by place on the shelf) does for one kit line. */
export type Scored = Likeness &
  Readonly<{ place: number; relation: Relation | null; leftOut: LeftOut | null; rank: number }>;

/** A kit line with everything on the shelf that may be listed under it, best first. */
export type ScoredLine = Readonly<{ line: string; supply: Supply; kit: KitSide; scored: readonly Scored[] }>;

const tiers: Readonly<Record<Relation, number>> = { same: 0, twin: 1, "same-colour": 2 };

/** Under ties: *same*, then *twin*, then the lower id. */
const rankOf = (relation: Relation | null, place: number, count: number): number =>
  (relation ? tiers[relation] : 2) * count + place;

/** Scores one item for one line. */
export function scoreOf(
  shelf: Shelf,
  kit: KitSide,
  place: number,
  relation: Relation | null,
  game: Game,
): Scored | null {
  const [item, values] = [shelf.items[place], shelf.values[place]];
  if (!item || !values) return null;
  const leftOut = reasonToLeaveOut(item, relation, game);
  const rank = rankOf(relation, place, shelf.items.length);
  return { ...likenessOf(kit, values, relation), place, relation, leftOut, rank };
}

/** What is listed under a line: its role, what practice lets cross over, and what is the same product or a twin. */
function isListed(kit: KitSide, shelf: Shelf, place: number, relation: Relation | null): boolean {
  const values = shelf.values[place];
  return relation === "same" || relation === "twin" || (!!values && canPlay(kit.values, values));
}

/** @param also a place that is listed whatever it is: what a person has picked */
export function scoreLine(
  shelf: Shelf,
  line: Readonly<{ id: string; supply: Supply }>,
  rules: Readonly<{ game: Game; weights: Weights | null }>,
  also: number | null,
): ScoredLine {
  const kit = kitSideOf(line.supply, rules.weights);
  const relations = shelf.relations.of(line.supply);
  const scored: Scored[] = [];
  for (let place = 0; place < shelf.items.length; place++) {
    const relation = relations.get(place) ?? null;
    if (place !== also && !isListed(kit, shelf, place, relation)) continue;
    const score = scoreOf(shelf, kit, place, relation, rules.game);
    if (score) scored.push(score);
  }
  scored.sort((a, b) => b.units - a.units || a.rank - b.rank); // our own list, not yet seen by anybody
  return { line: line.id, supply: line.supply, kit, scored };
}

/** The trait-by-trait "why?" of one candidate. */
export function traceFor(
  shelf: Shelf,
  { supply, kit }: ScoredLine,
  { place, relation }: Scored,
): readonly TraceRow[] {
  const [item, values] = [shelf.items[place], shelf.values[place]];
  return item && values ? traceOf(supply, item.supply, partsOf(kit, values, relation)) : [];
}
