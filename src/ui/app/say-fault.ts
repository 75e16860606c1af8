import type { StoreFault } from "../../store/index.ts";
import { notify } from "../parts/index.ts";

/** The fault's sentences in the reader's language. Its words come with the first fault; without them, as it is. */
async function inWords(fault: StoreFault): Promise<StoreFault> {
  try {
    return (await import("../words/faults.ts")).faultIn(fault);
  } catch {
    return fault; // offline, before these words were ever loaded
  }
}

const asSentence = (text: string): string =>
  text.slice(0, 1).toUpperCase() + text.slice(1) + (/[.!?]$/.test(text) ? "" : ".");

/** Says what went wrong and the way out, and between them, where asked for, what is safe all the same. */
export async function sayFault(fault: StoreFault, alsoSafe = false): Promise<void> {
  const { problem, safe, remedy } = await inWords(fault);
  notify([problem, ...(alsoSafe ? [safe] : []), remedy].map(asSentence).join(" "));
}
