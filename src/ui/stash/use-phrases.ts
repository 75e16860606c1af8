import { useEffect, useState } from "react";
import type { ReadPhrase } from "./view/asked.ts";

let loaded: ReadPhrase | null = null;

/**
 * What reads colour words. They are many, and are fetched when a search first begins; until then, and where there is
 * no connection, words are looked for as they are.
 */
export function usePhrases(isSearching: boolean): ReadPhrase | null {
  const [read, setRead] = useState<ReadPhrase | null>(() => loaded);
  useEffect(() => {
    if (!isSearching || read) return undefined;
    let isWanted = true;
    void import("./view/phrases.ts").then(
      ({ readPhrase }) => {
        loaded = readPhrase;
        if (isWanted) setRead(() => readPhrase);
      },
      () => {},
    );
    return () => {
      isWanted = false;
    };
  }, [isSearching, read]);
  return read;
}
