import { sizeLimitBytes } from "../../../engine/workbook/index.ts";
import { type Restorable, restorable } from "../../../store/index.ts";
import { keepSafeWords } from "../../words/keep-safe.ts";

const words = keepSafeWords.restore;

/** What is needed of a chosen file. */
export type ChosenFile = Readonly<{ size: number; arrayBuffer: () => Promise<ArrayBuffer> }>;

const refused = (fault: Readonly<{ problem: string; remedy: string }>): Restorable => ({
  ok: false,
  faults: [{ place: "file", ...fault }],
});

async function bytesOf(file: ChosenFile): Promise<ArrayBuffer | null> {
  try {
    return await file.arrayBuffer();
  } catch {
    return null; // moved or changed since it was chosen, or the device took it back
  }
}

function decoded(bytes: ArrayBuffer): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

/**
 * Reads a chosen file whole, changing nothing. One over 50 MB is not even taken into memory, and one that is
 * not UTF-8 is refused rather than read with its letters lost.
 */
export async function readCopy(file: ChosenFile): Promise<Restorable> {
  if (file.size > sizeLimitBytes) return restorable("", file.size);
  const bytes = await bytesOf(file);
  if (bytes === null) return refused(words.unread);
  const text = decoded(bytes);
  return text === null ? refused(words.notText) : restorable(text, file.size);
}
