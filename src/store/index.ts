/**
 * Store: keeps the person's data safe, and lets the screens see and change it.
 *
 * Every change is an act: shown at once, kept in one strict transaction with its journal entry, undoable, also
 * after a reload. `useBook` is what the screens read; `perform` what they write by, with an act of `acts/`.
 */
export * from "./acts/index.ts";
export { type BackupFile, backupFile, type Restorable, restorable } from "./backup.ts";
export {
  acts,
  openLocalBook,
  perform,
  performLarge,
  picture,
  redo,
  replaceBook,
  restoreSnapshot,
  retry,
  snapshots,
  sweepPictures,
  undo,
  useBook,
} from "./book.ts";
export { recordsIn } from "./count.ts";
export {
  areKeysOn,
  chosenLocale,
  keepKeysOn,
  keepLanguage,
  keepLocale,
  language,
} from "./device.ts";
export type { Stored, StoreFault, StoreFaultKind } from "./faults.ts";
export { askToKeep, type StorageHealth, storageHealth } from "./health.ts";
export { newId } from "./ids.ts";
export {
  type ActDraft,
  type ActHead,
  type Change,
  type Entry,
  type Match,
  type Path,
  type Picture,
  type Removed,
  stockOf,
} from "./journal/index.ts";
export type { LastKnown } from "./marker.ts";
export { hasRoomFor, photoSums, pictureOf } from "./photos.ts";
export { keepReading, keptReading } from "./readings.ts";
export type { Snapshot } from "./repository.ts";
export type { BookState, Saving } from "./state.ts";
