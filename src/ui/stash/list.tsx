import { type ReactNode, useEffect, useMemo } from "react";
import { type Column, Table } from "../parts/index.ts";
import { Swatch } from "../swatch/index.ts";
import { stashWords as words } from "../words/stash.ts";
import { setSeen, useChoosing } from "./choosing.ts";
import { ItemLink } from "./item-link.tsx";
import styles from "./list.module.css";
import { Pick } from "./pick.tsx";
import type { Found } from "./view/find.ts";
import type { Known } from "./view/known.ts";
import { type Row, rowOf } from "./view/rows.ts";

type Props = Readonly<{
  /** What is listed, in order. */
  listed: readonly Known[];
  apart: Found["apart"];
  chosen: string | null;
  /** Whether choosing stays on this page. */
  stays: boolean;
  /** The chosen item's own panel, opened under its row. */
  panel: ReactNode | null;
}>;

/** A row is made anew only when its thing or its distance is another. */
function rows(apart: Found["apart"]): (known: Known) => Row {
  const made = new WeakMap<Known, Row>();
  return (known) => {
    const row = made.get(known) ?? rowOf(known, apart?.get(known.item.id));
    made.set(known, row);
    return row;
  };
}

type Make = (known: Known) => Row;

const columns = (
  make: Make,
  first: Known | undefined,
  stays: boolean,
  picks: boolean,
): readonly Column<Known>[] => [
  {
    key: "name",
    head: words.columns.name,
    names: true,
    cell: (known) => <Named row={make(known)} stays={stays} picks={picks} first={known === first} />,
    width: "52%",
  },
  { key: "where", head: words.columns.where, stacked: "hide", cell: (known) => make(known).where },
  { key: "have", head: words.columns.have, stacked: "hide", cell: (known) => make(known).have },
  {
    key: "state",
    head: words.columns.state,
    stacked: "hide",
    cell: (known) => {
      const { state, isWorn } = make(known);
      return isWorn ? <b>{state}</b> : <span className={styles.pale}>{state}</span>;
    },
  },
];

type NamedProps = Readonly<{ row: Row; stays: boolean; picks: boolean; first: boolean }>;

function Named({ row, stays, picks, first }: NamedProps) {
  const link = (
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
  if (!picks) return link;
  return (
    <span className={styles.picked}>
      <Pick id={row.item.id} name={row.name} first={first} />
      {link}
    </span>
  );
}

/** The stash row by row; the chosen one opens in place. */
export function StashList({ listed, apart, chosen, stays, panel }: Props) {
  const picks = useChoosing(({ on }) => on);
  const make = useMemo(() => rows(apart), [apart]);
  useEffect(() => setSeen(listed.map(({ item }) => item.id)), [listed]);
  const isListed = chosen !== null && listed.some(({ item }) => item.id === chosen);
  return (
    <div className={styles.list}>
      {panel && !isListed && <div className={styles.above}>{panel}</div>}
      {listed.length === 0 && <p>{words.notFound}</p>}
      <Table
        caption={words.list}
        columns={columns(make, listed[0], stays, picks)}
        rows={listed}
        keyOf={({ item }) => item.id}
        current={chosen}
        opened={({ item }) => (item.id === chosen ? panel : null)}
        rolled
      />
    </div>
  );
}
