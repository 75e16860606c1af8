import { useCallback, useState } from "react";
import { type ActHead, acts, useBook } from "../../store/index.ts";
import { redoLast, undoLast } from "../app/do-act.ts";
import { Acts, Button, type Column, Empty, Section, Table } from "../parts/index.ts";
import { format } from "../words/index.ts";
import { keepSafeWords } from "../words/keep-safe.ts";
import styles from "./keep-safe.module.css";
import { useKept } from "./use-kept.ts";
import { onceEach } from "./view/history.ts";
import { momentText } from "./view/moment.ts";

const words = keepSafeWords.history;

const columns: readonly Column<ActHead>[] = [
  { key: "when", head: words.when, cell: ({ at }) => momentText(at, format), width: "28%" },
  {
    key: "what",
    head: words.what,
    names: true,
    cell: ({ label }) => <span className={styles.act}>{label}</span>,
  },
  { key: "how", head: words.what, headHidden: true, follows: true, cell: ({ kind }) => words.kinds[kind] },
];

const pageSize = 20;

/** Every act with its time, newest first; the last one can be taken back, or done again. */
export function History() {
  const [count, setCount] = useState(pageSize);
  const read = useCallback(() => acts(0, count + 1), [count]);
  const kept = useKept(read);
  if (!kept) return null;
  const rows = kept.ok ? onceEach(kept.value.slice(0, count)) : [];
  const hasMore = kept.ok && kept.value.length > count;
  return (
    <Section title={words.title}>
      <UndoRedo />
      {!kept.ok && <p>{words.unread}</p>}
      {kept.ok && rows.length === 0 && <Empty title={words.none}>{words.noneText}</Empty>}
      {rows.length > 0 && (
        <Table caption={words.caption} columns={columns} rows={rows} keyOf={({ id }) => id} />
      )}
      {hasMore && (
        <Button kind="quiet" onClick={() => setCount(count + 2 * pageSize)}>
          {words.more}
        </Button>
      )}
    </Section>
  );
}

function UndoRedo() {
  const undo = useBook((state) => state.past.at(-1)?.label);
  const redo = useBook((state) => state.future.at(-1)?.label);
  if (undo === undefined && redo === undefined) return null;
  return (
    <div className={styles.undoRedo}>
      <Acts>
        {undo !== undefined && <Button onClick={() => void undoLast()}>{words.undo(undo)}</Button>}
        {redo !== undefined && <Button onClick={() => void redoLast()}>{words.redo(redo)}</Button>}
      </Acts>
    </div>
  );
}
