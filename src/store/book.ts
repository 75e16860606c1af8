import { createBook } from "./create-book.ts";
import { dexieRepository } from "./dexie/repository.ts";
import { randomText } from "./ids.ts";
import { localMarker } from "./marker.ts";
import { channelTabs } from "./tabs.ts";

const name = "understudy";
const newDevice = () => randomText(10);

/** The app's one book. `useBook(selector)`: select single stored values, never a fresh list or object. */
export const {
  useBook,
  openBook,
  perform,
  performLarge,
  undo,
  redo,
  retry,
  dropPending,
  replaceBook,
  restoreSnapshot,
  acts,
  snapshots,
  picture,
  sweepPictures,
} = createBook({
  now: () => new Date().toISOString(),
  tabs: channelTabs(name),
  marker: localMarker(() => localStorage),
  newDevice,
});

/** Opens the book that this browser keeps. */
export const openLocalBook = (): Promise<void> => openBook(dexieRepository({ name, newDevice }));
