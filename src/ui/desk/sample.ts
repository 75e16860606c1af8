import type { Workbook } from "../../engine/workbook/index.ts";
import { type ActDraft, removeSample, replaceBook, restorable, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { sayFault } from "../app/say-fault.ts";
import { notify } from "../parts/index.ts";
import { deskWords } from "../words/desk.ts";

const words = deskWords.sample;

const address = new URL("../../../fixtures/sample.understudy.json", import.meta.url);

/** Whether the book is the sample, or began as it. The mark is a field of the workbook, so copies carry it. */
export const isSample = (book: Workbook): boolean => book.sample === true;

/** The sample as it ships, from the app's own origin; null where it cannot be had. */
async function readSample(): Promise<Workbook | null> {
  try {
    const answer = await fetch(address);
    const read = answer.ok ? restorable(await answer.text()) : null;
    return read?.ok ? read.book : null;
  } catch {
    return null; // offline before the first visit was over
  }
}

/** Puts the sample in place of the empty book. */
export async function trySample(): Promise<void> {
  const sample = await readSample();
  if (!sample) return notify(words.failed);
  const done = await replaceBook({ ...sample, sample: true }, words.label);
  if (!done.ok) sayFault(done.fault);
}

/** The removal with the mark gone as well. */
const withoutMark = ({ label, changes }: ActDraft): ActDraft => ({
  label,
  changes: [...changes, { op: "set", list: "book", id: "book", path: ["sample"] }],
});

/** Takes out everything that came with the sample; what the person added stays. */
export async function takeOutSample(): Promise<void> {
  const sample = await readSample();
  if (!sample) return notify(words.failed);
  await doAct(withoutMark(removeSample(useBook.getState().book, sample)), words.removed);
}
