import { useMemo } from "react";
import { type Column, Section, Table, Tick } from "../../parts/index.ts";
import { importWords as words } from "../../words/import.ts";
import { format } from "../../words/index.ts";
import { Thing } from "./first-rows.tsx";
import styles from "./import.module.css";
import { type Bring, headsOf, type Reading } from "./use-bring.ts";
import { type RowView, rowView } from "./view/rows.ts";

type Props = Readonly<{ bring: Bring; reading: Reading }>;

const lines = (texts: readonly string[]) => (
  <>
    {texts.map((text) => (
      <span key={text} className={styles.doubt}>
        {text}
      </span>
    ))}
  </>
);

const rowColumn: Column<RowView> = { key: "row", head: words.row, width: "4.5rem", cell: ({ row }) => row };
const thingColumn: Column<RowView> = {
  key: "thing",
  head: words.thing,
  names: true,
  width: "40%",
  cell: (row) => <Thing row={{ ...row, reason: null }} />,
};

/** Rows with something doubtful in them, each to be kept or taken out. */
export function ToLookAt({ bring, reading }: Props) {
  const { summary, out } = reading;
  const heads = headsOf(reading);
  const rows = useMemo(() => (summary?.toLookAt ?? []).map((row) => rowView(row, heads)), [summary, heads]);
  if (rows.length === 0) return null;
  const toggle = (at: number, keep: boolean) => {
    const next = new Set(out);
    if (keep) next.delete(at);
    else next.add(at);
    bring.leaveOut(reading, next);
  };
  const more = (summary?.doubtful ?? 0) - rows.length;
  return (
    <Section title={words.toLookAt}>
      <p className={styles.fact}>{words.toLookAtText}</p>
      <Table
        caption={words.toLookAt}
        columns={[
          rowColumn,
          thingColumn,
          { key: "why", head: words.why, stacked: "alone", cell: ({ doubts }) => lines(doubts) },
          {
            key: "keep",
            head: words.keep,
            headHidden: true,
            stacked: "alone",
            cell: ({ at, row, name }) => (
              <Tick
                label={
                  <>
                    {words.keep}
                    <span className="visually-hidden">: {words.keepNamed(name, row)}</span>
                  </>
                }
                value={!out.has(at)}
                onValue={(keep) => toggle(at, keep)}
              />
            ),
          },
        ]}
        rows={rows}
        keyOf={({ key }) => key}
      />
      {more > 0 && <p className={styles.fact}>{words.moreToLookAt(format.count(more))}</p>}
    </Section>
  );
}

/** Rows that are not added, each with the reason. */
export function NotAdded({ reading }: Readonly<{ reading: Reading }>) {
  const { summary } = reading;
  const heads = headsOf(reading);
  const rows = useMemo(() => (summary?.notAdded ?? []).map((row) => rowView(row, heads)), [summary, heads]);
  if (!summary || rows.length === 0) return null;
  const more = summary.here + summary.refused - rows.length;
  return (
    <Section title={words.notAdded}>
      <Table
        caption={words.notAdded}
        columns={[
          rowColumn,
          thingColumn,
          { key: "reason", head: words.reason, stacked: "alone", cell: ({ reason }) => reason },
        ]}
        rows={rows}
        keyOf={({ key }) => key}
      />
      {more > 0 && <p className={styles.fact}>{words.more(format.count(more))}</p>}
    </Section>
  );
}
