import { useMemo } from "react";
import { useOffer } from "../../app/acts.ts";
import { doAct } from "../../app/do-act.ts";
import { saveFile } from "../../app/save-file.ts";
import { Acts, Button, Choice, notify, Section } from "../../parts/index.ts";
import { KeptField } from "../../supply-form/kept-field.tsx";
import { format } from "../../words/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { changeField } from "../acts.ts";
import { copyBoth } from "../copy-text.ts";
import { today } from "../today.ts";
import type { Subject } from "../view/solve.ts";
import {
  type Form,
  files,
  forms,
  readLimit,
  versionOf,
  type WriteUpView,
  writeUpView,
} from "../view/write-up.ts";
import { TextLanguage } from "./text-language.tsx";
import styles from "./write-up.module.css";

const words = remakeWords.writeUp;

type Props = Readonly<{
  subject: Subject;
  view: WriteUpView;
  form: Form;
  limit: number;
  onForm: (form: Form) => void;
  onLimit: (limit: number) => void;
}>;

const readBytes = (text: string) => {
  const limit = readLimit(text);
  return limit === null
    ? ({ ok: false, fault: words.badLimit } as const)
    : ({ ok: true, value: limit } as const);
};

async function copy({ text, html }: WriteUpView): Promise<void> {
  const done = await copyBoth(text, html);
  notify({ both: words.copied, plain: words.copiedPlain, none: words.notCopied }[done]);
}

/** Keeps the text as it would go out, whatever form is looked at. */
function publish(subject: Subject, limit: number): void {
  const { remake } = subject;
  const at = today();
  const text = writeUpView(subject, "text", limit)?.text ?? "";
  const published = [...(remake.published ?? []), versionOf(subject, text, at)];
  const draft = changeField(remake, "published", published, remakeWords.acts.publish);
  void doAct(draft, words.published(format.date(at)));
}

/** The finished text, its size against the limit, and the ways out of here. */
export function Text(props: Props) {
  const { subject, view, form, limit } = props;
  const offered = useMemo(
    () => [
      ...(view.notNow
        ? []
        : [
            { name: words.copy, run: () => void copy(view) },
            { name: words.download, run: () => saveFile(view.fileName, view.text, files[form].type) },
            { name: words.publish, run: () => publish(subject, limit) },
          ]),
    ],
    [view, form, subject, limit],
  );
  useOffer(offered);
  return (
    <Section title={words.text} act={view.count} note={view.leftOut}>
      <How {...props} />
      <Acts>
        <Button kind="primary" notNow={view.notNow} onClick={() => void copy(view)}>
          {words.copy}
        </Button>
        <Button notNow={view.notNow} onClick={() => saveFile(view.fileName, view.text, files[form].type)}>
          {words.download}
        </Button>
        <Button notNow={view.notNow} onClick={() => publish(subject, limit)}>
          {words.publish}
        </Button>
      </Acts>
      <p className={styles.hint}>{view.notNow ?? words.publishText}</p>
      <pre className={styles.text} lang={view.language}>
        {view.text}
      </pre>
    </Section>
  );
}

/** In which form, and how long it may be. */
const How = ({ subject, view, form, limit, onForm, onLimit }: Props) => (
  <div className={styles.how}>
    <TextLanguage remake={subject.remake} language={view.language} />
    <Choice<Form>
      label={words.form}
      value={form}
      onValue={onForm}
      options={forms.map((value) => ({ value, label: words.forms[value] }))}
    />
    {form === "text" && (
      <KeptField
        label={words.limit}
        unit={words.limitUnit}
        keys="numeric"
        value={String(limit)}
        read={readBytes}
        onKeep={(next) => next !== undefined && onLimit(next)}
      />
    )}
  </div>
);
