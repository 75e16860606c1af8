import { useEffect } from "react";
import { create } from "zustand";

/** Something that can be done, findable by its name in the search field. */
export type Act = Readonly<{ name: string; run: () => void }>;

const useOffered = create<{ lists: ReadonlyMap<symbol, readonly Act[]> }>(() => ({ lists: new Map() }));

/** A screen offers its acts to the search field for as long as it is shown. */
export function useOffer(acts: readonly Act[]): void {
  useEffect(() => {
    const key = Symbol("acts");
    useOffered.setState(({ lists }) => ({ lists: new Map(lists).set(key, acts) }));
    return () =>
      useOffered.setState(({ lists }) => ({ lists: new Map([...lists].filter(([other]) => other !== key)) }));
  }, [acts]);
}

/** All acts on offer, by the screens that are shown. */
export const useOfferedLists = (): ReadonlyMap<symbol, readonly Act[]> => useOffered((state) => state.lists);
