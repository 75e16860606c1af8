import { useDeferredValue, useMemo, useState } from "react";
import type { CellReading } from "../../../engine/colour/index.ts";
import { readLine, type StashItem } from "../../../engine/supply/index.ts";
import { language, useBook } from "../../../store/index.ts";
import type { ChartOrder } from "../print/view/order.ts";
import { knownStash } from "../view/known.ts";
import { type Cell, cellsOf, type Stands } from "./view/cells.ts";
import type { Use } from "./view/colour.ts";
import { earlierTwice, freshThings, startIn, thingsAt, thingsFound } from "./view/things.ts";

export type What = "stash" | "fresh";
const none: readonly never[] = [];

/** What the swatches of a reading stand for, and what becomes of each. */
export function useStands(cells: readonly CellReading[]) {
  const stash = useBook((state) => state.book.stash) ?? none;
  const known = useMemo(() => knownStash(stash), [stash]);
  const [what, setWhat] = useState<What>(stash.length === 0 ? "fresh" : "stash");
  const [text, setText] = useState("");
  const [each, setEach] = useState("");
  const [maker, setMaker] = useState<string>();
  const [line, setLine] = useState<string>();
  const [names, setNames] = useState("");
  const [place, setPlace] = useState<string | null>(null);
  const [chosen, setChosen] = useState<ReadonlyMap<number, StashItem | null>>(new Map());
  const [uses, setUses] = useState<ReadonlyMap<number, Use>>(new Map());

  const asked = useDeferredValue(text);
  const [order, setOrder] = useState<ChartOrder>("code");
  const [start, setStart] = useState("1");
  const found = useMemo(
    () => thingsFound(known, asked, order).slice(startIn(start) - 1),
    [known, asked, order, start],
  );
  const things = useMemo(() => thingsAt(cells.length, found, chosen), [cells.length, found, chosen]);
  const base = useMemo(() => {
    const read = readLine(each, {}, language).supply;
    return { ...read, ...(maker ? { maker } : {}), ...(line ? { line } : {}) };
  }, [each, maker, line]);
  const written = useDeferredValue(names);
  const fresh = useMemo(() => freshThings(base, written, cells.length), [base, written, cells.length]);

  const isFresh = what === "fresh";
  const isOpen = each.trim() === "" || base.family === "other";
  const stands = useMemo((): readonly Stands[] => {
    if (!isFresh) return things.map((item) => item && { kind: "stash", item });
    return isOpen ? [] : fresh.map((supply) => ({ kind: "fresh", supply }));
  }, [isFresh, isOpen, things, fresh]);
  const all: readonly Cell[] = useMemo(() => cellsOf(cells, stands, uses), [cells, stands, uses]);
  const twice = useMemo(() => earlierTwice(isFresh ? [] : things), [isFresh, things]);

  return {
    ...{
      stash,
      what,
      setWhat,
      text,
      found,
      order,
      setOrder,
      start,
      setStart,
      each,
      setEach,
      maker,
      setMaker,
      line,
      setLine,
    },
    ...{ names, setNames, place, setPlace, base, isOpen, cells: all, twice },
    setText: (next: string) => {
      setText(next);
      setChosen(new Map());
    },
    choose: (at: number, item: StashItem | null) => setChosen(new Map([...chosen, [at, item]])),
    use: (at: number, use: Use) => setUses(new Map([...uses, [at, use]])),
  };
}

export type StandsState = ReturnType<typeof useStands>;
