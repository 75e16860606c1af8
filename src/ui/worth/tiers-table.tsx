import { useId, useMemo, useState } from "react";
import { Button, ButtonLink, type Column, Empty, Section, Table, WhyButton } from "../parts/index.ts";
import { isCompact } from "../parts/room.ts";
import { useRoom } from "../parts/use-room.ts";
import { worthWords } from "../words/worth.ts";
import { copyTable } from "./copy.ts";
import { Making } from "./making.tsx";
import { shareText } from "./view/beside.ts";
import { copiedTiers } from "./view/copied.ts";
import type { Scene } from "./view/scene.ts";
import { type Gain, type TierRow, tierRows } from "./view/tiers.ts";
import styles from "./worth.module.css";

const words = worthWords.tiers;

/** What each tier costs, what it brings by each way of counting, and how its cost came about. */
export function TiersTable({ scene }: Readonly<{ scene: Scene }>) {
  const rows = useMemo(() => tierRows(scene), [scene]);
  if (rows.length === 0) return <NoTiers scene={scene} />;
  return (
    <Section
      title={words.title}
      note={shareText(scene)}
      act={
        <Button kind="quiet" onClick={() => void copyTable(copiedTiers(scene))}>
          {worthWords.copy.act}
        </Button>
      }
    >
      <Rows rows={rows} market={scene.market.name} />
    </Section>
  );
}

function Rows({ rows, market }: Readonly<{ rows: readonly TierRow[]; market: string }>) {
  const id = useId();
  const [ref, room] = useRoom();
  const compact = isCompact(room);
  const [open, setOpen] = useState<string | null>(null);
  const whyOf = (row: TierRow) => ({
    open: row.id === open,
    panelId: `${id}-${row.id}`,
    toggle: () => setOpen(row.id === open ? null : row.id),
  });
  const columns: readonly Column<TierRow>[] = [
    { key: "tier", head: words.tier, names: true, cell: (row) => <Named row={row} />, width: "21%" },
    { key: "goods", head: words.goods, align: "end", cell: (row) => row.goods },
    { key: "postage", head: words.postage, align: "end", cell: (row) => row.postage },
    { key: "border", head: words.border, align: "end", cell: (row) => row.border },
    {
      key: "cost",
      head: words.cost,
      align: "end",
      cell: (row) => (
        <span className={styles.pile}>
          <strong>{row.cost}</strong>
          <span className={styles.under}>
            <WhyButton why={whyOf(row)} about={worthWords.making.about(row.name)} />
          </span>
        </span>
      ),
    },
    { key: "list", head: words.list, align: "end", cell: ({ list }) => <GainText gain={list} /> },
    { key: "shop", head: words.shop, align: "end", cell: ({ street }) => <GainText gain={street} /> },
    { key: "wanted", head: words.wanted, align: "end", cell: ({ wanted }) => <GainText gain={wanted} /> },
  ];
  // What a cost is made of stands behind its why?, so that is what a narrow table does without.
  const parts = ["goods", "postage", "border"];
  const shown = compact ? columns.filter(({ key }) => !parts.includes(key)) : columns;
  return (
    <div ref={ref}>
      <Table
        caption={words.caption(market)}
        columns={shown}
        rows={rows}
        keyOf={(row) => row.id}
        opened={(row) =>
          row.id === open && (
            <div id={whyOf(row).panelId}>
              <Making making={row.making} title={worthWords.making.title(row.name)} />
            </div>
          )
        }
      />
    </div>
  );
}

const Named = ({ row }: Readonly<{ row: TierRow }>) => (
  <>
    {row.name}
    {row.fact !== "" && <span className={styles.fact}>{row.fact}</span>}
  </>
);

/** The amount, and under it whether it pays: told apart by weight, slant and line, not by colour. */
const GainText = ({ gain }: Readonly<{ gain: Gain }>) => (
  <span className={styles.pile}>
    <span>{gain.amount}</span>
    <span className={styles.under}>
      <span className={styles[gain.verdict]}>{gain.word}</span>
    </span>
  </span>
);

function NoTiers({ scene }: Readonly<{ scene: Scene }>) {
  const { kit, market } = scene;
  const any = (kit.tiers ?? []).length > 0;
  return (
    <Section title={words.title}>
      <Empty
        title={any ? words.nowhere(market.name) : words.empty}
        act={<ButtonLink to={{ name: "kit", id: kit.id, tab: "contents" }}>{words.toContents}</ButtonLink>}
      >
        {any ? words.nowhereText : words.emptyText}
      </Empty>
    </Section>
  );
}
