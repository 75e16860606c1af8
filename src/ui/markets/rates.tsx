import { type MouseEvent, useMemo, useState } from "react";
import { removeRates, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { useAdding } from "../app/use-adding.ts";
import { Band } from "../kits/band.tsx";
import { thenToHeading } from "../kits/focus-heading.ts";
import { today } from "../kits/today.ts";
import { Button, type Column, Empty, Section, Table } from "../parts/index.ts";
import { usePrinting } from "../parts/use-printing.ts";
import { actWords } from "../words/acts.ts";
import { marketsWords } from "../words/markets.ts";
import styles from "./markets.module.css";
import { NewRates } from "./new-rates.tsx";
import { RateFile } from "./rate-file.tsx";
import { kitNotices, oddRates, type RateRow, rateRows } from "./view/rates.ts";

const words = marketsWords.rates;

const shownAtOnce = 12;

/** Days of exchange rates: what is here, what is odd or missing, and the ways to put more in. */
export function Rates() {
  const book = useBook((state) => state.book);
  const rows = useMemo(() => rateRows(book), [book]);
  const notices = useMemo(() => [...kitNotices(book), ...oddRates(book, today())], [book]);
  const adding = useAdding(actWords.addRates);
  const add = (
    <Button kind="quiet" onClick={adding.open} ref={adding.button}>
      {words.add}
    </Button>
  );
  return (
    <Section title={words.title} act={adding.asked === 0 && add}>
      <p className={styles.text}>{words.text}</p>
      {notices.length > 0 && <Notices texts={notices} />}
      {adding.asked > 0 && (
        <Band>
          <NewRates asked={adding.asked} onClose={adding.close} />
        </Band>
      )}
      {rows.length === 0 && adding.asked === 0 ? (
        <Empty title={words.empty}>{words.emptyText}</Empty>
      ) : (
        <Days rows={rows} />
      )}
      <RateFile />
    </Section>
  );
}

const Notices = ({ texts }: Readonly<{ texts: readonly string[] }>) => (
  <div className={styles.notices}>
    <h3>{words.odd}</h3>
    <ul>
      {texts.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  </div>
);

const remove = (row: RateRow, event: MouseEvent<HTMLElement>): Promise<void> =>
  thenToHeading(event.currentTarget, () => doAct(removeRates(row.table), words.removed(row.date)));

const columns: readonly Column<RateRow>[] = [
  { key: "date", head: words.date, names: true, cell: ({ date }) => date, width: "16%" },
  { key: "base", head: words.base, cell: ({ base }) => base, width: "9%" },
  { key: "quotes", head: words.quotes, cell: ({ quotes }) => quotes },
  { key: "source", head: words.source, follows: true, cell: ({ source }) => source },
  {
    key: "remove",
    head: marketsWords.remove,
    headHidden: true,
    align: "end",
    stacked: "alone",
    cell: (row) => (
      <Button kind="quiet" onClick={(event) => void remove(row, event)}>
        {marketsWords.remove}
        <span className="visually-hidden">{words.removeAbout(row.date)}</span>
      </Button>
    ),
  },
];

function Days({ rows }: Readonly<{ rows: readonly RateRow[] }>) {
  const [all, setAll] = useState(false);
  const printing = usePrinting();
  if (rows.length === 0) return null;
  const shown = all || printing ? rows : rows.slice(0, shownAtOnce);
  return (
    <>
      <Table caption={words.caption} columns={columns} rows={shown} keyOf={({ key }) => key} />
      {shown.length < rows.length && (
        <Button kind="quiet" onClick={() => setAll(true)}>
          {words.showAll(rows.length)}
        </Button>
      )}
    </>
  );
}
