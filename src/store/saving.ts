import type { Workbook } from "../engine/workbook/index.ts";
import { recordsIn } from "./count.ts";
import { failed, type Stored, type StoreFault, stored } from "./faults.ts";
import { afterAct, applyChanges, same } from "./journal/index.ts";
import { changed } from "./prepare.ts";
import type { Committed, Draft } from "./repository.ts";
import { loadStacks } from "./stacks.ts";
import { type Session, showBook, showSaving, showStacks, type Waiting } from "./state.ts";
import { storeWords } from "./words/index.ts";

/** The kept book with all that waits done to it. What no longer fits is refused when its turn comes. */
export const shown = ({ stored: kept, pending }: Session): Workbook =>
  pending.reduce((book, { changes }) => {
    const after = applyChanges(book, changes);
    return after.ok ? after.value.book : book;
  }, kept);

/** Takes note of an act that is on the disk. */
export function took(session: Session, { act, book, revision, rebased }: Committed): void {
  const { tools, view } = session;
  session.stored = book;
  session.revision = revision;
  if (rebased) showBook(session, shown(session));
  showStacks(session, afterAct(view.getState(), act));
  showSaving(session, { at: act.at });
  tools.marker.write({
    records: recordsIn(book),
    stash: book.stash?.length ?? 0,
    kits: book.kits?.length ?? 0,
    at: act.at,
  });
  tools.tabs.tell(revision);
}

/** Whether trying again may help, so that the act waits instead of being dropped. */
const mayYetPass = ({ kind }: StoreFault): boolean => kind !== "refused" && kind !== "stale";

/** What the screens are told of a fault. */
export function report(session: Session, fault: StoreFault): void {
  if (fault.kind === "newer") session.view.setState({ status: "read-only", fault });
  showSaving(session, { state: "failed", fault });
}

function drop(session: Session, draft: Waiting): void {
  session.pending = session.pending.filter((other) => other !== draft);
  showBook(session, shown(session));
  showStacks(session);
}

/** What became of the acts that waited: refused ones are dropped, and at the first other fault all stops. */
type Flushed = Readonly<{ refused: ReadonlyMap<Draft, StoreFault>; stopped: StoreFault | null }>;

/**
 * Keeps what waits, in order, until all is kept or something is in the way.
 * @param until stop before acts that are not among these: they came later
 */
export async function flush(session: Session, until?: readonly Waiting[]): Promise<Flushed> {
  const refused = new Map<Draft, StoreFault>();
  const next = () => session.pending.slice(0, 1).find((draft) => !until || until.includes(draft));
  for (let draft = next(); draft; draft = next()) {
    showSaving(session, { state: "saving", fault: null });
    const kept = await session.repository.commit(draft);
    if (kept.ok) {
      session.pending = session.pending.slice(1); // acts are only ever added behind the one being kept
      took(session, kept.value);
      if (kept.value.rebased) await loadStacks(session); // other tabs' acts are among them
    } else if (mayYetPass(kept.fault)) {
      report(session, kept.fault);
      return { refused, stopped: kept.fault };
    } else {
      refused.set(draft, kept.fault);
      drop(session, draft);
    }
  }
  // An act that no longer fits has been dropped: all there is is saved, and its fault is still said.
  const state = session.pending.length > 0 ? "saving" : "saved";
  showSaving(session, { state, fault: [...refused.values()].at(-1) ?? null });
  return { refused, stopped: null };
}

/** Shows an act at once, and keeps it when its turn comes. */
export async function submit(session: Session, draft: Waiting): Promise<Stored<null>> {
  const before = session.view.getState().book;
  const after = changed(before, draft.changes);
  if (!after.ok) return after;
  if (same(before, after.value.book)) return stored(null); // nothing would be different: no act
  session.pending = [...session.pending, draft];
  showBook(session, after.value.book);
  showStacks(session);
  showSaving(session, { state: "saving" });
  const { refused, stopped } = await session.enqueue(() => flush(session));
  const fault = refused.get(draft) ?? (session.pending.includes(draft) ? stopped : null);
  return fault ? failed(fault) : stored(null);
}

/** Keeps an act first and shows it then: for whole books, and for undo and redo. It does not wait if it fails. */
export async function keepThenShow(session: Session, draft: Draft): Promise<Stored<null>> {
  showSaving(session, { state: "saving", fault: null });
  const kept = await session.repository.commit(draft);
  if (!kept.ok) {
    const fault = { ...kept.fault, safe: storeWords.nothingChanged };
    if (mayYetPass(fault)) report(session, fault);
    else showSaving(session, { state: "saved", fault });
    return failed(fault);
  }
  took(session, kept.value);
  showBook(session, shown(session));
  showSaving(session, { state: session.pending.length > 0 ? "saving" : "saved" });
  return stored(null);
}

/** Replaces the whole book, once all that waited by then is kept. */
export function replace(session: Session, draft: Draft): Promise<Stored<null>> {
  const { pending } = session;
  return session.enqueue(async () => {
    const { stopped } = await flush(session, pending);
    return stopped ? failed(stopped) : keepThenShow(session, draft);
  });
}

/** Takes back the last act that waits to be kept: it leaves no trace, as it never was. */
export function dropLast(session: Session): void {
  const draft = session.pending.at(-1);
  if (draft) drop(session, draft);
  if (session.pending.length === 0) showSaving(session, { state: "saved", fault: null });
}
