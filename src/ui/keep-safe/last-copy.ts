import { create } from "zustand";

/** When a copy was last saved here, ISO 8601 with time. */
export type LastCopy = Readonly<{ at: string }>;

const key = "understudy.last-copy";

function read(): LastCopy | null {
  try {
    const at = localStorage.getItem(key);
    return at !== null && !Number.isNaN(Date.parse(at)) ? { at } : null;
  } catch {
    return null; // storage is shut off: then nothing is known of earlier copies
  }
}

const useLast = create<{ last: LastCopy | null }>(() => ({ last: read() }));

/** When a copy was last saved from this browser; null when none is known of. */
export const useLastCopy = (): LastCopy | null => useLast((state) => state.last);

/** Notes that a copy was saved just now, on this device. */
export function noteCopy(at: string): void {
  useLast.setState({ last: { at } });
  try {
    localStorage.setItem(key, at);
  } catch {
    // not kept, see `read`
  }
}
