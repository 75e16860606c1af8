import { expose, transfer } from "comlink";
import { type CopyRead, type Photograph, packCopy, readArchive } from "./archive/copy.ts";
import { type CodeRead, codeInFrame, codeInPhoto } from "./bar-code/scan.ts";
import { type Redrawn, redraw } from "./photo/redraw.ts";

/** A copy with photos as a file; `whole`: reading it back gave every photo. */
export type Packed = Readonly<{ file: Blob; whole: boolean }>;

// Runs off the page's thread: unpacking twelve million pixels, or summing up hundreds of photos, would hold the page up.
const jobs = {
  async redraw(file: Uint8Array<ArrayBuffer>): Promise<Redrawn> {
    const drawn = await redraw(file);
    return drawn.ok ? transfer(drawn, [drawn.bytes.buffer]) : drawn;
  },

  /** The number under the bar code in a photo. */
  readCode: (file: Uint8Array<ArrayBuffer>): Promise<CodeRead> => codeInPhoto(file),

  /** The number under the bar code that a camera sees just now; null where it sees none. */
  readFrame: (frame: ImageBitmap): Promise<string | null> => codeInFrame(frame),

  async packCopy(json: string, photos: readonly Photograph[], at: string): Promise<Packed> {
    const file = packCopy(json, photos, at);
    const back = await readArchive(new Uint8Array(await file.arrayBuffer()));
    return { file, whole: back.ok && back.copy.leftOut === 0 && back.copy.photos.length === photos.length };
  },

  async readCopy(file: Uint8Array<ArrayBuffer>): Promise<CopyRead> {
    const read = await readArchive(file);
    if (!read.ok) return read;
    const { json, photos } = read.copy;
    return transfer(read, [json.buffer, ...photos.map(({ bytes }) => bytes.buffer)]);
  },
};

export type PhotoJobs = typeof jobs;

expose(jobs);
