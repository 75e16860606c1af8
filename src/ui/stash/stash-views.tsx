import { lazy, memo, type ReactNode, Suspense, useDeferredValue, useEffect, useMemo, useState } from "react";
import { usePrinting } from "../parts/use-printing.ts";
import { ChooseBar } from "./choose-bar.tsx";
import { endChoosing, useChoosing } from "./choosing.ts";
import { ColourGrid } from "./colour-grid.tsx";
import { NarrowFilters } from "./filters.tsx";
import { FindBar } from "./find-bar.tsx";
import type { PanelProps } from "./item-page.tsx";
import { Ladder, NearestFirst } from "./ladder.tsx";
import { StashList } from "./list.tsx";
import styles from "./stash-views.module.css";
import type { AskedState } from "./use-asked.ts";
import { layoutOf, nearestFirst } from "./view/by-colour.ts";
import type { Filter } from "./view/filters.ts";
import type { Found } from "./view/find.ts";
import type { Known } from "./view/known.ts";
import { inOrder, type Order } from "./view/order.ts";

const ChosenPanel = lazy(() => import("./item-page.tsx").then((module) => ({ default: module.ChosenPanel })));

type Props = Readonly<{
  known: readonly Known[];
  filters: readonly Filter[];
  state: AskedState;
  found: Found;
  /** The chosen item, where it opens beside the rest. */
  panel: PanelProps | null;
  narrow: boolean;
  adding: boolean;
  onAdd: () => void;
}>;

/**
 * How many things one hue at one lightness shows before the rest is folded away: with thousands fewer, so that the
 * whole layout can still be taken in.
 */
const cellLimit = (count: number): number => (count > 600 ? 12 : 24);

/** How many more a press unfolds. */
const unfolded = 96;

/** The search over the stash, and what it found: by colour or as a list. */
export function StashViews({ known, filters, state, found, panel, narrow, adding, onAdd }: Props) {
  const near = known.find(({ item }) => item.id === state.asked.near);
  const { order } = state;
  // The search stands first, and what it searches follows at once; paper does not wait.
  const isFollowing = useDeferredValue(true, false);
  const ready = usePrinting() || isFollowing;
  useEffect(() => endChoosing, []);
  const views = { known, found, panel, narrow, order };
  return (
    <>
      <FindBar
        state={state}
        found={found}
        nearName={near?.item.supply.name ?? null}
        adding={adding}
        onAdd={onAdd}
        filters={<NarrowFilters filters={filters} onTick={state.tick} />}
      />
      <ChooseBar known={known} found={found} />
      {!ready && <div className={styles.coming} />}
      {ready && (state.isList ? <Listed {...views} /> : <Laid {...views} />)}
    </>
  );
}

type ViewProps = Pick<Props, "known" | "found" | "panel" | "narrow"> & Readonly<{ order: Order | null }>;

const panelOf = (panel: PanelProps | null): ReactNode =>
  panel && (
    <Suspense fallback={null}>
      <ChosenPanel {...panel} />
    </Suspense>
  );

const Listed = memo(function Listed({ known, found, panel, narrow, order }: ViewProps) {
  const listed = useMemo(() => inOrder(known, found, order), [known, found, order]);
  return (
    <StashList
      listed={listed}
      apart={found.apart}
      chosen={panel?.known.item.id ?? null}
      stays={!narrow}
      panel={panelOf(panel)}
    />
  );
});

const Laid = memo(function Laid({ known, found, panel, narrow }: ViewProps) {
  const [opened, setOpened] = useState<ReadonlyMap<string, number>>(new Map());
  const choosing = useChoosing(({ on }) => on);
  const limit = usePrinting() ? Number.POSITIVE_INFINITY : cellLimit(known.length);
  const layout = useMemo(() => layoutOf(known, found, limit, opened), [known, found, limit, opened]);
  const open = (cell: string) => setOpened(new Map([...opened, [cell, (opened.get(cell) ?? 0) + unfolded]]));
  // On a phone what is chosen from is the list: the ladder shows one hue at a time.
  if (narrow && choosing) return <Listed {...{ known, found, panel, narrow }} order={null} />;
  if (narrow && found.apart) return <Closest known={known} found={found} />;
  if (narrow) return <Ladder layout={layout} onOpen={open} />;
  return (
    <>
      <ColourGrid layout={layout} chosen={panel?.known.item.id ?? null} onOpen={open} />
      {panel && <div className={styles.chosen}>{panelOf(panel)}</div>}
    </>
  );
});

function Closest({ known, found }: Pick<ViewProps, "known" | "found">) {
  const [limit, setLimit] = useState(cellLimit(known.length));
  const most = usePrinting() ? Number.POSITIVE_INFINITY : limit;
  return <NearestFirst near={nearestFirst(known, found, most)} onOpen={() => setLimit(limit + unfolded)} />;
}
