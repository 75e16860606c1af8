import { useState } from "react";
import type { Claim, Line } from "../../../engine/price/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { editLine } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Button, Field, FieldRow, Select } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { headingOf } from "../focus-heading.ts";
import { today } from "../today.ts";
import { claimField, claimFields, claimValue, valueAt } from "../view/claims.ts";
import type { SourceNote } from "../view/entry.ts";
import styles from "./contents.module.css";
import { SourceFields } from "./source-fields.tsx";

const text = kitsWords.line;

type Props = Readonly<{ kit: Kit; line: Line }>;

/** Who says what about a line, how surely, and when. */
export function Claims({ kit, line }: Props) {
  const claims = line.claims ?? [];
  const [adding, setAdding] = useState(false);
  const put = (next: readonly Claim[]) => doAct(editLine(kit, line, ["claims"], next), null);
  return (
    <section aria-label={text.claims}>
      <h3>{text.claims}</h3>
      {claims.length === 0 && <p className={styles.fact}>{text.claimsNone}</p>}
      <ul className={styles.claims}>
        {claims.map((claim, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: claims have no name of their own, and keep no state
          <li key={index}>
            <span>{text.claim(claimField(claim.field), claimValue(claim.value))}</span>
            <span className={styles.fact}>{saidBy(claim)}</span>
            <Button
              kind="quiet"
              className={styles.change ?? ""}
              onClick={(event) => {
                const goOn = headingOf(event.currentTarget);
                void put(claims.filter((other) => other !== claim)).then(goOn);
              }}
            >
              {kitsWords.prices.remove}
              <span className="visually-hidden">{kitsWords.contents.about(claimField(claim.field))}</span>
            </Button>
          </li>
        ))}
      </ul>
      {adding ? (
        <AddClaim
          kit={kit}
          line={line}
          onAdd={(claim) => {
            void put([...claims, claim]);
            setAdding(false);
          }}
        />
      ) : (
        <Button kind="quiet" onClick={() => setAdding(true)}>
          {text.addClaim}
        </Button>
      )}
    </section>
  );
}

const saidBy = ({ source, sure, date }: Claim): string =>
  [
    source ?? kitsWords.contents.aSource,
    ...(sure ? [kitsWords.contents.sure[sure]] : []),
    ...(date ? [format.date(date)] : []),
  ].join(", ");

function AddClaim({ kit, line, onAdd }: Props & Readonly<{ onAdd: (claim: Claim) => void }>) {
  const [field, setField] = useState("name");
  const [value, setValue] = useState<string | null>(null);
  const [note, setNote] = useState<SourceNote | null>(null);
  const said = value ?? claimValue(valueAt(line, field) ?? "");
  const add = () => {
    if (note) onAdd({ field, value: said, sure: note.sure, source: note.source, date: today() });
  };
  return (
    <div className={styles.editor}>
      <FieldRow>
        <Select
          label={text.claimField}
          value={field}
          options={claimFields(line.supply.family)}
          onValue={(next) => {
            setField(next);
            setValue(null);
          }}
        />
        <Field label={text.claimValue} value={said} onValue={setValue} />
        <SourceFields kitId={kit.id} note={note} onNote={setNote} />
      </FieldRow>
      <div>
        <Button notNow={note ? null : text.claimMissing} onClick={add}>
          {text.claimVerb}
        </Button>
      </div>
    </div>
  );
}
