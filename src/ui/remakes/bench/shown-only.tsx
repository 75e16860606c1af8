import { useState } from "react";
import { doAct } from "../../app/do-act.ts";
import { Button, Field, Section } from "../../parts/index.ts";
import { KeptField, readText } from "../../supply-form/kept-field.tsx";
import { remakeWords } from "../../words/remakes.ts";
import { changeField } from "../acts.ts";
import styles from "../entries.module.css";
import { changedAt, keyed, withoutAt } from "../view/lists.ts";
import { type Subject, shelvesOf } from "../view/solve.ts";
import { FromStash, StashThing } from "./from-stash.tsx";

const words = remakeWords.bench;

/** What is shown and not used in the piece, and why. */
export function ShownOnly({ subject }: Readonly<{ subject: Subject }>) {
  const { remake } = subject;
  const [why, setWhy] = useState("");
  const shown = remake.shownOnly ?? [];
  const shelves = shelvesOf(subject);
  const keep = (next: unknown, told: string | null = null) =>
    void doAct(changeField(remake, "shownOnly", next, remakeWords.acts.shown), told);
  const add = (stash: string) => {
    keep([...shown, { stash, why: why.trim() }]);
    setWhy("");
  };
  return (
    <Section title={words.shown}>
      <p className={styles.intro}>{words.shownText}</p>
      <ul className={styles.list}>
        {keyed(shown).map(({ key, index, entry }) => {
          const item = shelves.item(entry.stash);
          return (
            <li key={key} className={`${styles.entry} ${styles.paired}`}>
              <StashThing item={item} />
              <KeptField
                label={words.shownWhy}
                wraps
                value={entry.why ?? ""}
                read={readText}
                onKeep={(text) => keep(changedAt(shown, index, { why: text ?? "" }))}
              />
              <Button
                kind="quiet"
                aria-label={remakeWords.removeNamed(item?.supply.name ?? words.shown)}
                onClick={() => keep(withoutAt(shown, index), words.removed(item?.supply.name ?? words.shown))}
              >
                {remakeWords.remove}
              </Button>
            </li>
          );
        })}
      </ul>
      <FromStash book={subject.book} act={words.addShown} onAdd={add}>
        <Field label={words.shownWhy} wraps value={why} onValue={setWhy} />
      </FromStash>
    </Section>
  );
}
