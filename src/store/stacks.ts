import { type Stored, stored } from "./faults.ts";
import { type ActHead, noStacks, type Stacks, stacksAfter, undoLimit } from "./journal/index.ts";
import type { BookRepository } from "./repository.ts";
import { type Session, showStacks } from "./state.ts";

const pageSize = 500;

/** Reads this much of the journal at most: who undid and redid thousands of acts can do without the oldest. */
const farthest = 10 * undoLimit;

/** What can be undone, as the journal tells it from its newest end. */
async function readStacks({ acts }: BookRepository): Promise<Stored<Stacks>> {
  let read: readonly ActHead[] = [];
  let stacks = noStacks;
  while (stacks.past.length < undoLimit && read.length < farthest) {
    const page = await acts(read.length, pageSize);
    if (!page.ok) return page;
    read = [...page.value.toReversed(), ...read];
    stacks = stacksAfter(read);
    if (page.value.length < pageSize) break;
  }
  return stored(stacks);
}

/** Shows what the journal says can be undone and redone. A journal that cannot be read leaves the book usable. */
export async function loadStacks(session: Session): Promise<void> {
  const stacks = await readStacks(session.repository);
  if (stacks.ok) showStacks(session, stacks.value);
  else session.view.setState({ fault: stacks.fault });
}
