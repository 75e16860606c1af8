import { useState } from "react";
import type { Erratum, Kit } from "../../../engine/worth/index.ts";
import { Acts, Button, DateField, Field, FieldRow, Tick } from "../../parts/index.ts";
import { useFirstField } from "../../parts/use-focus.ts";
import { useSubmit } from "../../parts/use-submit.ts";
import { kitLogWords } from "../../words/kit-log.ts";
import { today } from "../today.ts";
import styles from "./contents.module.css";

const text = kitLogWords.errata;

type Props = Readonly<{
  kit: Kit;
  /** What is put right; null for a new one. */
  erratum: Erratum | null;
  onKeep: (erratum: Erratum) => Promise<void>;
  onClose: () => void;
}>;

/** A correction of the maker's: when it came, what it says, and which lines it is about. */
export function ErratumForm({ kit, erratum, onKeep, onClose }: Props) {
  const form = useFirstField<HTMLFormElement>(0);
  const [draft, setDraft] = useState<Erratum>(erratum ?? { date: today() });
  const [tried, setTried] = useState(false);
  const says = (draft.text ?? "").trim();
  const about = draft.lines ?? [];
  const keep = async () => {
    setTried(true);
    if (says !== "") await onKeep({ ...draft, text: says });
  };
  const toggle = (id: string, on: boolean) =>
    setDraft({ ...draft, lines: on ? [...about, id] : about.filter((one) => one !== id) });
  return (
    <form ref={form} className={styles.editor} onSubmit={useSubmit(keep)}>
      <FieldRow>
        <Field
          label={text.says}
          value={draft.text ?? ""}
          onValue={(typed) => setDraft({ ...draft, text: typed })}
          fault={tried && says === "" ? text.missing : undefined}
          wraps
        />
        <DateField
          label={text.date}
          value={draft.date ?? null}
          onValue={(date) => setDraft({ ...draft, date: date ?? undefined })}
        />
      </FieldRow>
      {(kit.lines ?? []).length > 0 && (
        <fieldset>
          <legend>{text.lines}</legend>
          <div className={styles.offered}>
            {(kit.lines ?? []).map(({ id, supply }, index) => (
              <Tick
                key={id}
                label={`${index + 1} ${supply.name}`}
                value={about.includes(id)}
                onValue={(on) => toggle(id, on)}
              />
            ))}
          </div>
        </fieldset>
      )}
      <Acts>
        <Button type="submit">{text.keep}</Button>
        <Button kind="quiet" onClick={onClose}>
          {text.cancel}
        </Button>
      </Acts>
    </form>
  );
}
