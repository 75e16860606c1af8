import { useMemo, useState } from "react";
import { usePrinting } from "../parts/use-printing.ts";
import { ColourGrid } from "./colour-grid.tsx";
import { NarrowFilters } from "./filters.tsx";
import { FindBar } from "./find-bar.tsx";
import { ChosenPanel, type PanelProps } from "./item-page.tsx";
import { Ladder, NearestFirst } from "./ladder.tsx";
import { StashList } from "./list.tsx";
import styles from "./stash-views.module.css";
import type { AskedState } from "./use-asked.ts";
import { layoutOf, nearestFirst } from "./view/by-colour.ts";
import type { Tallies } from "./view/counts.ts";
import type { Found } from "./view/find.ts";
import type { Known } from "./view/known.ts";
import { rowsOf } from "./view/rows.ts";

type Props = Readonly<{
  known: readonly Known[];
  tallies: Tallies;
  state: AskedState;
  found: Found;
  /** The chosen item, where it opens beside the rest. */
  panel: PanelProps | null;
  narrow: boolean;
  adding: boolean;
  onAdd: () => void;
}>;

/** How many things one hue at one lightness shows before the rest is folded away. */
const cellLimit = 24;

/** The search over the stash, and what it found: by colour or as a list. */
export function StashViews({ known, tallies, state, found, panel, narrow, adding, onAdd }: Props) {
  return (
    <>
      <FindBar
        state={state}
        found={found}
        adding={adding}
        onAdd={onAdd}
        filters={<NarrowFilters tallies={tallies} state={state} />}
      />
      {state.isList ? (
        <Listed known={known} found={found} panel={panel} narrow={narrow} />
      ) : (
        <Laid known={known} found={found} panel={panel} narrow={narrow} />
      )}
    </>
  );
}

type ViewProps = Pick<Props, "known" | "found" | "panel" | "narrow">;

function Listed({ known, found, panel, narrow }: ViewProps) {
  const rows = useMemo(() => rowsOf(known, found), [known, found]);
  return (
    <StashList
      rows={rows}
      chosen={panel?.known.item.id ?? null}
      stays={!narrow}
      panel={panel && <ChosenPanel {...panel} />}
    />
  );
}

function Laid({ known, found, panel, narrow }: ViewProps) {
  const [opened, setOpened] = useState<ReadonlySet<string>>(new Set());
  const limit = usePrinting() ? Number.POSITIVE_INFINITY : cellLimit;
  const layout = useMemo(() => layoutOf(known, found, limit, opened), [known, found, limit, opened]);
  const open = (cell: string) => setOpened(new Set([...opened, cell]));
  if (narrow && found.apart) return <Closest known={known} found={found} />;
  if (narrow) return <Ladder layout={layout} onOpen={open} />;
  return (
    <>
      <ColourGrid layout={layout} chosen={panel?.known.item.id ?? null} onOpen={open} />
      {panel && (
        <div className={styles.chosen}>
          <ChosenPanel {...panel} />
        </div>
      )}
    </>
  );
}

function Closest({ known, found }: Pick<ViewProps, "known" | "found">) {
  const [isAll, setAll] = useState(false);
  const limit = usePrinting() || isAll ? Number.POSITIVE_INFINITY : cellLimit;
  return <NearestFirst near={nearestFirst(known, found, limit)} onOpen={() => setAll(true)} />;
}
