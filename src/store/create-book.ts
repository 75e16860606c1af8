import { create } from "zustand";
import { emptyWorkbook, type Workbook } from "../engine/workbook/index.ts";
import { failed, type Stored, stored, storeFault } from "./faults.ts";
import { type ActDraft, type ActHead, difference, type Picture } from "./journal/index.ts";
import { memoryDisk, memoryRepository } from "./memory.ts";
import { load, reload } from "./opening.ts";
import type { BookRepository, Snapshot } from "./repository.ts";
import { dropLast, flush, replace, report, submit } from "./saving.ts";
import { loadStacks } from "./stacks.ts";
import { type BookState, type BookTools, opening, type Session, serial } from "./state.ts";
import { redo, undo } from "./undoing.ts";
import { storeWords } from "./words/index.ts";

/** How long deleted things can be brought back: 30 days (quality bar D12). */
const broughtBackMs = 30 * 24 * 3_600_000;

/** A book store over `tools`. The app has one (`book.ts`); tests make their own. */
export function createBook(tools: BookTools) {
  const useBook = create<BookState>()(opening);
  let session = sessionOver(memoryRepository(memoryDisk(tools.newDevice())));
  let opened: Promise<void> = Promise.resolve();

  function sessionOver(repository: BookRepository): Session {
    const kept = { stored: emptyWorkbook(), revision: 0, pending: [] };
    return { repository, tools, view: useBook, enqueue: serial(), ...kept };
  }

  /** Follows the other tabs, and what the browser does to the database. */
  function follow(current: Session): void {
    current.repository.whenLost((fault) => {
      if (current === session) report(current, fault);
    });
    tools.tabs.listen((revision) => {
      if (revision > session.revision) void session.enqueue(() => reload(session));
    });
  }

  async function start(repository: BookRepository): Promise<void> {
    useBook.setState(opening());
    session = sessionOver(repository);
    follow(session);
    const current = session;
    const fault = await current.enqueue(() =>
      load(current, repository.lasting ? null : storeFault("unavailable")),
    );
    if (fault?.kind === "unavailable") return start(memoryRepository(memoryDisk(tools.newDevice())));
    if (fault) useBook.setState({ status: "failed", fault });
    else await current.enqueue(() => loadStacks(current));
  }

  /**
   * Opens the book. Where the browser keeps nothing, in memory, and `fault` says so; where it cannot be read,
   * the status is `failed`, and opening may be tried again.
   */
  function openBook(repository: BookRepository): Promise<void> {
    session.repository.close();
    opened = start(repository);
    return opened;
  }

  /** Does something with the open book, or says why it cannot be written to. */
  async function writing<T>(
    work: (session: Session) => Promise<Stored<T>>,
    alsoIn?: BookState["status"],
  ): Promise<Stored<T>> {
    if (useBook.getState().status === "opening") await opened;
    const { status, fault } = useBook.getState();
    return status === "ready" || status === alsoIn ? work(session) : failed(fault ?? storeFault("closed"));
  }

  /**
   * Does an act: at once on screen, and kept before the promise is done.
   * @returns a fault when it was not kept. One of kind `refused` or `stale` has dropped the act; any other
   *   leaves it on screen and waiting, for `retry`. So does a tab that only reads: what was typed in it is
   *   not kept, but can be seen, and saved as a copy.
   */
  const perform = (draft: ActDraft): Promise<Stored<null>> =>
    writing((current) => submit(current, { ...draft, kind: "do", at: tools.now() }), "read-only");

  /**
   * Does a large act, such as bringing in a list: kept first, with a snapshot of what was before, and shown then. It
   * does not wait if it fails.
   */
  const performLarge = (draft: ActDraft): Promise<Stored<null>> =>
    writing((current) => replace(current, { ...draft, kind: "do", at: tools.now(), snapshot: true }));

  /** Replaces everything, as one act that can be undone; a snapshot is kept besides. `pictures`: the photos it brings. */
  const replaceBook = (
    workbook: Workbook,
    label: string,
    pictures: readonly Picture[] = [],
  ): Promise<Stored<null>> =>
    writing((current) => {
      const changes = (book: Workbook) => difference(book, workbook);
      return replace(current, { label, kind: "do", at: tools.now(), changes, pictures, snapshot: true });
    });

  /** Goes back to a snapshot, which is an act as well. */
  async function restoreSnapshot(snapshot: Snapshot): Promise<Stored<null>> {
    const kept = await session.repository.snapshot(snapshot.id);
    if (!kept.ok) return kept;
    return kept.value
      ? replaceBook(kept.value, storeWords.goBack(snapshot.label))
      : failed(storeFault("damaged"));
  }

  /** Tries again to keep what waits. */
  const retry = (): Promise<Stored<null>> =>
    writing(async (current) => {
      const { stopped } = await current.enqueue(() => flush(current));
      return stopped ? failed(stopped) : stored(null);
    });

  /** A photo by its SHA-256, also one that waits to be kept; null where it is not here. */
  async function picture(sha256: string): Promise<Stored<Picture | null>> {
    const waiting = session.pending.flatMap(({ pictures }) => pictures ?? []);
    const found = waiting.find((other) => other.sha256 === sha256);
    return found ? stored(found) : session.repository.picture(sha256);
  }

  /** Drops photos that were removed so long ago that no act can bring them back. For when the app has time. */
  const sweepPictures = (): Promise<Stored<number>> =>
    writing((current) =>
      current.enqueue(() => {
        const { past, future } = useBook.getState();
        const since = new Date(Date.parse(tools.now()) - broughtBackMs).toISOString();
        return current.repository.sweep({
          acts: new Set([...past, ...future].map(({ latest }) => latest)),
          since,
        });
      }),
    );

  return {
    useBook,
    openBook,
    perform,
    performLarge,
    replaceBook,
    restoreSnapshot,
    retry,
    picture,
    sweepPictures,
    undo: () => writing(undo),
    redo: () => writing(redo),
    /** Gives up the acts that wait to be kept. */
    dropPending: () =>
      writing((current) =>
        current.enqueue(async () => {
          while (current.pending.length > 0) dropLast(current);
          return stored(null);
        }),
      ),
    /** The journal, newest first. */
    acts: (skip: number, limit: number): Promise<Stored<readonly ActHead[]>> =>
      session.repository.acts(skip, limit),
    snapshots: (): Promise<Stored<readonly Snapshot[]>> => session.repository.snapshots(),
    closeBook: () => {
      tools.tabs.close();
      session.repository.close();
    },
  };
}
