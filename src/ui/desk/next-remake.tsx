import { useId } from "react";
import { goAndDo } from "../app/acts.ts";
import { Link } from "../app/link.tsx";
import { Acts, Button, ButtonLink } from "../parts/index.ts";
import { actWords } from "../words/acts.ts";
import { deskWords } from "../words/desk.ts";
import styles from "./desk.module.css";
import { Strip } from "./strip.tsx";
import type { NextView } from "./view/next.ts";

const words = deskWords.next;

/** The remake under way: its pairs in a strip, how far it is, and the next act. */
export function NextRemake({ next }: Readonly<{ next: NextView }>) {
  const titleId = useId();
  return (
    <section aria-labelledby={titleId}>
      <div className={styles.head}>
        <h2 id={titleId}>
          <Link to={{ name: "remake", id: next.id, tab: "stand-ins" }} className={styles.kit}>
            {next.kit}
          </Link>
        </h2>
        <p className={styles.fact}>{next.stepText}</p>
      </div>
      {next.pairs.length > 0 && <Strip pairs={next.pairs} />}
      <p className={styles.lead}>
        {next.lead} <span className={styles.more}>{next.leadMore}</span>
      </p>
      <div className={styles.go}>
        <Acts>
          {next.pairs.length > 0 ? (
            <ButtonLink kind="primary" to={{ name: "remake", id: next.id, tab: next.step }}>
              {next.go}
            </ButtonLink>
          ) : (
            <ButtonLink kind="primary" to={{ name: "kit", id: next.kitId, tab: "contents" }}>
              {words.logLines}
            </ButtonLink>
          )}
          {next.fetch && (
            <Button
              onClick={() => goAndDo({ name: "remake", id: next.id, tab: "stand-ins" }, actWords.openFetch)}
            >
              {next.fetch}
            </Button>
          )}
        </Acts>
      </div>
      {next.others.length > 0 && (
        <p className={styles.others}>
          {words.others}:{" "}
          {next.others.map(({ id, step, text }, index) => (
            <span key={id}>
              {index > 0 && "; "}
              <Link to={{ name: "remake", id, tab: step }}>{text}</Link>
            </span>
          ))}
        </p>
      )}
    </section>
  );
}
