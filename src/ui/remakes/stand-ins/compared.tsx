import { type Column, Table } from "../../parts/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import type { ComparedRow, OpenedView } from "../view/opened.ts";
import styles from "./opened-row.module.css";

const words = remakeWords.standIns.compared;

const columns: readonly Column<ComparedRow>[] = [
  { key: "what", head: words.what, names: true, cell: ({ what }) => what },
  { key: "kit", head: words.kit, cell: ({ kit }) => kit },
  { key: "mine", head: words.mine, cell: ({ mine }) => mine },
  { key: "alike", head: words.alike, align: "end", cell: ({ alike }) => alike },
  { key: "counts", head: words.counts, align: "end", cell: ({ counts }) => counts },
];

/** What was compared, trait by trait, and the sum in one sentence. */
export function Compared({ view }: Readonly<{ view: OpenedView }>) {
  return (
    <div className={styles.compared}>
      {view.isNearest && <p>{words.nearest(view.about)}</p>}
      {view.compared.length > 0 && (
        <Table
          caption={words.caption(view.about)}
          columns={columns}
          rows={view.compared}
          keyOf={({ key }) => key}
        />
      )}
      <p className={styles.sum}>{view.sum}</p>
    </div>
  );
}
