import { useMemo, useState } from "react";
import { Button } from "../../parts/index.ts";
import { chartWords as words } from "../../words/chart.ts";
import { format } from "../../words/index.ts";
import { stashWords } from "../../words/stash.ts";
import { CellRow } from "./cell-row.tsx";
import styles from "./chart.module.css";
import { useGrowing } from "./use-growing.ts";
import type { StandsState } from "./use-stands.ts";

/** How many are drawn at first: most charts have no more. */
const first = 60;

/** The swatches, row by row of the chart. */
export function CellRows({ state }: Readonly<{ state: StandsState }>) {
  const [all, setAll] = useState(false);
  const [changing, setChanging] = useState<number | null>(null);
  const { cells, what, stash, twice } = state;
  const shown = all ? cells.length : Math.min(first, cells.length);
  const drawn = cells.slice(0, useGrowing(shown));
  const options = useMemo(
    () =>
      stash.map(({ id, supply }) => ({
        value: id,
        label: supply.name,
        more: [supply.maker, supply.line, supply.code].filter(Boolean).join(", "),
      })),
    [stash],
  );
  return (
    <>
      <ol className={styles.cells} aria-label={words.list}>
        {drawn.map((cell) => (
          <CellRow
            key={cell.at}
            cell={cell}
            isTwice={twice.has(cell.at)}
            options={what === "stash" ? options : null}
            isChanging={changing === cell.at}
            onChanging={(is) => setChanging(is ? cell.at : null)}
            onThing={(id) => {
              state.choose(cell.at, stash.find((item) => item.id === id) ?? null);
              setChanging(null);
            }}
            onUse={(use) => state.use(cell.at, use)}
          />
        ))}
      </ol>
      {shown < cells.length && (
        <Button kind="quiet" onClick={() => setAll(true)}>
          {stashWords.moreRows(format.count(cells.length - shown))}
        </Button>
      )}
    </>
  );
}
