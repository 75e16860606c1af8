import { restoreSnapshot, type Snapshot, snapshots } from "../../store/index.ts";
import { Button, type Column, Empty, Section, Table } from "../parts/index.ts";
import { format } from "../words/index.ts";
import { keepSafeWords } from "../words/keep-safe.ts";
import styles from "./keep-safe.module.css";
import { tell } from "./replace.ts";
import { useKept } from "./use-kept.ts";
import { momentText } from "./view/moment.ts";

const words = keepSafeWords.snapshots;

const goBack = async (snapshot: Snapshot): Promise<void> =>
  tell(await restoreSnapshot(snapshot), words.done(snapshot.label));

const columns: readonly Column<Snapshot>[] = [
  { key: "when", head: words.when, cell: ({ at }) => momentText(at, format) },
  { key: "before", head: words.before, names: true, cell: ({ label }) => label },
  { key: "records", head: words.records, align: "end", cell: ({ records }) => format.count(records) },
  {
    key: "act",
    head: words.act,
    headHidden: true,
    stacked: "alone",
    cell: (snapshot) => (
      <Button kind="quiet" onClick={() => void goBack(snapshot)}>
        {words.act}
        <span className="visually-hidden">{words.about(snapshot.label)}</span>
      </Button>
    ),
  },
];

/** Whole notebooks set aside before large acts, and the way back to each. */
export function Snapshots() {
  const kept = useKept(snapshots);
  if (!kept) return null;
  const rows = kept.ok ? kept.value : [];
  return (
    <Section title={words.title}>
      {rows.length === 0 ? (
        <Empty title={words.none}>{words.noneText}</Empty>
      ) : (
        <>
          <p className={styles.text}>{words.text}</p>
          <Table caption={words.caption} columns={columns} rows={rows} keyOf={({ id }) => String(id)} />
        </>
      )}
    </Section>
  );
}
