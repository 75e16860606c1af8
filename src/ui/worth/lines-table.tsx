import { type ReactNode, useId, useMemo, useState } from "react";
import { Button, ButtonLink, type Column, classes, Section, Table } from "../parts/index.ts";
import { isCompact } from "../parts/room.ts";
import { useRoom } from "../parts/use-room.ts";
import { Swatch } from "../swatch/index.ts";
import { words as common } from "../words/index.ts";
import { worthWords } from "../words/worth.ts";
import { copyTable } from "./copy.ts";
import { copiedLines } from "./view/copied.ts";
import { type LinePrice, type LineRow, lineRows, lineTotals } from "./view/lines.ts";
import type { Scene } from "./view/scene.ts";
import styles from "./worth.module.css";

const words = worthWords.lines;

type Side = "list" | "shop";
type Open = Readonly<{ line: string; side: Side }> | null;

/** Every line with its list and shop price, how each was found, and how much of it would be used. */
export function LinesTable({ scene }: Readonly<{ scene: Scene }>) {
  const id = useId();
  const [ref, room] = useRoom();
  const compact = isCompact(room);
  const rows = useMemo(() => lineRows(scene), [scene]);
  const total = useMemo(() => lineTotals(scene), [scene]);
  const [open, setOpen] = useState<Open>(null);
  const isOpen = (row: LineRow, side: Side) => open?.line === row.id && open.side === side;

  const how = (row: LineRow, side: Side) => (
    <HowButton
      price={row[side]}
      about={side === "list" ? words.listOf(row.name) : words.shopOf(row.name)}
      open={isOpen(row, side)}
      panelId={`${id}-${row.id}`}
      onToggle={() => setOpen(isOpen(row, side) ? null : { line: row.id, side })}
    />
  );
  const columns: readonly Column<LineRow>[] = [
    {
      key: "number",
      head: words.number,
      headHidden: true,
      stacked: "hide",
      cell: (row) => <Numbered row={row} />,
    },
    { key: "item", head: words.item, names: true, cell: (row) => <Named row={row} />, width: "27%" },
    {
      key: "list",
      head: words.list,
      align: "end",
      cell: (row) => <Price price={row.list} how={how(row, "list")} />,
    },
    { key: "listHow", head: words.how, stacked: "hide", follows: true, cell: (row) => how(row, "list") },
    {
      key: "shop",
      head: words.shop,
      align: "end",
      cell: (row) => <Price price={row.shop} how={how(row, "shop")} />,
    },
    { key: "shopHow", head: words.how, stacked: "hide", follows: true, cell: (row) => how(row, "shop") },
    { key: "wanted", head: words.wanted, align: "end", cell: (row) => row.wanted },
  ];
  return (
    <Section title={words.title} act={<Acts scene={scene} />}>
      <div ref={ref} className={classes(compact && styles.compact)}>
        <Table
          caption={words.caption(scene.market.name)}
          columns={compact ? columns.filter(({ key }) => !key.endsWith("How")) : columns}
          rows={rows}
          keyOf={(row) => row.id}
          total={{ item: words.together, list: total.list, shop: total.shop, wanted: total.wanted }}
          opened={(row) =>
            open?.line === row.id && (
              <div id={`${id}-${row.id}`}>
                <Found row={row} price={row[open.side]} kit={scene.kit.id} />
              </div>
            )
          }
        />
      </div>
    </Section>
  );
}

const Acts = ({ scene }: Readonly<{ scene: Scene }>) => (
  <span className={styles.sectionAct}>
    <span>{scene.worth.currency}</span>
    <Button kind="quiet" onClick={() => void copyTable(copiedLines(scene))}>
      {worthWords.copy.act}
    </Button>
  </span>
);

const Numbered = ({ row }: Readonly<{ row: LineRow }>) => (
  <span className={styles.numbered}>
    <span className={styles.number}>{row.number}</span>
    <Swatch item={row.item} width={56} height={28} />
  </span>
);

const Named = ({ row }: Readonly<{ row: LineRow }>) => (
  <span className={styles.named}>
    <span className={styles.stackedSwatch}>
      <Swatch item={row.item} width={56} height={28} />
    </span>
    <span>{row.name}</span>
  </span>
);

/** The amount; where the table is stacked, with how it was found beside it instead of in a column of its own. */
const Price = ({ price, how }: Readonly<{ price: LinePrice; how: ReactNode }>) => (
  <span className={styles.pile}>
    {price.amount === null ? (
      <span className={styles.noPrice}>{words.noPrice}</span>
    ) : (
      <span>{price.amount}</span>
    )}
    {price.range && <span className={styles.under}>{price.range}</span>}
    <span className={styles.stackedHow}>{how}</span>
  </span>
);

type HowProps = Readonly<{
  price: LinePrice;
  about: string;
  open: boolean;
  panelId: string;
  onToggle: () => void;
}>;

function HowButton({ price, about, open, panelId, onToggle }: HowProps) {
  return (
    <Button
      kind="quiet"
      className={classes(styles.howButton)}
      aria-expanded={open}
      aria-controls={panelId}
      onClick={onToggle}
    >
      {open ? words.close : (price.how ?? common.why)}
      <span className="visually-hidden">{common.about(about)}</span>
    </Button>
  );
}

/** How one figure came about, the other ways to one, and every price found for the line. */
function Found({ row, price, kit }: Readonly<{ row: LineRow; price: LinePrice; kit: string }>) {
  return (
    <div className={styles.found}>
      {price.sentence && <p>{price.sentence}</p>}
      {price.others.length > 0 && <Listed title={words.other} texts={price.others} />}
      {row.found.length > 0 ? <Listed title={words.found} texts={row.found} /> : <p>{words.noneFound}</p>}
      <ButtonLink kind="quiet" to={{ name: "kit", id: kit, tab: "prices" }}>
        {words.toPrices}
      </ButtonLink>
    </div>
  );
}

const Listed = ({ title, texts }: Readonly<{ title: string; texts: readonly string[] }>) => (
  <div>
    <h3 className={styles.listTitle}>{title}</h3>
    <ul className={styles.list}>
      {texts.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  </div>
);
