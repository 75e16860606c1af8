import type { ReactNode } from "react";
import { lazy, Suspense, useCallback, useMemo, useState } from "react";
import { type LastKnown, useBook } from "../../store/index.ts";
import { useOffer } from "../app/acts.ts";
import { otherLanguages, speak } from "../app/languages.ts";
import { Button, ButtonLink, Page, Section } from "../parts/index.ts";
import { actWords } from "../words/acts.ts";
import { deskWords } from "../words/desk.ts";
import { words as common, format } from "../words/index.ts";
import styles from "./first-run.module.css";
import { trySample } from "./sample.ts";

const words = deskWords.first;

// Reading a copy takes every check of a workbook, which the first page can do without.
const RestorePick = lazy(() =>
  import("../keep-safe/restore.tsx").then((module) => ({ default: module.RestorePick })),
);

type BringBackProps = Readonly<{ label: string; kind?: "primary" }>;

/** Until it can be chosen, the button stands there all the same: nothing moves when it can. */
const BringBack = (props: BringBackProps) => (
  <Suspense fallback={<Button {...props}>{props.label}</Button>}>
    <RestorePick {...props} />
  </Suspense>
);

/** A notebook with nothing in it: where its data lives, and the ways to begin. */
export function FirstRun() {
  const lasting = useBook((state) => state.lasting);
  const lastKnown = useBook((state) => state.lastKnown);
  if (lastKnown) return <Emptied known={lastKnown} />;
  return (
    <Page
      place={common.places.desk}
      title={words.title}
      lead={lasting ? words.lead : words.leadGone}
      leadMore={lasting ? words.leadMore : words.leadGoneMore}
      margin={<Languages />}
    >
      <p className={styles.what}>{words.what}</p>
      <Section title={<span className="visually-hidden">{words.waysTitle}</span>}>
        <Ways main="sample" />
      </Section>
    </Page>
  );
}

/** The same in the other languages, each offered in its own words. */
const Languages = () =>
  otherLanguages.map(({ code, offer }) => (
    <Button key={code} kind="quiet" lang={code} onClick={() => speak(code)}>
      {offer}
    </Button>
  ));

/** The browser has cleared what was here: bringing it back comes before beginning anew. */
function Emptied({ known }: Readonly<{ known: LastKnown }>) {
  const text = deskWords.emptied;
  return (
    <Page
      place={common.places.desk}
      title={text.title}
      lead={text.lead(known.stash, known.kits, format.date(known.at.slice(0, 10)))}
      leadMore={text.leadMore}
    >
      <div className={styles.back}>
        <BringBack label={text.act} kind="primary" />
      </div>
      <Section title={text.anew}>
        <Ways main={null} />
      </Section>
    </Page>
  );
}

/** @param main the way that is the one primary act of the page */
function Ways({ main }: Readonly<{ main: "sample" | null }>) {
  const [loading, setLoading] = useState(false);
  const sample = useCallback(() => {
    setLoading(true);
    void trySample().finally(() => setLoading(false));
  }, []);
  useOffer(useMemo(() => [{ name: words.sampleAct, run: sample }], [sample]));
  return (
    <ul className={styles.ways}>
      <Way
        title={words.sampleTitle}
        text={words.sampleText}
        act={
          <Button
            kind={main === "sample" ? "primary" : "secondary"}
            notNow={loading && words.sampleLoading}
            onClick={sample}
          >
            {words.sampleAct}
          </Button>
        }
      />
      <Way
        title={words.stashTitle}
        text={words.stashText}
        act={<ButtonLink to={{ name: "stash" }}>{words.stashAct}</ButtonLink>}
      />
      <Way
        title={words.kitTitle}
        text={words.kitText}
        act={
          <ButtonLink to={{ name: "kits" }} act={actWords.logKit}>
            {words.kitAct}
          </ButtonLink>
        }
      />
      {main !== null && (
        <Way
          title={words.restoreTitle}
          text={words.restoreText}
          act={<BringBack label={words.restoreAct} />}
        />
      )}
    </ul>
  );
}

const Way = ({ title, text, act }: Readonly<{ title: string; text: string; act: ReactNode }>) => (
  <li className={styles.way}>
    <div>
      <h3>{title}</h3>
      <p className={styles.text}>{text}</p>
    </div>
    <div className={styles.act}>{act}</div>
  </li>
);
