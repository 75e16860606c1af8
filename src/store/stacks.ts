import { type Act, noStacks, type Stacks, stacksAfter, undoLimit } from "./journal/index.ts";
import type { BookRepository } from "./repository.ts";
import { type Session, showStacks } from "./state.ts";

const pageSize = 500;

/** Reads this much of the journal at most: who undid and redid thousands of acts can do without the oldest. */
const farthest = 10 * undoLimit;

/** What can be undone, as the journal tells it from its newest end. */
async function readStacks({ acts }: BookRepository): Promise<Stacks> {
  let read: readonly Act[] = [];
  let stacks = noStacks;
  while (stacks.past.length < undoLimit && read.length < farthest) {
    const page = await acts(read.length, pageSize);
    if (!page.ok) return stacks; // undo waits for better times; the same fault meets the next act, and is shown
    read = [...page.value.toReversed(), ...read];
    stacks = stacksAfter(read);
    if (page.value.length < pageSize) return stacks;
  }
  return stacks;
}

/** Shows what the journal says can be undone and redone. */
export const loadStacks = async (session: Session): Promise<void> =>
  showStacks(session, await readStacks(session.repository));
