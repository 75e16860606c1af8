/**
 * Workers: long jobs off the page's thread. One module worker reads files into tables, and tables into drafts, by the
 * engine; another draws photos anew; a third reads the colours of a swatch chart from a photo. The page asks, shows
 * what is said, and ends them when they are no longer wanted.
 *
 * Sources  ISO/IEC 15420 (EAN and UPC bar codes), ITU-T T.81 (JPEG), RFC 4180 (CSV), PKWARE APPNOTE (ZIP), ECMA-376
 *          (XLSX) and OASIS ODF 1.3 (ODS), the last two read by SheetJS.
 * Not here What rows mean: `engine/intake`. What a swatch's pixels mean: `engine/colour`.
 */
import { proxy, type Remote, releaseProxy, transfer, wrap } from "comlink";
import { workerAddress } from "./addresses.ts";
import type { CopyRead, Photograph } from "./archive/copy.ts";
import type { CodeRead } from "./bar-code/scan.ts";
import type { ChartSession } from "./chart/session.ts";
import type { Redrawn } from "./photo/redraw.ts";
import type { Packed, PhotoJobs } from "./photos.ts";
import type { Progress, Session } from "./session.ts";

export type { CopyFault } from "./archive/copy.ts";
export type { ChartMarks, ChartOpened } from "./chart/session.ts";
export type { FileFault } from "./file/fault.ts";
export { type Delimiter, delimiters } from "./file/text.ts";
export { type ListKind, listKinds } from "./out/kinds.ts";
export { type PhotoFault, photoCaps } from "./photo/fault.ts";
export type { Redrawn } from "./photo/redraw.ts";
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

/** One who draws photos anew, reads bar codes, and packs and unpacks copies with photos, in a thread of their own. */
export type PhotoWorker = Readonly<{
  /** Hands the bytes over: they are gone from the page. */
  redraw: (file: ArrayBuffer) => Promise<Redrawn>;
  /** The number under the bar code in a photo. Hands the bytes over. */
  readCode: (file: ArrayBuffer) => Promise<CodeRead>;
  /** The number under the bar code in a camera's picture, which is handed over. */
  readFrame: (frame: ImageBitmap) => Promise<string | null>;
  packCopy: (json: string, photos: readonly Photograph[], at: string) => Promise<Packed | null>;
  /** Hands the bytes over as well. */
  readCopy: (file: ArrayBuffer) => Promise<CopyRead>;
  stop: () => void;
}>;

/** What takes longer than this to unpack is no photo: the thread is ended. */
const patienceMs = 20_000;

/** Starts one. Whatever a file does to it, an answer comes. */
export function startPhotos(): PhotoWorker {
  const worker = new Worker(workerAddress("photos"), { type: "module", name: "photos" });
  const ask = wrap<PhotoJobs>(worker);
  const broken = new Promise<void>((resolve) => worker.addEventListener("error", () => resolve()));
  const late = new Promise<void>((resolve) => setTimeout(resolve, patienceMs));
  return {
    redraw: (file) =>
      Promise.race([
        ask.redraw(transfer(new Uint8Array(file), [file])),
        broken.then(() => ({ ok: false, fault: "lost" }) as const),
        late.then(() => ({ ok: false, fault: "damaged" }) as const),
      ]),
    readCode: (file) =>
      Promise.race([
        ask.readCode(transfer(new Uint8Array(file), [file])),
        broken.then(() => ({ ok: false, fault: "lost" }) as const),
        late.then(() => ({ ok: false, fault: "damaged" }) as const),
      ]),
    readFrame: (frame) => Promise.race([ask.readFrame(transfer(frame, [frame])), broken.then(() => null)]),
    packCopy: (json, photos, at) => Promise.race([ask.packCopy(json, photos, at), broken.then(() => null)]),
    readCopy: (file) =>
      Promise.race([
        ask.readCopy(transfer(new Uint8Array(file), [file])),
        broken.then(() => ({ ok: false, fault: "damaged" }) as const),
      ]),
    stop: () => worker.terminate(),
  };
}

/** A reader of one photo of a swatch chart, in a thread of its own. */
export type ChartReader = Readonly<{
  ask: Remote<ChartSession>;
  /** Hears when the thread has ended by itself, as for want of memory: what was asked is never answered then. */
  whenLost: (listener: () => void) => void;
  /** Ends the thread, and with it all that is left of the photo. */
  stop: () => void;
}>;

/** Starts one. The file goes to it as it is: the page never unpacks it. */
export function startChartReader(): ChartReader {
  const worker = new Worker(workerAddress("charts"), { type: "module", name: "charts" });
  const ask = wrap<ChartSession>(worker);
  return {
    ask,
    whenLost: (listener) => worker.addEventListener("error", listener),
    stop: () => {
      ask[releaseProxy]();
      worker.terminate();
    },
  };
}
