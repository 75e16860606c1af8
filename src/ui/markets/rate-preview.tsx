import { useMemo, useState } from "react";
import type { RateTable } from "../../engine/money/index.ts";
import { addRates, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { Acts, Button, type Column, DateField, Table, Tick } from "../parts/index.ts";
import { format } from "../words/index.ts";
import { marketsWords } from "../words/markets.ts";
import styles from "./markets.module.css";
import { type Kept, keptDays, tableOn } from "./view/rate-file.ts";

const words = marketsWords.file;

type Props = Readonly<{ name: string; tables: readonly RateTable[]; onClose: () => void }>;

/** The days of a file that are worth keeping, each to be ticked off, before anything is kept. */
export function RatePreview({ name, tables, onClose }: Props) {
  const book = useBook((state) => state.book);
  const [wished, setWished] = useState<readonly string[]>([]);
  const [out, setOut] = useState<ReadonlySet<string>>(new Set());
  const days = useMemo(() => keptDays(tables, book, wished), [tables, book, wished]);
  const isKept = ({ row, stands }: Kept) => stands !== "same" && !out.has(row.key);
  const kept = days.filter(isKept);
  const toggle = (key: string, on: boolean) => {
    const next = new Set(out);
    if (on) next.delete(key);
    else next.add(key);
    setOut(next);
  };
  const keep = async () => {
    const changes = kept.flatMap(({ row }) => addRates(row.table).changes);
    if (await doAct({ label: words.label(kept.length), changes })) onClose();
  };
  return (
    <div className={styles.preview}>
      <p>{words.preview(name, tables.length)}</p>
      <Table
        caption={words.preview(name, tables.length)}
        columns={columnsFor(isKept, toggle)}
        rows={days}
        keyOf={({ row }) => row.key}
      />
      <AnotherDay tables={tables} onWish={(day) => setWished([...wished, day])} />
      <Acts>
        <Button kind="primary" notNow={kept.length === 0 && words.nothing} onClick={() => void keep()}>
          {words.verb(kept.length)}
        </Button>
        <Button onClick={onClose}>{words.drop}</Button>
      </Acts>
    </div>
  );
}

const why = ({ why: reasons, stands }: Kept): string =>
  [reasons, ...(stands === "other" ? [words.replaces] : [])].join(", ");

const columnsFor = (
  isKept: (day: Kept) => boolean,
  toggle: (key: string, on: boolean) => void,
): readonly Column<Kept>[] => [
  {
    key: "keep",
    head: words.keep,
    names: true,
    width: "24%",
    cell: (day) =>
      day.stands === "same" ? (
        <>
          {day.row.date} <span className={styles.fact}>{words.same}</span>
        </>
      ) : (
        <Tick label={day.row.date} value={isKept(day)} onValue={(on) => toggle(day.row.key, on)} />
      ),
  },
  { key: "quotes", head: marketsWords.rates.quotes, cell: ({ row }) => row.quotes },
  { key: "why", head: words.why, headHidden: true, follows: true, stacked: "alone", cell: why },
];

type AnotherProps = Readonly<{ tables: readonly RateTable[]; onWish: (day: string) => void }>;

function AnotherDay({ tables, onWish }: AnotherProps) {
  const [missing, setMissing] = useState<string | null>(null);
  const wish = (day: string | null) => {
    if (day === null) return;
    const found = tableOn(tables, day);
    setMissing(found ? null : day);
    if (found) onWish(day);
  };
  return (
    <div className={styles.day}>
      <DateField
        label={words.other}
        value={null}
        onValue={wish}
        fault={missing === null ? undefined : words.otherNone(format.date(missing))}
      />
    </div>
  );
}
