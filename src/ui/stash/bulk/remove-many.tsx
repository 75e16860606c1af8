import { useMemo } from "react";
import type { StashItem } from "../../../engine/supply/index.ts";
import { removeStashItems, useBook } from "../../../store/index.ts";
import { doLargeAct } from "../../app/do-act.ts";
import { Button, Dialog } from "../../parts/index.ts";
import { bulkWords as words } from "../../words/bulk.ts";
import { format } from "../../words/index.ts";
import { chooseNone } from "../choosing.ts";
import { leansOn } from "../view/leans-on.ts";
import styles from "./bulk.module.css";

type Props = Readonly<{ items: readonly StashItem[]; onClose: () => void }>;

/** How many are named before the rest is only counted. */
const named = 8;

/** What would go, named, with what leans on it; then removed as one act, with a snapshot of what was before. */
export function RemoveMany({ items, onClose }: Props) {
  const book = useBook((state) => state.book);
  const leaning = useMemo(() => leansOn(book, new Set(items.map(({ id }) => id))), [book, items]);
  const count = format.count(items.length);
  const remove = () => {
    onClose();
    void doLargeAct(removeStashItems(useBook.getState().book, items)).then((kept) => kept && chooseNone());
  };
  return (
    <Dialog
      open
      title={words.removeTitle(count)}
      onClose={onClose}
      acts={
        <>
          <Button kind="primary" onClick={remove}>
            {words.removeAct(count)}
          </Button>
          <Button onClick={onClose}>{words.keep}</Button>
        </>
      }
    >
      <ul className={styles.names}>
        {items.slice(0, named).map(({ id, supply }) => (
          <li key={id}>{[supply.name, supply.maker].filter(Boolean).join(", ")}</li>
        ))}
      </ul>
      {items.length > named && <p>{words.andMore(format.count(items.length - named))}</p>}
      {leaning.remakes > 0 && <p>{words.inRemakes(leaning.remakes)}</p>}
      {leaning.twins > 0 && <p>{words.twinsOf(leaning.twins)}</p>}
      <p>{words.canUndo}</p>
    </Dialog>
  );
}
