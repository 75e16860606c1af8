import { useState } from "react";
import { doAct } from "../../app/do-act.ts";
import { Button, classes, Field, Section, Select } from "../../parts/index.ts";
import { KeptField, readText } from "../../supply-form/kept-field.tsx";
import { remakeWords } from "../../words/remakes.ts";
import { changeField } from "../acts.ts";
import styles from "../entries.module.css";
import { ruleOptions } from "../view/bench.ts";
import { changedAt, keyed, withoutAt } from "../view/lists.ts";
import type { Subject } from "../view/solve.ts";

const words = remakeWords.bench;

/** Rules bent, and why: said aloud, and printed in the write-up. */
export function Bends({ subject: { remake } }: Readonly<{ subject: Subject }>) {
  const bends = remake.bends ?? [];
  const keep = (next: unknown, told: string | null = null) =>
    void doAct(changeField(remake, "bends", next, remakeWords.acts.bends), told);
  return (
    <Section title={words.bends}>
      <p className={styles.intro}>{words.bendsText}</p>
      <ul className={styles.list}>
        {keyed(bends).map(({ key, index, entry }) => (
          <li key={key} className={classes(styles.entry, styles.paired)}>
            <Select
              label={words.rule}
              value={String(entry.rule ?? 1)}
              options={ruleOptions}
              onValue={(rule) => keep(changedAt(bends, index, { rule: Number(rule) }))}
            />
            <KeptField
              label={words.bendWhy}
              wraps
              value={entry.why ?? ""}
              read={readText}
              onKeep={(why) => keep(changedAt(bends, index, { why: why ?? "" }))}
            />
            <Button
              kind="quiet"
              aria-label={remakeWords.removeNamed(entry.why || words.rule)}
              onClick={() => keep(withoutAt(bends, index), words.removed(entry.why || words.rule))}
            >
              {remakeWords.remove}
            </Button>
          </li>
        ))}
      </ul>
      <AddBend onAdd={(rule, why) => keep([...bends, { rule, why }])} />
    </Section>
  );
}

function AddBend({ onAdd }: Readonly<{ onAdd: (rule: number, why: string) => void }>) {
  const [rule, setRule] = useState("1");
  const [why, setWhy] = useState("");
  const [isEmpty, setEmpty] = useState(false);
  const add = () => {
    setEmpty(why.trim() === "");
    if (why.trim() === "") return;
    onAdd(Number(rule), why.trim());
    setWhy("");
  };
  return (
    <div className={classes(styles.add, styles.paired)}>
      <Select label={words.rule} value={rule} options={ruleOptions} onValue={setRule} />
      <Field
        label={words.bendWhy}
        wraps
        value={why}
        onValue={setWhy}
        onEnter={add}
        fault={isEmpty && why.trim() === "" && words.write}
      />
      <Button onClick={add}>{words.addBend}</Button>
    </div>
  );
}
