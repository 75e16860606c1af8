import { useRef, useState } from "react";
import { doAct } from "../../app/do-act.ts";
import { Button, classes, Field, Section } from "../../parts/index.ts";
import { KeptField, readText } from "../../supply-form/kept-field.tsx";
import { remakeWords } from "../../words/remakes.ts";
import { changeField } from "../acts.ts";
import styles from "../entries.module.css";
import { changedAt, keyed, withoutAt } from "../view/lists.ts";
import type { Subject } from "../view/solve.ts";
import { isTime } from "../view/time.ts";

const words = remakeWords.verdict;
const { badTime, write } = remakeWords.bench;

const readTime = (text: string) => (isTime(text) ? readText(text) : ({ ok: false, fault: badTime } as const));

/** What was said wrongly in the recording, with the right of it. */
export function Corrections({ subject: { remake } }: Readonly<{ subject: Subject }>) {
  const corrections = remake.corrections ?? [];
  const keep = (next: unknown, told: string | null = null) =>
    void doAct(changeField(remake, "corrections", next, remakeWords.acts.corrections), told);
  return (
    <Section title={words.corrections}>
      <p className={styles.intro}>{words.correctionsText}</p>
      <ul className={styles.list}>
        {keyed(corrections).map(({ key, index, entry }) => (
          <li key={key} className={classes(styles.entry, styles.triple)}>
            <KeptField
              label={words.at}
              labelHidden={index > 0}
              value={entry.at ?? ""}
              read={readTime}
              onKeep={(at) => keep(changedAt(corrections, index, { at: at ?? null }))}
            />
            <KeptField
              label={words.said}
              wraps
              labelHidden={index > 0}
              value={entry.said ?? ""}
              read={readText}
              onKeep={(said) => keep(changedAt(corrections, index, { said: said ?? null }))}
            />
            <KeptField
              label={words.meant}
              wraps
              labelHidden={index > 0}
              value={entry.meant ?? ""}
              read={readText}
              onKeep={(meant) => keep(changedAt(corrections, index, { meant: meant ?? null }))}
            />
            <Button
              kind="quiet"
              aria-label={remakeWords.removeNamed(entry.said || words.said)}
              onClick={() =>
                keep(withoutAt(corrections, index), remakeWords.bench.removed(entry.said || words.said))
              }
            >
              {remakeWords.remove}
            </Button>
          </li>
        ))}
      </ul>
      <AddCorrection onAdd={(entry) => keep([...corrections, entry])} />
    </Section>
  );
}

type Entry = Readonly<{ at: string; said: string; meant: string }>;
const blank: Entry = { at: "", said: "", meant: "" };

function AddCorrection({ onAdd }: Readonly<{ onAdd: (entry: Entry) => void }>) {
  const [entry, setEntry] = useState(blank);
  const [tried, setTried] = useState(false);
  const first = useRef<HTMLInputElement & HTMLTextAreaElement>(null);
  const faultOf = (text: string) => tried && text.trim() === "" && write;
  const add = () => {
    const whole = isTime(entry.at) && entry.said.trim() !== "" && entry.meant.trim() !== "";
    setTried(!whole);
    first.current?.focus();
    if (!whole) return;
    onAdd(entry);
    setEntry(blank);
  };
  return (
    <div className={classes(styles.add, styles.triple)}>
      <Field
        label={words.at}
        value={entry.at}
        onValue={(at) => setEntry({ ...entry, at })}
        onEnter={add}
        inputRef={first}
        fault={tried && !isTime(entry.at) && badTime}
      />
      <Field
        label={words.said}
        wraps
        value={entry.said}
        onValue={(said) => setEntry({ ...entry, said })}
        onEnter={add}
        fault={faultOf(entry.said)}
      />
      <Field
        label={words.meant}
        wraps
        value={entry.meant}
        onValue={(meant) => setEntry({ ...entry, meant })}
        onEnter={add}
        fault={faultOf(entry.meant)}
      />
      <Button onClick={add}>{words.addCorrection}</Button>
    </div>
  );
}
