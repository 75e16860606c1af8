import type { StoreFault } from "../../store/index.ts";
import { notify } from "../parts/index.ts";
import { faultIn } from "../words/faults.ts";

const asSentence = (text: string): string =>
  text.slice(0, 1).toUpperCase() + text.slice(1) + (/[.!?]$/.test(text) ? "" : ".");

/** Says what went wrong and the way out, and between them, where asked for, what is safe all the same. */
export function sayFault(fault: StoreFault, alsoSafe = false): void {
  const { problem, safe, remedy } = faultIn(fault);
  notify([problem, ...(alsoSafe ? [safe] : []), remedy].map(asSentence).join(" "));
}
