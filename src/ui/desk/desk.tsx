import { lazy, Suspense, useMemo } from "react";
import { useBook } from "../../store/index.ts";
import { useOffer } from "../app/acts.ts";
import { today } from "../kits/today.ts";
import { Button, Page, Section } from "../parts/index.ts";
import { deskWords } from "../words/desk.ts";
import { words as common, format } from "../words/index.ts";
import styles from "./desk.module.css";
import { Kept } from "./kept.tsx";
import { MadeUp } from "./made-up.tsx";
import { NextRemake } from "./next-remake.tsx";
import { NextStart } from "./next-start.tsx";
import { isSample, takeOutSample } from "./sample.ts";
import { madeUpView } from "./view/made-up.ts";
import { nextView } from "./view/next.ts";
import { startView } from "./view/start.ts";

// The price sums are most of what the Desk would load, and stand at its foot: they may come a moment later.
const Prices = lazy(() => import("./prices.tsx").then((module) => ({ default: module.Prices })));

const removeSample = { name: deskWords.sample.remove, run: () => void takeOutSample() };

/** What is next, what the stash would make up, prices to look at, and the last copy. */
export function Desk() {
  const book = useBook((state) => state.book);
  const day = today();
  const next = useMemo(() => nextView(book), [book]);
  const madeUp = useMemo(() => madeUpView(book), [book]);
  const sample = isSample(book);
  useOffer(useMemo(() => (sample ? [removeSample] : []), [sample]));
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
        {(book.kits ?? []).length > 0 && (
          <Suspense fallback={<Section title={deskWords.prices.title}>{null}</Section>}>
            <Prices book={book} today={day} />
          </Suspense>
        )}
        <Kept book={book} today={day} />
      </div>
      {sample && (
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
