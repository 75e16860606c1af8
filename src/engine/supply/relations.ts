import { type Identity, keyOf } from "./identity.ts";
import { type Links, linksOf, type Place } from "./links.ts";
import type { Kinship, StashItem, Supply } from "./schema.ts";
import { type Known, know, placeKey, type Shelved, type Shelves, shelvesOf } from "./shelves.ts";

/** How a stash item is tied to a supply beyond likeness: the same product, a twin of it, or of its colour. */
export type Relation = "same" | "twin" | "same-colour";

/** Finds, for a supply, every stash item tied to it. Only tied items are in the map, by place in the stash. */
export type Relations = Readonly<{ of: (supply: Supply) => ReadonlyMap<number, Relation> }>;

/** A step of the walk: the start, a product that may be on no shelf (`place`), or one on the shelf (`item`). */
type Step = Readonly<
  | { at: "start"; known: Known }
  | { at: "place"; place: Place }
  // `spread` is false after a step between equal products: sameness is not transitive, so it stops there.
  | { at: "item"; shelved: Shelved; spread: boolean }
>;

type Kinds = readonly ("twin" | "same-colour")[];

const toItems = (shelved: readonly Shelved[], spread: boolean): Step[] =>
  shelved.map((one) => ({ at: "item", shelved: one, spread }));

/** Every step that one step leads to, along links of the given kinds and to equal products. */
function stepsFrom(step: Step, shelves: Shelves, links: Links, kinds: Kinds): Step[] {
  const along = (places: readonly Place[]): Step[] =>
    places.flatMap((place) => links.from(place, kinds)).map((place) => ({ at: "place", place }));
  const equals = (identity: Identity): Step[] =>
    kinds.includes("twin") ? toItems(shelves.same(identity), false) : [];
  if (step.at === "start") return [...along(step.known.places), ...equals(step.known.identity)];
  if (step.at === "place") return [...toItems(shelves.at(step.place), true), ...along([step.place])];
  const twins = kinds.includes("twin") ? toItems(shelves.twins(step.shelved), true) : [];
  const same = step.spread ? equals(step.shelved.identity) : [];
  return [...twins, ...along(step.shelved.places), ...same];
}

function stepKey(step: Step): string {
  if (step.at === "start") return "start";
  return step.at === "place" ? placeKey(step.place) : keyOf(`${step.shelved.at}`, `${step.spread}`);
}

/** Everything that `from` leads to and `seen` does not hold yet, breadth first; adds it to `seen`. */
function walk(from: readonly Step[], seen: Map<string, Step>, next: (step: Step) => readonly Step[]): void {
  let front = from;
  while (front.length > 0) {
    const keyed = front.map((step): [string, Step] => [stepKey(step), step]);
    const fresh = new Map(keyed.filter(([key]) => !seen.has(key)));
    for (const [key, step] of fresh) seen.set(key, step);
    front = [...fresh.values()].flatMap(next);
  }
}

/**
 * Indexes a stash and its kinships. Twins are linked by `twinOf` or a *twin* kinship, either way, through
 * any number of links, also over products that nobody here owns. *Same colour* is reached over at least
 * one *same-colour* kinship and any number of twins: what is sold under two labels has one colour.
 */
export function relationsOf(stash: readonly StashItem[], kinships: readonly Kinship[]): Relations {
  const shelves = shelvesOf(stash);
  const links = linksOf(kinships);
  const next = (kinds: Kinds) => (step: Step) => stepsFrom(step, shelves, links, kinds);
  return {
    of: (supply) => {
      const known = know(supply);
      const found = new Map<number, Relation>();
      const seen = new Map<string, Step>();
      const note = (relation: Relation): void => {
        for (const step of seen.values()) {
          if (step.at === "item" && !found.has(step.shelved.at)) found.set(step.shelved.at, relation);
        }
      };
      for (const { at } of shelves.same(known.identity)) found.set(at, "same");
      walk([{ at: "start", known }], seen, next(["twin"]));
      note("twin");
      walk([...seen.values()].flatMap(next(["same-colour"])), seen, next(["twin", "same-colour"]));
      note("same-colour");
      return found;
    },
  };
}
