import { type ReactNode, useState } from "react";
import { Button, type Column, Table } from "../parts/index.ts";
import { usePrinting } from "../parts/use-printing.ts";
import { Swatch } from "../swatch/index.ts";
import { format } from "../words/index.ts";
import { stashWords as words } from "../words/stash.ts";
import { ItemLink } from "./item-link.tsx";
import styles from "./list.module.css";
import type { Row } from "./view/rows.ts";

type Props = Readonly<{
  rows: readonly Row[];
  chosen: string | null;
  /** Whether choosing stays on this page. */
  stays: boolean;
  /** The chosen item's own panel, opened under its row. */
  panel: ReactNode | null;
}>;

/** How many rows are drawn at once. */
const step = 100;

const columns = (stays: boolean): readonly Column<Row>[] => [
  {
    key: "name",
    head: words.columns.name,
    names: true,
    cell: (row) => <Named row={row} stays={stays} />,
    width: "52%",
  },
  { key: "where", head: words.columns.where, stacked: "hide", cell: (row) => row.where },
  { key: "have", head: words.columns.have, stacked: "hide", cell: (row) => row.have },
  {
    key: "state",
    head: words.columns.state,
    stacked: "hide",
    cell: (row) => (row.isWorn ? <b>{row.state}</b> : <span className={styles.pale}>{row.state}</span>),
  },
];

function Named({ row, stays }: Readonly<{ row: Row; stays: boolean }>) {
  return (
    <ItemLink id={row.item.id} stays={stays} data-slot={row.item.id} className={styles.named}>
      <Swatch item={row.item} width={44} height={30} />
      <span>
        <span className={styles.name}>{row.name}</span>
        <span className={styles.facts}>{row.facts}</span>
        <span className={styles.stacked}>
          {[row.where, words.haveCount(row.have)].filter((part) => part !== "").join(", ")}
          {row.isWorn && (
            <>
              , <b>{row.state}</b>
            </>
          )}
        </span>
      </span>
    </ItemLink>
  );
}

/** The stash row by row; the chosen one opens in place. */
export function StashList({ rows, chosen, stays, panel }: Props) {
  const [limit, setLimit] = useState(step);
  const shown = usePrinting() ? rows : rows.slice(0, limit);
  const more = rows.length - shown.length;
  const isShown = shown.some((row) => row.item.id === chosen);
  return (
    <div className={styles.list}>
      {panel && !isShown && <div className={styles.above}>{panel}</div>}
      {rows.length === 0 && <p>{words.notFound}</p>}
      <Table
        caption={words.list}
        columns={columns(stays)}
        rows={shown}
        keyOf={(row) => row.item.id}
        current={chosen}
        opened={(row) => (row.item.id === chosen ? panel : null)}
      />
      {more > 0 && (
        <Button kind="quiet" onClick={() => setLimit(limit + step)}>
          {words.moreRows(format.count(Math.min(step, more)))}
        </Button>
      )}
    </div>
  );
}
