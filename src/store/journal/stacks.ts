import type { ActHead } from "./act.ts";

/** An act by its name. `latest` is the last act about it: taking that one back undoes or redoes it. */
export type Entry = Readonly<{ id: string; label: string; at: string; latest: string }>;

/** What can be undone and redone, the next one last. */
export type Stacks = Readonly<{ past: readonly Entry[]; future: readonly Entry[] }>;

export const noStacks: Stacks = { past: [], future: [] };

/** How many acts can be undone (quality bar D12). */
export const undoLimit = 1_000;

const without = (entries: readonly Entry[], id: string) => entries.filter((entry) => entry.id !== id);

const added = (entries: readonly Entry[], entry: Entry) =>
  [...without(entries, entry.id), entry].slice(-undoLimit);

/** The stacks after one more act. Something new done leaves nothing to redo. */
export function afterAct({ past, future }: Stacks, { id, of = id, label, at, kind }: ActHead): Stacks {
  const entry = { id: of, label, at, latest: id };
  if (kind === "do") return { past: added(past, entry), future: [] };
  return kind === "undo"
    ? { past: without(past, of), future: added(future, entry) }
    : { past: added(past, entry), future: without(future, of) };
}

/** The stacks that these acts, oldest first, leave behind. */
export const stacksAfter = (acts: readonly ActHead[]): Stacks => acts.reduce(afterAct, noStacks);
