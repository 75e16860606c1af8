import { useMemo, useRef, useState } from "react";
import { useOffer } from "../../app/acts.ts";
import { doAct } from "../../app/do-act.ts";
import { Button, classes, Field, Section } from "../../parts/index.ts";
import { KeptField, readText } from "../../supply-form/kept-field.tsx";
import { actWords } from "../../words/acts.ts";
import { remakeWords } from "../../words/remakes.ts";
import { changeField } from "../acts.ts";
import styles from "../entries.module.css";
import { changedAt, keyed, withoutAt } from "../view/lists.ts";
import type { Subject } from "../view/solve.ts";
import { isTime } from "../view/time.ts";

const words = remakeWords.bench;

const readTime = (text: string) =>
  isTime(text) ? readText(text) : ({ ok: false, fault: words.badTime } as const);

/** The log of steps, in the order they were noted; with times they become the recording's chapters. */
export function Steps({ subject: { remake } }: Readonly<{ subject: Subject }>) {
  const log = remake.log ?? [];
  const keep = (next: unknown, told: string | null = null) =>
    void doAct(changeField(remake, "log", next, remakeWords.acts.step), told);
  return (
    <Section title={words.log}>
      {log.length === 0 && <p className={styles.intro}>{words.logEmpty}</p>}
      <ol className={styles.list}>
        {keyed(log).map(({ key, index, entry }) => (
          <li key={key} className={classes(styles.entry, styles.timed)}>
            <KeptField
              label={words.at}
              labelHidden={index > 0}
              value={entry.at ?? ""}
              read={readTime}
              onKeep={(at) => keep(changedAt(log, index, { at: at ?? null }))}
            />
            <KeptField
              label={words.what}
              wraps
              labelHidden={index > 0}
              value={entry.text ?? ""}
              read={readText}
              onKeep={(text) => keep(changedAt(log, index, { text: text ?? null }))}
            />
            <Button
              kind="quiet"
              aria-label={remakeWords.removeNamed(entry.text ?? words.what)}
              onClick={() => keep(withoutAt(log, index), words.removed(entry.text || words.what))}
            >
              {remakeWords.remove}
            </Button>
          </li>
        ))}
      </ol>
      <AddStep onAdd={(at, text) => keep([...log, { at, text }])} />
    </Section>
  );
}

/** A step as it happens: its time where there is a recording, and what. Enter adds it. */
function AddStep({ onAdd }: Readonly<{ onAdd: (at: string | null, text: string) => void }>) {
  const [at, setAt] = useState("");
  const [text, setText] = useState("");
  const [fault, setFault] = useState<"at" | "text" | null>(null);
  const what = useRef<HTMLInputElement & HTMLTextAreaElement>(null);
  useOffer(useMemo(() => [{ name: actWords.writeStep, run: () => what.current?.focus() }], []));
  const add = () => {
    const wrong = !isTime(at) ? "at" : text.trim() === "" ? "text" : null;
    setFault(wrong);
    what.current?.focus();
    if (wrong) return;
    onAdd(at.trim() || null, text.trim());
    setAt("");
    setText("");
  };
  return (
    <div className={classes(styles.add, styles.timed)}>
      <Field
        label={words.at}
        hint={words.atHint}
        value={at}
        onValue={setAt}
        onEnter={add}
        fault={fault === "at" && words.badTime}
      />
      <Field
        label={words.what}
        wraps
        value={text}
        onValue={setText}
        onEnter={add}
        inputRef={what}
        fault={fault === "text" && remakeWords.bench.write}
      />
      <Button kind="primary" onClick={add}>
        {words.addStep}
      </Button>
    </div>
  );
}
