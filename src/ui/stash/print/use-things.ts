import { useMemo } from "react";
import type { StashItem } from "../../../engine/supply/index.ts";
import { useBook } from "../../../store/index.ts";
import { useAddressValue } from "../../app/navigate.ts";
import { useAsked } from "../use-asked.ts";
import { usePhrases } from "../use-phrases.ts";
import { findIn } from "../view/find.ts";
import { knownStash } from "../view/known.ts";

const none: readonly never[] = [];

/** What goes on paper: all of the stash, what its search found, or nothing, for blank cells. */
export type Which = "all" | "found" | "blank";

/**
 * The things to print. The search is the one in the address, so that a link from the stash prints what was found
 * there; `found` is null where nothing was searched for.
 */
export function useThings() {
  const stash = useBook((state) => state.book.stash) ?? none;
  const known = useMemo(() => knownStash(stash), [stash]);
  const { asked } = useAsked();
  const [of, setOf] = useAddressValue("of");
  const text = JSON.stringify(asked); // a new object each time; the stash is searched again only for another question
  const readPhrase = usePhrases(asked.text.trim() !== "");
  const found = useMemo((): readonly StashItem[] | null => {
    const { ids, asked: isAsked } = findIn(known, JSON.parse(text), readPhrase);
    return isAsked ? known.flatMap(({ item }) => (ids.has(item.id) ? [item] : [])) : null;
  }, [known, text, readPhrase]);
  const which: Which = of === "blank" ? "blank" : found === null || of === "all" ? "all" : "found";
  const setWhich = (next: Which) => setOf(next === "found" ? null : next);
  return {
    all: stash,
    found,
    which,
    setWhich,
    items: which === "blank" ? none : which === "found" ? (found ?? none) : stash,
  };
}

export type Things = ReturnType<typeof useThings>;
