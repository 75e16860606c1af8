import { useMemo } from "react";
import { useAddressValue } from "../../app/navigate.ts";
import { Section } from "../../parts/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { NoRemake, RemakeFrame } from "../remake-frame.tsx";
import type { Subject } from "../view/solve.ts";
import { type Form, forms, limitOf, writeUpView } from "../view/write-up.ts";
import { Episode } from "./episode.tsx";
import { Text } from "./text.tsx";
import { Versions } from "./versions.tsx";
import styles from "./write-up.module.css";

const words = remakeWords.writeUp;

/** The write-up: the episode's own fields, what is still to do, and the finished text. */
export function WriteUp({ subject }: Readonly<{ subject: Subject }>) {
  const [as, setForm] = useAddressValue("as");
  const [typedLimit, setLimit] = useAddressValue("limit");
  const form: Form = forms.find((known) => known === as) ?? "text";
  const limit = limitOf(typedLimit);
  const view = useMemo(() => writeUpView(subject, form, limit), [subject, form, limit]);
  if (!view) return <NoRemake />;
  return (
    <RemakeFrame subject={subject} tab="write-up" lead={view.lead} leadMore={view.leadMore}>
      <div className="screen-only">
        <Episode remake={subject.remake} />
      </div>
      {view.reminders.length > 0 && (
        <Section title={words.reminders}>
          <ul className={styles.reminders}>
            {view.reminders.map(({ id, text }) => (
              <li key={id}>{text}</li>
            ))}
          </ul>
        </Section>
      )}
      <Text
        subject={subject}
        view={view}
        form={form}
        limit={limit}
        onForm={(next) => setForm(next === "text" ? null : next)}
        onLimit={(next) => setLimit(String(next))}
      />
      <div className="screen-only">
        <Versions remake={subject.remake} />
      </div>
    </RemakeFrame>
  );
}
