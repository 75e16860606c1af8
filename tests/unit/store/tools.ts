import { IDBFactory, IDBKeyRange } from "fake-indexeddb";
import { createBook } from "../../../src/store/create-book.ts";
import { dexieRepository } from "../../../src/store/dexie/repository.ts";
import type { LastKnown, Marker } from "../../../src/store/marker.ts";
import type { Tabs } from "../../../src/store/tabs.ts";

/** A marker that is remembered, as local storage would. */
export function heldMarker(held: { known: LastKnown | null } = { known: null }): Marker {
  return {
    read: () => held.known,
    write: (known) => {
      held.known = known;
    },
  };
}

/** Tabs of one browser, which hear each other at once. */
export function tabsTogether(): () => Tabs {
  const listeners = new Map<object, (revision: number) => void>();
  return () => {
    const self = {};
    return {
      tell: (revision) => {
        for (const [other, listener] of listeners) if (other !== self) listener(revision);
      },
      listen: (listener) => listeners.set(self, listener),
      close: () => listeners.delete(self),
    };
  };
}

export const at = "2026-05-02T10:00:00.000Z";

export const newStorage = () => ({ indexedDB: new IDBFactory(), IDBKeyRange });

export const repositoryIn = (storage: ReturnType<typeof newStorage>) =>
  dexieRepository({ name: "book", newDevice: () => "dev", storage });

export const newBook = (tabs: Tabs = tabsTogether()(), marker: Marker = heldMarker()) =>
  createBook({ now: () => at, tabs, marker, newDevice: () => "memory" });
