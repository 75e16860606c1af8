import { useCallback, useMemo, useState } from "react";
import { useBook } from "../../store/index.ts";
import { useOffer } from "../app/acts.ts";
import { useAddressValue } from "../app/navigate.ts";
import { Button, Empty, Page } from "../parts/index.ts";
import { useFocusBack } from "../parts/use-focus.ts";
import { actWords } from "../words/acts.ts";
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
  const view = useMemo(() => kitsView(book), [book]);
  const none = view.rows.length === 0;
  const [from] = useAddressValue("from");
  const [logging, setLogging] = useState(none || from !== null);
  const [asked, setAsked] = useState(0);
  const startButton = useFocusBack(logging);
  const start = useCallback(() => {
    setAsked((before) => before + 1);
    setLogging(true);
  }, []);
  useOffer(useMemo(() => [{ name: actWords.logKit, run: start }], [start]));
  return (
    <Page
      place={words.places.kits}
      title={text.title}
      lead={none ? undefined : view.lead}
      leadMore={none ? undefined : view.leadMore}
      acts={
        !logging && (
          <Button kind="primary" onClick={start} ref={startButton}>
            {text.start}
          </Button>
        )
      }
    >
      {logging && (
        <div className={styles.logging}>
          <LogKit asked={asked} from={from} onClose={() => setLogging(false)} />
        </div>
      )}
      {none && (
        <div className={styles.noKits}>
          <Empty title={text.empty}>{text.emptyText}</Empty>
        </div>
      )}
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
