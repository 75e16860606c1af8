import { doAct } from "../../app/do-act.ts";
import { Section } from "../../parts/index.ts";
import { KeptField, readText } from "../../supply-form/kept-field.tsx";
import { remakeWords } from "../../words/remakes.ts";
import { changeField } from "../acts.ts";
import { AddText } from "../add-text.tsx";
import styles from "../entries.module.css";
import { changedAt, keyed, withoutAt } from "../view/lists.ts";
import type { Subject } from "../view/solve.ts";

const words = remakeWords.bench;

/** The prompt, or prompts: each can be put right, another added; one emptied goes. */
export function Prompts({ subject: { kit, remake } }: Readonly<{ subject: Subject }>) {
  const own = remake.prompts ?? [];
  const prompts = own.length === 0 && kit.prompt ? [{ text: kit.prompt, from: "kit" }] : own;
  const keep = (next: unknown) =>
    void doAct(changeField(remake, "prompts", next, remakeWords.acts.prompt), null);
  return (
    <Section title={words.prompts}>
      <div className={styles.stack}>
        {keyed(prompts).map(({ key, index, entry }) => (
          <KeptField
            key={key}
            label={words.promptText}
            wraps
            hint={entry.from ? words.promptFrom(entry.from) : undefined}
            value={entry.text ?? ""}
            read={readText}
            onKeep={(text) => keep(text ? changedAt(prompts, index, { text }) : withoutAt(prompts, index))}
          />
        ))}
      </div>
      <AddText
        label={words.addPrompt}
        hint={words.addPromptHint}
        act={remakeWords.add}
        onAdd={(text) => keep([...prompts, { text }])}
      />
    </Section>
  );
}
