import { useMemo, useState } from "react";
import type { Claim, Line } from "../../../engine/price/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { useBook } from "../../../store/index.ts";
import { Acts, Button, Chooser, DateField, Field, FieldRow, Select } from "../../parts/index.ts";
import { useFirstField } from "../../parts/use-focus.ts";
import { KeptField, readNumber, TraitInputField, traitField } from "../../supply-form/index.ts";
import { kitLogWords } from "../../words/kit-log.ts";
import { kitsWords } from "../../words/kits.ts";
import { today } from "../today.ts";
import { claimFields } from "../view/claims.ts";
import { fieldOf, valueAt } from "../view/conflicts.ts";
import { knownSources } from "../view/entry.ts";
import styles from "./contents.module.css";

const text = kitsWords.line;
const words = kitLogWords.claims;

type Props = Readonly<{
  kit: Kit;
  line: Line;
  /** What is put right; null for a new one. */
  claim: Claim | null;
  onKeep: (claim: Claim) => void;
  onClose: () => void;
}>;

const sures = (["seen", "told", "believed", "unreadable"] as const).map((value) => ({
  value,
  label: kitsWords.contents.sure[value],
}));

/** What one source says of one field: who, when and how surely. */
export function ClaimForm({ kit, line, claim, onKeep, onClose }: Props) {
  const { family } = line.supply;
  const form = useFirstField<HTMLDivElement>(0);
  const [draft, setDraft] = useState<Claim>(
    claim ?? { field: "name", value: line.supply.name, sure: "seen", date: today() },
  );
  const change = (part: Partial<Claim>) => setDraft((before) => ({ ...before, ...part }));
  const field = fieldOf(family, draft.field);
  const isUnreadable = draft.sure === "unreadable";
  const isSaid = isUnreadable || (draft.value !== undefined && draft.value !== null && draft.value !== "");
  const missing = !draft.source ? text.claimMissing : isSaid ? null : words.valueMissing;
  return (
    <div ref={form} className={styles.editor}>
      <FieldRow>
        <Select
          label={text.claimField}
          value={field}
          options={claimFields(family)}
          onValue={(next) => change({ field: next, value: valueAt(line, next) })}
        />
        {!isUnreadable && (
          <Value
            key={field}
            line={line}
            field={field}
            value={draft.value}
            onValue={(value) => change({ value })}
          />
        )}
        <Who kitId={kit.id} source={draft.source ?? null} onSource={(source) => change({ source })} />
        <Select
          label={kitsWords.entry.sure}
          value={draft.sure ?? "seen"}
          options={sures}
          onValue={(sure) => change({ sure })}
        />
        <DateField
          label={words.when}
          value={draft.date ?? null}
          onValue={(date) => change({ date: date ?? undefined })}
        />
      </FieldRow>
      <Acts>
        <Button notNow={missing} onClick={() => onKeep(isUnreadable ? { ...draft, value: null } : draft)}>
          {claim ? words.keep : text.claimVerb}
        </Button>
        <Button kind="quiet" onClick={onClose}>
          {words.cancel}
        </Button>
      </Acts>
    </div>
  );
}

type ValueProps = Readonly<{ line: Line; field: string; value: unknown; onValue: (value: unknown) => void }>;

/** What the source says, in the way that its field is filled in. */
function Value({ line, field, value, onValue }: ValueProps) {
  const trait = traitField(line.supply.family, field.replace(/^traits\./, ""));
  if (field.startsWith("traits.") && trait) {
    return <TraitInputField field={trait} value={value} onValue={onValue} />;
  }
  if (field === "qty") {
    return (
      <KeptField
        label={text.claimValue}
        keys="numeric"
        value={typeof value === "number" ? String(value) : ""}
        read={(typed) => readNumber(typed, true)}
        onKeep={onValue}
      />
    );
  }
  return <Field label={text.claimValue} value={typeof value === "string" ? value : ""} onValue={onValue} />;
}

type WhoProps = Readonly<{
  kitId: string;
  source: string | null;
  onSource: (source: string | undefined) => void;
}>;

function Who({ kitId, source, onSource }: WhoProps) {
  const book = useBook((state) => state.book);
  const options = useMemo(
    () => knownSources(book, kitId).map((value) => ({ value, label: value })),
    [book, kitId],
  );
  return (
    <Chooser
      label={words.who}
      value={source}
      options={options}
      takesNew
      onValue={(next) => onSource(next ?? undefined)}
    />
  );
}
