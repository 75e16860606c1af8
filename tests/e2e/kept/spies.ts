import type { BrowserContext, Page } from "@playwright/test";

/** A transaction that the page opened, as the browser sees it. */
export type Seen = {
  readonly mode: string;
  readonly durability: string;
  /** The tables it wrote to, each time. */
  readonly wrote: string[];
  complete: boolean;
};

declare global {
  var seen: Seen[];
  /** While true, the page does not hear that a transaction is complete. */
  var holdsBack: boolean;
  var heldBack: (() => void)[];
  /** How the next writes fail: so many of them, and as what. */
  var failing: { left: number; as: "QuotaExceededError" | "UnknownError" | "abort" };
}

/** Writes down every transaction of the pages of a context, and can hold back the word that one is complete. */
export const spyOnTransactions = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    globalThis.seen = [];
    globalThis.holdsBack = false;
    globalThis.heldBack = [];
    const known = new WeakMap<IDBTransaction, Seen>();
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function (...args) {
      const opened = transaction.apply(this, args);
      const { mode, durability } = opened;
      const noted: Seen = { mode, durability, wrote: [], complete: false };
      seen.push(noted);
      known.set(opened, noted);
      opened.addEventListener("complete", (event) => {
        noted.complete = true;
        if (!holdsBack || !event.isTrusted) return;
        event.stopImmediatePropagation();
        heldBack.push(() => opened.dispatchEvent(new Event("complete")));
      });
      return opened;
    };
    for (const name of ["add", "put", "delete", "clear"] as const) {
      const write = IDBObjectStore.prototype[name];
      Object.defineProperty(IDBObjectStore.prototype, name, {
        value(this: IDBObjectStore, ...args: unknown[]) {
          known.get(this.transaction)?.wrote.push(this.name);
          return Reflect.apply(write, this, args);
        },
      });
    }
  });

export const seenIn = (page: Page): Promise<readonly Seen[]> => page.evaluate(() => seen);

/** Makes writes fail on demand: `failing` says how many and how. */
export const letWritesFail = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    globalThis.failing = { left: 0, as: "abort" };
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (...args) {
      if (failing.left === 0) return put.apply(this, args);
      failing.left -= 1;
      if (failing.as !== "abort") throw new DOMException("made to fail by the test", failing.as);
      const request = put.apply(this, args);
      this.transaction.abort();
      return request;
    };
  });

/** Tells `heard` of each act whose transaction is complete, as soon as the page could know. */
export async function reportCommits(page: Page, heard: (act: string) => void): Promise<void> {
  await page.exposeBinding("reportCommit", (_, act: string) => heard(act));
  await page.addInitScript(() => {
    const { add } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.add = function (...args) {
      const [row] = args;
      if (this.name === "journal")
        this.transaction.addEventListener("complete", () => Reflect.get(globalThis, "reportCommit")(row.id));
      return add.apply(this, args);
    };
  });
}
