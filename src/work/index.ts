/**
 * Work: long jobs off the page's thread. A module worker reads files into tables, and tables into drafts, by the
 * engine; the page asks it, shows what it says, and ends it when it is no longer wanted.
 *
 * Sources  RFC 4180 (CSV), PKWARE APPNOTE (ZIP), ECMA-376 (XLSX) and OASIS ODF 1.3 (ODS), the last two read by SheetJS.
 * Not here What rows mean: `engine/intake`.
 */
import { proxy, type Remote, releaseProxy, transfer, wrap } from "comlink";
import { workerAddress } from "./addresses.ts";
import type { Progress, Session } from "./session.ts";

export type { FileFault } from "./file/fault.ts";
export { type Delimiter, delimiters } from "./file/text.ts";
export type { Guess, Opened, Shown, Summary } from "./session.ts";

/** A reader of files in a thread of its own. */
export type TableReader = Readonly<{
  ask: Remote<Session>;
  /** Hands the bytes over: they are gone from the page. */
  openFile: (bytes: ArrayBuffer, name: string) => ReturnType<Session["openFile"]>;
  /** A listener that the worker can call. */
  heard: (listener: Progress) => Progress;
  /** Hears when the thread has ended by itself, as for want of memory: what was asked is never answered then. */
  whenLost: (listener: () => void) => void;
  /** Ends the thread, whatever it is doing. */
  stop: () => void;
}>;

/** Starts a reader. Nothing it does can hold up the page. */
export function startReader(): TableReader {
  const worker = new Worker(workerAddress("tables"), { type: "module", name: "tables" });
  const ask = wrap<Session>(worker);
  return {
    ask,
    openFile: (bytes, name) => ask.openFile(transfer(new Uint8Array(bytes), [bytes]), name),
    heard: (listener) => proxy(listener),
    whenLost: (listener) => worker.addEventListener("error", listener),
    stop: () => {
      ask[releaseProxy]();
      worker.terminate();
    },
  };
}
