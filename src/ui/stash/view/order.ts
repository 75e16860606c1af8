import type { Found } from "./find.ts";
import { type Known, placeOf } from "./known.ts";

/** What a list can be sorted by. `near` only where a colour is asked for; `newest` is what was added last. */
export const orders = ["near", "name", "place", "newest"] as const;
export type Order = (typeof orders)[number];

type Compare = (a: Known, b: Known) => number;

const { compare } = new Intl.Collator(undefined, { numeric: true });

const byName: Compare = (a, b) =>
  compare(a.item.supply.name, b.item.supply.name) || (a.item.id < b.item.id ? -1 : 1);

/** By place, and in each by name; what has no place comes last. */
const byPlace: Compare = (a, b) => {
  const [here, there] = [placeOf(a.item), placeOf(b.item)];
  if (here === there) return byName(a, b);
  return here === "" ? 1 : there === "" ? -1 : compare(here, there);
};

const sorted: Readonly<Record<Exclude<Order, "near">, (stash: readonly Known[]) => readonly Known[]>> = {
  name: (stash) => stash.toSorted(byName),
  place: (stash) => stash.toSorted(byPlace),
  newest: (stash) => stash.toReversed(), // things are added at the end
};

/** Sorting words in the reader's language costs more than anything else in a search, and no search changes it. */
const kept = new WeakMap<readonly Known[], Map<Order, readonly Known[]>>();

function wholeIn(stash: readonly Known[], order: Exclude<Order, "near">): readonly Known[] {
  const orderings = kept.get(stash) ?? new Map<Order, readonly Known[]>();
  kept.set(stash, orderings);
  const whole = orderings.get(order) ?? sorted[order](stash);
  orderings.set(order, whole);
  return whole;
}

/**
 * What was found, in order: nearest first where a colour is asked for, what is called so before what is only of
 * that colour; else by name, or as asked.
 */
export function inOrder(stash: readonly Known[], found: Found, order: Order | null = null): readonly Known[] {
  const { ids, apart, named } = found;
  const plain = order === null || order === "near" ? "name" : order;
  const fitting = wholeIn(stash, plain).filter(({ item }) => ids.has(item.id));
  if (order !== null && order !== "near") return fitting;
  const far = ({ item }: Known) => apart?.get(item.id) ?? Number.POSITIVE_INFINITY;
  const rank = ({ item }: Known) => (named?.has(item.id) ? 0 : 1);
  if (!apart && !named) return fitting;
  return fitting.toSorted((a, b) => {
    const [x, y] = [far(a), far(b)];
    return rank(a) - rank(b) || (x === y ? 0 : x - y);
  });
}
