import { expose, transfer } from "comlink";
import { type Redrawn, redraw } from "./photo/redraw.ts";

// Runs off the page's thread: unpacking twelve million pixels would hold the page up.
const jobs = {
  async redraw(file: Uint8Array<ArrayBuffer>): Promise<Redrawn> {
    const drawn = await redraw(file);
    return drawn.ok ? transfer(drawn, [drawn.bytes.buffer]) : drawn;
  },
};

export type PhotoJobs = typeof jobs;

expose(jobs);
