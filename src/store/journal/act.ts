import type { Change } from "./change.ts";

export type ActKind = "do" | "undo" | "redo";

/**
 * One act as the journal keeps it, for good. Undo and redo are acts like any other.
 *
 * `counter` rises by one with each act of a device, and never repeats; a device that takes in another's acts
 * goes on above the highest counter of both (a Lamport clock), so that counter, then device, is one order for
 * all. A removal stays in the journal with the record it removed (`inverse`): that is its tombstone.
 */
export type Act = ActHead &
  Readonly<{
    changes: readonly Change[];
    /** Takes the changes back, in this order. */
    inverse: readonly Change[];
  }>;

/** An act by its name, without what it changed. */
export type ActHead = Readonly<{
  /** `device:counter`, the same on every device. */
  id: string;
  device: string;
  counter: number;
  /** When, ISO 8601 with time, by this device's clock: to be shown, not to order by. */
  at: string;
  label: string;
  kind: ActKind;
  /** The act that an undo or redo is about: always the one first done. */
  of?: string;
}>;

/** The bytes of a photo: a JPEG that says nothing but the picture, known by the SHA-256 of its bytes in hex. */
export type Picture = Readonly<{ sha256: string; bytes: Uint8Array<ArrayBuffer> }>;

/** What a person does: a name for it, what it changes, and the photos that it brings. */
export type ActDraft = Readonly<{
  label: string;
  changes: readonly Change[];
  pictures?: readonly Picture[];
}>;

/** An order that every device agrees on, whatever its clock says. */
export const inJournalOrder = (a: Act, b: Act): number =>
  a.counter - b.counter || (a.device < b.device ? -1 : Number(a.device > b.device));
