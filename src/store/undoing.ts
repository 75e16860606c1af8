import { failed, refusal, type Stored, stored } from "./faults.ts";
import type { Entry } from "./journal/index.ts";
import { reload } from "./opening.ts";
import { dropLast, flush, keepThenShow, report } from "./saving.ts";
import type { Session } from "./state.ts";
import { storeWords } from "./words/index.ts";

type Direction = "undo" | "redo";

const nothingTo = (direction: Direction) =>
  failed(
    refusal({
      place: "this book",
      problem: storeWords.nothingTo[direction],
      remedy: storeWords.goOn,
    }),
  );

/** Undo and redo are one thing: taking back the latest act about an entry. */
async function takeBack(session: Session, entry: Entry, kind: Direction): Promise<Stored<null>> {
  const { repository, revision, tools } = session;
  const act = await repository.act(entry.latest);
  if (!act.ok) {
    report(session, act.fault);
    return act;
  }
  if (!act.value) return nothingTo(kind);
  const { label, inverse } = act.value;
  const at = tools.now();
  return keepThenShow(session, { label, kind, of: entry.id, at, changes: inverse, onlyAt: revision });
}

async function go(session: Session, direction: Direction): Promise<Stored<null>> {
  await flush(session);
  if (session.pending.length > 0) {
    if (direction === "redo") return nothingTo("redo");
    dropLast(session);
    return stored(null);
  }
  const { past, future } = session.view.getState();
  const entry = (direction === "undo" ? past : future).at(-1);
  if (!entry) return nothingTo(direction);
  const done = await takeBack(session, entry, direction);
  if (!done.ok && done.fault.kind === "stale") await reload(session);
  return done;
}

/** Takes back the last act, or the last one that waits to be kept. */
export const undo = (session: Session): Promise<Stored<null>> => session.enqueue(() => go(session, "undo"));

/** Does again what was undone last. */
export const redo = (session: Session): Promise<Stored<null>> => session.enqueue(() => go(session, "redo"));
