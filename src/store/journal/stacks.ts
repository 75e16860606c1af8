import type { Act } from "./act.ts";

/** An act by its name, without what it changed. */
export type Entry = Readonly<{ id: string; label: string; at: string }>;

/** What can be undone and redone, the next one last. */
export type Stacks = Readonly<{ past: readonly Entry[]; future: readonly Entry[] }>;

export const noStacks: Stacks = { past: [], future: [] };

/** How many acts can be undone (quality bar D12). */
export const undoLimit = 1_000;

const entryOf = ({ id, label, at }: Act): Entry => ({ id, label, at });

const without = (entries: readonly Entry[], id: string | undefined) =>
  entries.filter((entry) => entry.id !== id);

const capped = (entries: readonly Entry[]) => entries.slice(-undoLimit);

/** The stacks after one more act. Something new done forgets what could be redone, never what was undone. */
export function afterAct({ past, future }: Stacks, act: Act): Stacks {
  if (act.kind === "do") return { past: capped([...past, entryOf(act)]), future: [] };
  const entry = { ...entryOf(act), id: act.of ?? act.id };
  return act.kind === "undo"
    ? { past: without(past, act.of), future: capped([...without(future, act.of), entry]) }
    : { past: capped([...without(past, act.of), entry]), future: without(future, act.of) };
}

/** The stacks that these acts, oldest first, leave behind. */
export const stacksAfter = (acts: readonly Act[]): Stacks => acts.reduce(afterAct, noStacks);
