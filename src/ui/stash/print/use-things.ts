import { useMemo } from "react";
import type { StashItem } from "../../../engine/supply/index.ts";
import { useBook } from "../../../store/index.ts";
import { useAddressValue } from "../../app/navigate.ts";
import { useAsked } from "../use-asked.ts";
import { usePhrases } from "../use-phrases.ts";
import { findIn } from "../view/find.ts";
import { knownStash } from "../view/known.ts";
import { sentOn } from "./sent-on.ts";

const none: readonly never[] = [];

/** What goes on paper: all of the stash, what its search found, what was chosen, or nothing, for blank cells. */
export type Which = "all" | "found" | "chosen" | "blank";

type Kept = Readonly<{ found: readonly StashItem[] | null; chosen: readonly StashItem[] | null }>;

/** What the address asks for, as far as it is there: chosen things are gone once the page was loaded anew. */
function whichOf(of: string | null, { found, chosen }: Kept): Which {
  if (of === "blank" || of === "all") return of;
  if (of === "chosen" && chosen) return of;
  return found ? "found" : "all";
}

/**
 * The things to print. The search is the one in the address, so that a link from the stash prints what was found
 * there; `found` is null where nothing was searched for, `chosen` where nothing was chosen.
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
  const chosen = useMemo((): readonly StashItem[] | null => {
    const ids = sentOn();
    const items = stash.filter(({ id }) => ids.has(id));
    return items.length > 0 ? items : null;
  }, [stash]);
  const which = whichOf(of, { found, chosen });
  const setWhich = (next: Which) => setOf(next === "found" ? null : next);
  const items = { all: stash, found: found ?? none, chosen: chosen ?? none, blank: none }[which];
  return { all: stash, found, chosen, which, setWhich, items };
}

export type Things = ReturnType<typeof useThings>;
