import { type ActDraft, perform, performLarge, redo, type Stored, undo, useBook } from "../../store/index.ts";
import { clearNotice, notify } from "../parts/index.ts";
import { asDone } from "../words/done.ts";
import { words } from "../words/index.ts";
import { sayFault } from "./say-fault.ts";

/** Says what went wrong with an act. Faults of the disk are said by the frame, for as long as they last. */
function tellFault(done: Stored<null>): boolean {
  if (done.ok) return true;
  if (done.fault.kind === "refused" || done.fault.kind === "stale") {
    sayFault(done.fault);
  }
  return false;
}

/**
 * Does an act and says so, with Undo.
 * @param told what is said, or null for small changes that show by themselves, such as a word corrected
 * @returns whether it was kept
 */
export async function doAct(draft: ActDraft, told: string | null = asDone(draft.label)): Promise<boolean> {
  const kept = tellFault(await perform(draft));
  if (kept && told !== null) notify(told, () => void undoLast());
  if (kept && told === null) clearNotice(); // its Undo would now take back something else
  return kept;
}

/** Does an act that takes away or joins many things: a snapshot of what was before is kept besides. */
export async function doLargeAct(draft: ActDraft, told: string = asDone(draft.label)): Promise<boolean> {
  const kept = tellFault(await performLarge(draft));
  if (kept) notify(told, () => void undoLast());
  return kept;
}

/** Takes back the last act and names it. */
export async function undoLast(): Promise<void> {
  const label = useBook.getState().past.at(-1)?.label;
  if (tellFault(await undo()) && label !== undefined) notify(words.undone(label));
}

/** Does again what was undone last, and names it. */
export async function redoLast(): Promise<void> {
  const label = useBook.getState().future.at(-1)?.label;
  if (tellFault(await redo()) && label !== undefined) notify(words.redone(label));
}
