import type { StoreApi } from "zustand";
import { emptyWorkbook, type Workbook } from "../engine/workbook/index.ts";
import { isEmpty } from "./count.ts";
import type { StoreFault } from "./faults.ts";
import { type Change, type Entry, noStacks, type Stacks } from "./journal/index.ts";
import type { LastKnown, Marker } from "./marker.ts";
import type { BookRepository, Draft } from "./repository.ts";
import type { Tabs } from "./tabs.ts";

/** How far the changes on screen have come to the disk. `at`: when the last one was kept. */
export type Saving = Readonly<{
  state: "saved" | "saving" | "failed";
  at: string | null;
  fault: StoreFault | null;
}>;

/** What the screens see. */
export type BookState = Readonly<{
  status: "opening" | "ready" | "failed" | "read-only";
  /** Why the status is not ready; or when it is: that nothing outlives the tab, or that undo cannot reach back. */
  fault: StoreFault | null;
  /** Everything, with changes that are not kept yet. */
  book: Workbook;
  empty: boolean;
  /** Whether what is entered outlives the tab. */
  lasting: boolean;
  saving: Saving;
  /** Acts that wait to be kept. */
  pending: number;
  /** What can be undone and redone, the next one last. */
  past: readonly Entry[];
  future: readonly Entry[];
  canUndo: boolean;
  canRedo: boolean;
  /** What was kept here once, when the database turns out never used: it has been emptied. */
  lastKnown: LastKnown | null;
}>;

/** What the store needs from the browser. */
export type BookTools = Readonly<{ now: () => string; tabs: Tabs; marker: Marker; newDevice: () => string }>;

/** An act that is shown and waits to be kept. */
export type Waiting = Draft & Readonly<{ changes: readonly Change[] }>;

/** One open book: where it is kept, what is kept, and what waits. */
export type Session = {
  readonly repository: BookRepository;
  readonly tools: BookTools;
  readonly view: StoreApi<BookState>;
  /** Does one thing after another. */
  readonly enqueue: <T>(task: () => Promise<T>) => Promise<T>;
  stored: Workbook;
  revision: number;
  pending: readonly Waiting[];
};

export const opening = (): BookState => ({
  status: "opening",
  fault: null,
  book: emptyWorkbook(),
  empty: true,
  lasting: true,
  saving: { state: "saved", at: null, fault: null },
  pending: 0,
  ...noStacks,
  canUndo: false,
  canRedo: false,
  lastKnown: null,
});

export const showBook = (session: Session, book: Workbook): void =>
  session.view.setState({ book, empty: isEmpty(book) });

/** Shows what can be undone: acts that wait can be taken back as well. */
export const showStacks = (session: Session, { past, future }: Stacks = session.view.getState()): void =>
  session.view.setState({
    past,
    future,
    pending: session.pending.length,
    canUndo: past.length + session.pending.length > 0,
    canRedo: future.length > 0 && session.pending.length === 0,
  });

export const showSaving = (session: Session, saving: Partial<Saving>): void =>
  session.view.setState((state) => ({ saving: { ...state.saving, ...saving } }));

/** Tasks one after another; one that fails does not keep the next from its turn. */
export function serial(): Session["enqueue"] {
  let last: Promise<unknown> = Promise.resolve();
  return (task) => {
    const turn = last.then(task);
    last = turn.catch(() => {}); // whoever asked for the task hears of its error
    return turn;
  };
}
