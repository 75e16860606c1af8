import { type ComponentType, type LazyExoticComponent, lazy, useMemo } from "react";
import type { Act } from "../app/acts.ts";
import { go, useQuery } from "../app/navigate.ts";
import { actWords } from "../words/acts.ts";
import { findWords } from "../words/find.ts";
import { printWords } from "../words/print.ts";
import { stashWords } from "../words/stash.ts";
import { otherAddress } from "./item-link.tsx";

type Other = Readonly<{
  /** The word of the query that asks for it, and its value where none is chosen. */
  word: string;
  value: string;
  /** What the search field calls it, and what else it is looked for by. */
  name: string;
  also?: string;
  Page: LazyExoticComponent<ComponentType>;
}>;

const page = (load: () => Promise<ComponentType>) => lazy(async () => ({ default: await load() }));

const PrintPage = page(async () => (await import("./print/print-page.tsx")).PrintPage);

/** What else is done at the stash's address; each loads when it is asked for. */
const others: readonly Other[] = [
  {
    word: "bring",
    value: "list",
    name: actWords.bringIn,
    also: actWords.bringInAlso,
    Page: page(async () => (await import("./import/bring-page.tsx")).BringPage),
  },
  {
    word: "set",
    value: "new",
    name: actWords.addSet,
    also: actWords.addSetAlso,
    Page: page(async () => (await import("./set/set-page.tsx")).SetPage),
  },
  {
    word: "code",
    value: "find",
    name: actWords.barCode,
    also: actWords.barCodeAlso,
    Page: page(async () => (await import("./code/code-page.tsx")).CodePage),
  },
  {
    word: "chart",
    value: "photo",
    name: actWords.chart,
    also: actWords.chartAlso,
    Page: page(async () => (await import("./chart/chart-page.tsx")).ChartPage),
  },
  {
    word: "kin",
    value: "all",
    name: actWords.kin,
    also: actWords.kinAlso,
    Page: page(async () => (await import("./kin/kin-page.tsx")).KinPage),
  },
  {
    word: "save",
    value: "list",
    name: actWords.saveList,
    also: actWords.saveListAlso,
    Page: page(async () => (await import("./save/save-page.tsx")).SavePage),
  },
  {
    word: "print",
    value: "list",
    name: printWords.listAct,
    also: printWords.listAlso,
    Page: PrintPage,
  },
  {
    word: "print",
    value: "chart",
    name: printWords.chartAct,
    also: printWords.chartAlso,
    Page: PrintPage,
  },
  {
    word: "tidy",
    value: "doubles",
    name: findWords.tidy,
    Page: page(async () => (await import("./tidy/tidy-page.tsx")).TidyPage),
  },
];

/** The acts that lead to these pages, for the search field. */
export const otherActs: readonly Act[] = others.map(({ word, value, name, also }) => ({
  name,
  fact: stashWords.title,
  ...(also === undefined ? {} : { also }),
  run: () => go(otherAddress(word, value)),
}));

/** The page that the address asks for in place of the stash itself; null is the stash. */
export function useOtherPage(): LazyExoticComponent<ComponentType> | null {
  const query = useQuery();
  return useMemo(() => {
    const asked = new URLSearchParams(query);
    return others.find(({ word }) => asked.has(word))?.Page ?? null;
  }, [query]);
}
