import { IDBFactory, IDBKeyRange, IDBObjectStore } from "fake-indexeddb";
import { dexieRepository } from "../../../src/store/dexie/repository.ts";
import type { BookRepository } from "../../../src/store/repository.ts";

/** A browser that does not let a database be opened. */
export function refusing(name: string): BookRepository {
  const indexedDB = new IDBFactory();
  Object.defineProperty(indexedDB, "open", {
    value: () => {
      throw new DOMException("no", name);
    },
  });
  return dexieRepository({ name: "refused", newDevice: () => "dev", storage: { indexedDB, IDBKeyRange } });
}

export type Failure = Readonly<{ name: string; kind: string; fail: (store: IDBObjectStore) => void }>;

const thrown = (name: string) => () => {
  throw new DOMException("as a browser would", name);
};

/** Ways in which a browser fails a request. A full disk arrives as an abort with the reason inside. */
export const failures: readonly Failure[] = [
  { name: "a full disk", kind: "quota", fail: thrown("QuotaExceededError") },
  { name: "an abort", kind: "interrupted", fail: (store) => store.transaction.abort() },
  { name: "an unknown error", kind: "interrupted", fail: thrown("UnknownError") },
  { name: "a wrong state", kind: "closed", fail: thrown("InvalidStateError") },
];

const methods = ["put", "add", "delete"] as const;

/**
 * Fails the writes that `when` picks by their number, from 1.
 * @returns how many there were so far, and the way back to a browser that works
 */
export function failWrites(when: (call: number) => boolean, fail: Failure["fail"]) {
  const calls = { count: 0 };
  const originals = methods.map((method) => [method, IDBObjectStore.prototype[method]] as const);
  for (const [method, original] of originals) {
    IDBObjectStore.prototype[method] = function (this: IDBObjectStore, ...given: never[]) {
      calls.count += 1;
      if (when(calls.count)) fail(this);
      return (original as (...all: never[]) => ReturnType<typeof original>).apply(this, given);
    } as never; // the three differ only in what they are given
  }
  const mend = () => {
    for (const [method, original] of originals) IDBObjectStore.prototype[method] = original as never;
  };
  return { calls, mend };
}
