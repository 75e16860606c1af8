import type { Kit } from "../../../engine/worth/index.ts";
import { Button, type Column, MoneyText, Table } from "../../parts/index.ts";
import { Swatch } from "../../swatch/index.ts";
import { kitsWords } from "../../words/kits.ts";
import type { Figure, MarketPrices, PriceRow } from "../view/prices.ts";
import { LinePrices } from "./line-prices.tsx";
import styles from "./prices.module.css";

const text = kitsWords.prices;

type Props = Readonly<{
  kit: Kit;
  here: MarketPrices;
  all: readonly MarketPrices[];
  rows: readonly PriceRow[];
  open: string | null;
  onOpen: (line: string | null) => void;
  /** Whether the field for a price takes the focus in the line that is open. */
  writes: boolean;
  /** The line to go on to. */
  next: PriceRow | null;
  onNext: (line: string) => void;
}>;

/** Every line with its list and shop figure in one market; those without one first. */
export function PriceTable({ kit, here, all, rows, open, onOpen, ...rest }: Props) {
  return (
    <Table
      caption={text.table(here.market.name)}
      columns={columnsFor(kit, open, onOpen, rest.onNext)}
      rows={rows}
      keyOf={(row) => row.line.id}
      opened={(row) =>
        row.line.id === open && <LinePrices kit={kit} line={row.line} here={here} all={all} {...rest} />
      }
    />
  );
}

const columnsFor = (
  kit: Kit,
  open: string | null,
  onOpen: Props["onOpen"],
  onWrite: Props["onNext"],
): readonly Column<PriceRow>[] => [
  {
    key: "item",
    head: text.item,
    names: true,
    width: "34%",
    cell: (row) => (
      <span className={styles.item}>
        <span className={styles.number}>
          <span aria-hidden="true">{row.number}</span>
          <span className="visually-hidden">{text.numbered(row.number)} </span>
        </span>
        <Swatch item={{ id: `${kit.id}/${row.line.id}`, supply: row.line.supply }} width={56} height={30} />
        <span className={styles.itemWords}>
          {row.name} <span className={styles.facts}>{row.facts}</span>
        </span>
      </span>
    ),
  },
  {
    key: "list",
    head: text.list,
    align: "end",
    cell: (row) => <Amount figure={row.list} of={text.listOf} {...{ row, onWrite }} />,
  },
  { key: "listHow", head: text.how, follows: true, cell: (row) => row.list?.how ?? "" },
  {
    key: "shop",
    head: text.shop,
    align: "end",
    cell: (row) => <Amount figure={row.shop} of={text.shopOf} {...{ row, onWrite }} />,
  },
  { key: "shopHow", head: text.how, follows: true, cell: (row) => row.shop?.how ?? "" },
  {
    key: "open",
    head: <span className="visually-hidden">{text.found}</span>,
    align: "end",
    stacked: "alone",
    cell: ({ line, name }) => {
      const isOpen = line.id === open;
      return (
        <Button kind="quiet" aria-expanded={isOpen} onClick={() => onOpen(isOpen ? null : line.id)}>
          {isOpen ? text.close : text.open}
          <span className="visually-hidden">{kitsWords.contents.about(name)}</span>
        </Button>
      );
    },
  },
];

type AmountProps = Readonly<{
  figure: Figure | null;
  /** Which of the two figures it is, in words. */
  of: string;
  row: PriceRow;
  onWrite: Props["onNext"];
}>;

/** A figure; where there is none, what opens the field for it. */
function Amount({ figure, of, row, onWrite }: AmountProps) {
  if (!figure && row.waits) return <em className={styles.without}>{row.without}</em>;
  if (!figure) {
    return (
      <Button
        kind="quiet"
        className={styles.without ?? ""}
        aria-label={`${row.without}: ${of}${kitsWords.contents.about(row.name)}`}
        onClick={() => onWrite(row.line.id)}
      >
        {row.without}
      </Button>
    );
  }
  return (
    <>
      <MoneyText money={figure.likely} bare />
      {figure.range && <span className={styles.range}>{figure.range}</span>}
    </>
  );
}
