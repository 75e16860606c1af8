import { doAct } from "../../app/do-act.ts";
import { Section } from "../../parts/index.ts";
import { KeptField, readText } from "../../supply-form/kept-field.tsx";
import { remakeWords } from "../../words/remakes.ts";
import { changeField } from "../acts.ts";
import { AddText } from "../add-text.tsx";
import styles from "../entries.module.css";
import { keyed, withoutAt } from "../view/lists.ts";
import type { Subject } from "../view/solve.ts";

const words = remakeWords.verdict;

/** Questions for the audience; one emptied goes. */
export function Questions({ subject: { remake } }: Readonly<{ subject: Subject }>) {
  const questions = remake.questions ?? [];
  const keep = (next: readonly string[]) =>
    void doAct(changeField(remake, "questions", next, remakeWords.acts.questions), null);
  return (
    <Section title={words.questions}>
      <div className={styles.stack}>
        {keyed(questions).map(({ key, index, entry }) => (
          <KeptField
            key={key}
            label={words.question}
            wraps
            value={entry}
            read={readText}
            onKeep={(text) => keep(text ? questions.with(index, text) : withoutAt(questions, index))}
          />
        ))}
      </div>
      <AddText label={words.question} act={words.addQuestion} onAdd={(text) => keep([...questions, text])} />
    </Section>
  );
}
