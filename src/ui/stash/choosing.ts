import { create } from "zustand";
import type { StashItem } from "../../engine/supply/index.ts";
import type { Found } from "./view/find.ts";
import type { Known } from "./view/known.ts";
import { inOrder, type Order } from "./view/order.ts";
import { between } from "./view/range.ts";

type Choosing = Readonly<{
  /** Whether several things are being chosen just now. */
  on: boolean;
  ids: ReadonlySet<string>;
  /** Where a stretch starts. */
  anchor: string | null;
  /** The one that the Tab key stops at. */
  at: string | null;
  /** What can be chosen, in the order it is seen. */
  seen: readonly string[];
}>;

const none: ReadonlySet<string> = new Set();
const nothing: Choosing = { on: false, ids: none, anchor: null, at: null, seen: [] };

/** Which things of the stash are chosen, to be changed together. */
export const useChoosing = create<Choosing>(() => nothing);

const { getState, setState } = useChoosing;

export const startChoosing = (): void => setState({ on: true });
export const endChoosing = (): void => setState(({ seen }) => ({ ...nothing, seen }));
export const chooseNone = (): void => setState({ ids: none, anchor: null });
export const chooseAll = (ids: ReadonlySet<string>): void => setState({ ids: new Set(ids), anchor: null });

/** Tells what is in sight, in its order: stretches go by it. */
export const setSeen = (seen: readonly string[]): void =>
  setState(({ at }) => ({ seen, at: at !== null && seen.includes(at) ? at : null }));

/** Chooses one, or gives it up; or with `stretch` all from the one before to it. */
export function choose(id: string, stretch = false): void {
  const { ids, anchor, seen } = getState();
  if (stretch && anchor !== null) {
    setState({ ids: new Set([...ids, ...between(seen, anchor, id)]), at: id });
    return;
  }
  const kept = [...ids].filter((one) => one !== id);
  setState({ ids: new Set(ids.has(id) ? kept : [...ids, id]), anchor: id, at: id });
}

/** The one before or after another in sight; null at the ends. */
export function besideIt(id: string, by: 1 | -1): string | null {
  const { seen } = getState();
  const at = seen.indexOf(id);
  return at === -1 ? null : (seen[at + by] ?? null);
}

/** Chooses one with where it was gone from, as Shift and an arrow do. */
export function stretchTo(from: string, to: string): void {
  if (getState().anchor === null) setState({ anchor: from });
  choose(to, true);
}

export const standAt = (id: string): void => setState({ at: id });

type Listed = Readonly<{ stash: readonly Known[]; found: Found; order: Order | null }>;

let listed: Listed | null = null;

/** Tells what the search found, for whoever wants the whole of it. */
export const setListed = (next: Listed | null): void => {
  listed = next;
};

/** What was found, in the order of the list, and what of the stash is chosen: for lists and prints of it. */
export function gathered(): Readonly<{ found: readonly StashItem[]; chosen: readonly StashItem[] }> {
  const { ids } = getState();
  const { stash, found, order } = listed ?? { stash: [], found: null, order: null };
  return {
    found: found ? inOrder(stash, found, order).map(({ item }) => item) : [],
    chosen: stash.flatMap(({ item }) => (ids.has(item.id) ? [item] : [])),
  };
}
