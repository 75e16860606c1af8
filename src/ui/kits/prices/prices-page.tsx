import { useMemo, useState } from "react";
import type { Kit } from "../../../engine/worth/index.ts";
import { editKit, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { useAddressValue, withAddressValue } from "../../app/navigate.ts";
import { AskMarket } from "../../markets/asked-in-place.tsx";
import { ButtonLink, DateField, Empty, Tabs } from "../../parts/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { KitFrame } from "../kit-frame.tsx";
import { nextWithout, type PriceRow, pricesView, sumUpPrices } from "../view/prices.ts";
import { MissingRates } from "./missing-rates.tsx";
import { PriceTable } from "./price-table.tsx";
import styles from "./prices.module.css";

const text = kitsWords.prices;

/** What each line costs in each market that is reported on, and how that is known. */
export function PricesPage({ kit }: Readonly<{ kit: Kit }>) {
  const book = useBook((state) => state.book);
  const all = useMemo(() => pricesView(book, kit), [book, kit]);
  const [wanted] = useAddressValue("market");
  const [open, setOpen] = useState<string | null>(null);
  const [writes, setWrites] = useState(false);
  const [order, setOrder] = useState<readonly string[]>([]);
  const here = all.find(({ market }) => market.id === wanted) ?? all[0];
  const hasLines = (kit.lines ?? []).length > 0;
  if (!here || !hasLines || !kit.valuedOn) return <NotReady kit={kit} hasLines={hasLines} />;
  const sum = sumUpPrices(all, here.market.id);
  // A line that has just found its price stays where it is for as long as one is open.
  const openLine = (line: string | null) => {
    setOrder(line === null ? [] : rows.map((row) => row.line.id));
    setOpen(line);
    setWrites(false);
  };
  /** From line to line: the field for the next price is at hand at once. */
  const goOn = (line: string) => {
    openLine(line);
    setWrites(true);
  };
  const place = (row: PriceRow) => order.indexOf(row.line.id);
  const rows = here.sorted.toSorted((a, b) => place(a) - place(b));
  return (
    <KitFrame kit={kit} tab="prices" lead={sum.lead} leadMore={sum.leadMore}>
      <div className={styles.markets}>
        <Tabs
          kind="view"
          label={text.marketsLabel}
          tabs={all.map(({ market }) => ({
            label: market.name,
            more: market.currency,
            to: withAddressValue("market", market.id),
            current: market.id === here.market.id,
          }))}
        />
      </div>
      <MissingRates faults={here.faults} day={kit.valuedOn} />
      <h2 className="visually-hidden">{text.table(here.market.name)}</h2>
      {here.missing > 0 && here.missing < here.rows.length && (
        <p className={styles.fact}>{text.unpricedFirst}</p>
      )}
      <PriceTable
        {...{ kit, here, all, rows, open, writes }}
        onOpen={openLine}
        next={nextWithout(rows, open)}
        onNext={goOn}
      />
    </KitFrame>
  );
}

/** What is needed before anything can be priced: lines, a market, a day. One at a time. */
function NotReady({ kit, hasLines }: Readonly<{ kit: Kit; hasLines: boolean }>) {
  const needsDay = hasLines && !kit.valuedOn;
  return (
    <KitFrame kit={kit} tab="prices">
      <div className={styles.notReady}>
        {needsDay && (
          <Empty title={text.noDay}>
            <p>{text.noDayText}</p>
            <div className={styles.day}>
              <DateField
                label={kitsWords.about.valuedOn}
                value={null}
                onValue={(day) => day && void doAct(editKit(kit, ["valuedOn"], day), null)}
              />
            </div>
          </Empty>
        )}
        {!hasLines && (
          <Empty
            title={text.noLines}
            act={<ButtonLink to={{ name: "kit", id: kit.id, tab: "contents" }}>{text.toContents}</ButtonLink>}
          >
            {text.noLinesText}
          </Empty>
        )}
        {hasLines && !needsDay && (
          <Empty title={text.noMarkets} act={<AskMarket />}>
            {text.noMarketsText}
          </Empty>
        )}
      </div>
    </KitFrame>
  );
}
