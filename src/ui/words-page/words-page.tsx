import { useEffect, useRef } from "react";
import { useAddressValue } from "../app/navigate.ts";
import { classes, Page, Section } from "../parts/index.ts";
import { words } from "../words/index.ts";
import { meanings, meaningsPage } from "../words/meanings.ts";
import { type Term, terms } from "../words/terms.ts";
import { groups } from "./groups.ts";
import styles from "./words-page.module.css";

/** All our own words and what they mean. */
export function WordsPage() {
  return (
    <Page
      place={words.places.words}
      title={meaningsPage.title}
      lead={meaningsPage.lead}
      leadMore={meaningsPage.leadMore}
    >
      {Object.entries(groups).map(([group, members]) => (
        // the keys of `groups` are those of the titles
        <Section key={group} title={meaningsPage.groups[group as keyof typeof groups]}>
          <dl className={styles.list}>
            {members.map((term) => (
              <Entry key={term} term={term} />
            ))}
          </dl>
        </Section>
      ))}
    </Page>
  );
}

function Entry({ term }: Readonly<{ term: Term }>) {
  const { text, behind } = meanings[term];
  const [asked] = useAddressValue("of");
  const isAsked = asked === term;
  const ref = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (isAsked) ref.current?.scrollIntoView({ block: "center" });
  }, [isAsked]);
  return (
    <div ref={ref} className={classes(styles.entry, isAsked && styles.asked)}>
      <dt className={styles.word}>{terms[term][0]}</dt>
      <dd className={styles.text}>
        {text}
        {behind && <span className={styles.behind}>{behind}</span>}
      </dd>
    </div>
  );
}
