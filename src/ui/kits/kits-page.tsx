import { useMemo, useState } from "react";
import { useBook } from "../../store/index.ts";
import { useOffer } from "../app/acts.ts";
import { Button, Empty, Page } from "../parts/index.ts";
import { words } from "../words/index.ts";
import { kitsWords } from "../words/kits.ts";
import { KitEntry } from "./kit-entry.tsx";
import styles from "./kits.module.css";
import { LogKit } from "./log-kit.tsx";
import { kitsView } from "./view/kits-list.ts";

const text = kitsWords.list;

/** All logged kits, newest first, with how well the stash would make each one up. */
export function KitsPage() {
  const book = useBook((state) => state.book);
  const [logging, setLogging] = useState(false);
  const view = useMemo(() => kitsView(book), [book]);
  const start = () => setLogging(true);
  useOffer(useMemo(() => [{ name: text.start, run: () => setLogging(true) }], []));
  const none = view.rows.length === 0;
  return (
    <Page
      place={words.places.kits}
      title={text.title}
      lead={none ? undefined : view.lead}
      leadMore={none ? undefined : view.leadMore}
      acts={
        !logging && (
          <Button kind="primary" onClick={start}>
            {text.start}
          </Button>
        )
      }
    >
      {logging && (
        <div className={styles.logging}>
          <LogKit onClose={() => setLogging(false)} />
        </div>
      )}
      {none && !logging && <Empty title={text.empty}>{text.emptyText}</Empty>}
      {!none && (
        <div className={styles.listHead} aria-hidden="true">
          <span>{text.newest}</span>
          <span>{text.could}</span>
        </div>
      )}
      {!none && (
        <ol className={styles.kits}>
          {view.rows.map((row) => (
            <KitEntry key={row.id} row={row} />
          ))}
        </ol>
      )}
    </Page>
  );
}
