import { useMemo } from "react";
import { useBook } from "../../store/index.ts";
import { today } from "../kits/today.ts";
import { Button, Page } from "../parts/index.ts";
import { deskWords } from "../words/desk.ts";
import { words as common, format } from "../words/index.ts";
import styles from "./desk.module.css";
import { FirstRun } from "./first-run.tsx";
import { Kept } from "./kept.tsx";
import { MadeUp } from "./made-up.tsx";
import { NextRemake } from "./next-remake.tsx";
import { NextStart } from "./next-start.tsx";
import { Prices } from "./prices.tsx";
import { isSample, takeOutSample } from "./sample.ts";
import { madeUpView } from "./view/made-up.ts";
import { nextView } from "./view/next.ts";
import { startView } from "./view/start.ts";

/** What is next; or, of an empty notebook, how to begin. */
export function DeskScreen() {
  const empty = useBook((state) => state.empty);
  return empty ? <FirstRun /> : <Desk />;
}

function Desk() {
  const book = useBook((state) => state.book);
  const day = today();
  const next = useMemo(() => nextView(book), [book]);
  const madeUp = useMemo(() => madeUpView(book), [book]);
  const start = next ? null : startView(book, madeUp);
  return (
    <Page
      place={common.places.desk}
      title={next?.title ?? start?.title ?? common.places.desk}
      margin={<p>{format.longDate(day)}</p>}
      note={next?.prompts.map((text) => <p key={text}>{text}</p>)}
      lead={start?.lead}
    >
      {next && <NextRemake next={next} />}
      {start && <NextStart start={start} />}
      {madeUp.rows.length > 0 && (book.stash ?? []).length > 0 && <MadeUp view={madeUp} />}
      <div className={styles.pair}>
        {(book.kits ?? []).length > 0 && <Prices book={book} today={day} />}
        <Kept book={book} today={day} />
      </div>
      {isSample(book) && (
        <p className={styles.sample}>
          {deskWords.sample.note}{" "}
          <Button kind="quiet" onClick={() => void takeOutSample()}>
            {deskWords.sample.remove}
          </Button>
        </p>
      )}
    </Page>
  );
}
