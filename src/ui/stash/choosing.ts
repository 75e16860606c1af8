import { create } from "zustand";
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
