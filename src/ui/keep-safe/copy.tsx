import { useState } from "react";
import { nameBook, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { Button, Field, Section } from "../parts/index.ts";
import { keepSafeWords } from "../words/keep-safe.ts";
import styles from "./keep-safe.module.css";

const words = keepSafeWords.copy;

type Props = Readonly<{ written: string | null; onSave: () => void }>;

/** A copy of everything, to be kept somewhere else. */
export function Copy({ written, onSave }: Props) {
  return (
    <Section title={words.title}>
      <p className={styles.text}>{words.text}</p>
      <BookName />
      <Button kind="primary" onClick={onSave}>
        {words.act}
      </Button>
      <p role="status" className={styles.written}>
        {written}
      </p>
    </Section>
  );
}

function BookName() {
  const name = useBook((state) => state.book.name) ?? "";
  const [draft, setDraft] = useState<string | null>(null);
  const keep = (text: string) => {
    setDraft(null);
    if (draft !== null && text.trim() !== "" && text.trim() !== name) void doAct(nameBook(text.trim()), null);
  };
  return (
    <div className={styles.name}>
      <Field
        label={words.name}
        hint={words.nameHint}
        value={draft ?? name}
        onValue={setDraft}
        onLeave={keep}
        onEnter={keep}
      />
    </div>
  );
}
