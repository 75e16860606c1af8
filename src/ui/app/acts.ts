import { useEffect } from "react";
import { create } from "zustand";
import { actWords as words } from "../words/acts.ts";
import { go, type Target } from "./navigate.ts";
import type { Route } from "./route.ts";

/** Something that can be done, findable by its name in the search field. */
export type Act = Readonly<{
  name: string;
  /** What it is about, shown beside its name, and searched too. */
  fact?: string;
  /** Other words that it is looked for by. */
  also?: string;
  run: () => void;
}>;

/** An act that can be asked for from anywhere, and the place that does it. */
type ActElsewhere = Readonly<{ name: string; also?: string; to: Route }>;

type Offered = Readonly<{
  lists: ReadonlyMap<symbol, readonly Act[]>;
  /** An act that waits for its place to open, for as long as that is where one is. */
  wanted: Readonly<{ name: string; path: string }> | null;
}>;

const useOffered = create<Offered>(() => ({ lists: new Map(), wanted: null }));

/** The acts that every place can be asked for; each is offered, by this very name, by the place it leads to. */
export const actsElsewhere: readonly ActElsewhere[] = [
  { name: words.logKit, to: { name: "kits" } },
  { name: words.addToStash, to: { name: "stash" } },
  { name: words.bringIn, also: words.bringInAlso, to: { name: "stash" } },
  { name: words.addSet, also: words.addSetAlso, to: { name: "stash" } },
  { name: words.barCode, also: words.barCodeAlso, to: { name: "stash" } },
  { name: words.chart, also: words.chartAlso, to: { name: "stash" } },
  { name: words.kin, also: words.kinAlso, to: { name: "stash" } },
  { name: words.saveList, also: words.saveListAlso, to: { name: "stash" } },
  { name: words.takeUp, to: { name: "remakes" } },
  { name: words.addMarket, to: { name: "markets" } },
  { name: words.addRates, to: { name: "markets" } },
  { name: words.addShop, to: { name: "markets" } },
  { name: words.addParcel, to: { name: "markets" } },
  { name: words.saveCopy, also: words.saveCopyAlso, to: { name: "keep-safe" } },
  { name: words.restore, also: words.restoreAlso, to: { name: "keep-safe" } },
];

/** A screen offers its acts to the search field for as long as it is shown. */
export function useOffer(acts: readonly Act[]): void {
  useEffect(() => {
    const key = Symbol("acts");
    useOffered.setState(({ lists }) => ({ lists: new Map(lists).set(key, acts) }));
    // Once the new page's title has had the focus: what the act opens takes it from there.
    const timer = setTimeout(() => doWanted(acts), 0);
    return () => {
      clearTimeout(timer);
      useOffered.setState(({ lists }) => ({ lists: new Map([...lists].filter(([other]) => other !== key)) }));
    };
  }, [acts]);
}

function doWanted(acts: readonly Act[]): void {
  const { wanted } = useOffered.getState();
  const act = wanted?.path === location.pathname && acts.find(({ name }) => name === wanted.name);
  if (!act) return;
  useOffered.setState({ wanted: null });
  act.run();
}

/** Goes to a place and does there what is called so, as soon as the place offers it. */
export function goAndDo(to: Target, name: string): void {
  go(to);
  useOffered.setState({ wanted: { name, path: location.pathname } });
  for (const acts of useOffered.getState().lists.values()) doWanted(acts); // the place is open already
}

/** All acts on offer, by the screens that are shown. */
export const useOfferedLists = (): ReadonlyMap<symbol, readonly Act[]> => useOffered((state) => state.lists);
