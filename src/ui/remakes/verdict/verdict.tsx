import { useMemo } from "react";
import { useOffer } from "../../app/acts.ts";
import { doAct } from "../../app/do-act.ts";
import { DateField, Section } from "../../parts/index.ts";
import { KeptField, readText } from "../../supply-form/kept-field.tsx";
import { actWords } from "../../words/acts.ts";
import { remakeWords } from "../../words/remakes.ts";
import { changeField } from "../acts.ts";
import entries from "../entries.module.css";
import { RemakeFrame } from "../remake-frame.tsx";
import { picksOf, type Subject } from "../view/solve.ts";
import { verdictView } from "../view/verdict.ts";
import { Corrections } from "./corrections.tsx";
import { ItemVerdict } from "./item-verdict.tsx";
import { Questions } from "./questions.tsx";
import styles from "./verdict.module.css";

const words = remakeWords.verdict;

const kitField = "kit-verdict";

const offered = [{ name: actWords.writeVerdict, run: () => document.getElementById(kitField)?.focus() }];

/** The verdict: item by item, then of the kit; what to ask the audience, and what to put right. */
export function Verdict({ subject }: Readonly<{ subject: Subject }>) {
  const view = useMemo(() => verdictView(subject, picksOf(subject)), [subject]);
  useOffer(offered);
  return (
    <RemakeFrame subject={subject} tab="verdict" lead={view.lead} leadMore={view.more}>
      <section aria-labelledby="items">
        <h2 id="items" className="visually-hidden">
          {words.items}
        </h2>
        <ol className={styles.items}>
          {view.rows.map((row) => (
            <ItemVerdict key={row.line.id} row={row} remake={subject.remake} />
          ))}
        </ol>
      </section>
      <Kit subject={subject} />
      <Questions subject={subject} />
      <Corrections subject={subject} />
    </RemakeFrame>
  );
}

function Kit({ subject: { remake } }: Readonly<{ subject: Subject }>) {
  const keep = (field: string, value: unknown, label: string) =>
    void doAct(changeField(remake, field, value ?? undefined, label), null);
  return (
    <Section title={words.kit}>
      <div className={entries.stack}>
        <KeptField
          id={kitField}
          label={words.kitLabel}
          lines={3}
          value={remake.verdict ?? ""}
          read={readText}
          onKeep={(text) => keep("verdict", text, remakeWords.acts.kitVerdict)}
        />
        <div className={styles.short}>
          <DateField
            label={words.finished}
            value={remake.finished ?? null}
            onValue={(day) => keep("finished", day, remakeWords.acts.finished)}
          />
        </div>
      </div>
    </Section>
  );
}
