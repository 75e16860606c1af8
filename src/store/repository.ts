import type { Workbook } from "../engine/workbook/index.ts";
import type { Stored, StoreFault } from "./faults.ts";
import type { Act, ActHead, ActKind, Change, Picture } from "./journal/index.ts";

/** The book as it is kept. */
export type Opened = Readonly<{
  book: Workbook;
  /** How many acts have been kept here; 0: never used. */
  revision: number;
  /** When the last one was, ISO 8601. */
  savedAt: string | null;
  /** Why this code may not write here, or null. */
  readOnly: StoreFault | null;
}>;

/** An act to keep. */
export type Draft = Readonly<{
  label: string;
  kind: ActKind;
  /** The act that an undo or redo is about. */
  of?: string;
  /** ISO 8601 with time. */
  at: string;
  /** What changes, or how to tell from the book as it is kept then. */
  changes: readonly Change[] | ((book: Workbook) => readonly Change[]);
  /** The photos that it brings; those that are here already are the same. */
  pictures?: readonly Picture[];
  /** Keep the whole book as it is before: for restore, import, sample and the like. */
  snapshot?: boolean;
  /** Do it only while the kept book is at this revision; otherwise `stale`. */
  onlyAt?: number;
}>;

export type Committed = Readonly<{
  act: Act;
  book: Workbook;
  revision: number;
  /** Another tab had acted since the book was last read here, so more than this act may be new. */
  rebased: boolean;
}>;

/** Which acts of the journal still need their photos. */
export type Needed = Readonly<{ acts: ReadonlySet<string>; since: string }>;

/** A whole book kept from before a large act. */
export type Snapshot = Readonly<{ id: number; at: string; label: string; records: number }>;

/** How many snapshots are kept; the oldest goes first. */
export const snapshotsKept = 10;

/** Where the book is kept. Two implementations pass one contract: in memory and in IndexedDB. */
export type BookRepository = Readonly<{
  /** Whether it outlives the tab. */
  lasting: boolean;
  /** Reads the book as it is now, also after other tabs have written. */
  load: () => Promise<Stored<Opened>>;
  /**
   * Keeps an act: rows, photos, journal entry and, where asked for, snapshot in one transaction, all or nothing.
   * It is applied to the book as it is kept then, so edits of other tabs stand.
   * @returns once it is on the disk
   */
  commit: (draft: Draft) => Promise<Stored<Committed>>;
  /** Acts of the journal by name, newest first, after the first `skip`. */
  acts: (skip: number, limit: number) => Promise<Stored<readonly ActHead[]>>;
  /** An act with all that it changed. */
  act: (id: string) => Promise<Stored<Act | null>>;
  /** Newest first. */
  snapshots: () => Promise<Stored<readonly Snapshot[]>>;
  snapshot: (id: number) => Promise<Stored<Workbook | null>>;
  /** A photo by its SHA-256, also one that no book mentions any more; null where it is not here. */
  picture: (sha256: string) => Promise<Stored<Picture | null>>;
  /**
   * Drops the photos that neither the book, nor a snapshot, nor an act that `need` holds mentions.
   * @param need the acts that can still be taken back or done again, by id; and since when, ISO 8601, all are
   * @returns how many went
   */
  sweep: (need: Needed) => Promise<Stored<number>>;
  /** Hears when the browser or a newer version takes the place away. */
  whenLost: (listener: (fault: StoreFault) => void) => void;
  close: () => void;
}>;
