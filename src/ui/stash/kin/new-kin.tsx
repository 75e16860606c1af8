import { useState } from "react";
import type { Supply } from "../../../engine/supply/index.ts";
import { addKinships, newId, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Acts, Button, Choice, DateField, Field, FieldRow, Select } from "../../parts/index.ts";
import { useFirstField } from "../../parts/use-focus.ts";
import { useSubmit } from "../../parts/use-submit.ts";
import { OfferedField, type Offers } from "../../supply-form/index.ts";
import { format } from "../../words/index.ts";
import { kinWords as words } from "../../words/kin.ts";
import styles from "./kin.module.css";
import { SideFields } from "./side-fields.tsx";
import {
  type Draft,
  emptyDraft,
  faultsOf,
  isWholeLines,
  kinshipsOf,
  linksIn,
  type Pairing,
  type Side,
} from "./view/draft.ts";
import { kindOptions, sureOptions } from "./view/options.ts";

type Props = Readonly<{
  /** How often it was asked for: each time its first field takes the focus. */
  asked: number;
  /** The thing of the stash that it was asked for from: one of the two. */
  from: Supply | null;
  offers: Offers;
  onClose: () => void;
}>;

const pairings: readonly Pairing[] = ["code", "name", "pairs"];
const pairingOptions = pairings.map((value) => ({ value, label: words.pairings[value] }));

/** Links two products, or two whole lines: one by one, number for number, name for name, or by a list of pairs. */
export function NewKin({ asked, from, offers, onClose }: Props) {
  const [draft, setDraft] = useState<Draft>(() => emptyDraft(from));
  const [tried, setTried] = useState(false);
  const form = useFirstField<HTMLFormElement>(asked);
  const faults = tried ? faultsOf(draft) : {};
  const change = (part: Partial<Draft>) => setDraft({ ...draft, ...part });
  const count = linksIn(draft);
  const add = async () => {
    setTried(true);
    if (Object.keys(faultsOf(draft)).length > 0) return;
    const { kinships } = useBook.getState().book;
    const made = kinshipsOf(draft, (others) => newId("ki-", [...(kinships ?? []), ...others]));
    if (await doAct(addKinships(made))) onClose();
  };
  return (
    <form ref={form} className={styles.form} onSubmit={useSubmit(add)}>
      <Choice
        label={words.kind}
        value={draft.kind}
        options={kindOptions}
        onValue={(kind) => change({ kind })}
      />
      <div className={styles.sides}>
        <SideFields legend={words.one}>
          <Sides side={draft.a} offers={offers} fault={faults.a} onSide={(a) => change({ a })} />
        </SideFields>
        <SideFields legend={words.other}>
          <Sides side={draft.b} offers={offers} fault={faults.b} onSide={(b) => change({ b })} />
        </SideFields>
      </div>
      {isWholeLines(draft) && (
        <Choice
          label={words.pairing}
          value={draft.pairing}
          options={pairingOptions}
          onValue={(pairing) => change({ pairing })}
        />
      )}
      {isWholeLines(draft) && draft.pairing === "pairs" && (
        <Field
          label={words.pairs}
          hint={words.pairsHint}
          lines={6}
          value={draft.pairs}
          fault={faults.pairs}
          onValue={(pairs) => change({ pairs })}
        />
      )}
      <FieldRow>
        <Select
          label={words.sure}
          value={draft.sure}
          options={sureOptions}
          onValue={(sure) => change({ sure })}
        />
        <Field label={words.source} value={draft.source} onValue={(source) => change({ source })} />
        <DateField label={words.date} value={draft.date} onValue={(date) => change({ date })} />
      </FieldRow>
      <Acts>
        <Button kind="primary" type="submit">
          {words.verb(format.count(count), count === 1)}
        </Button>
        <Button kind="quiet" onClick={onClose}>
          {words.cancel}
        </Button>
      </Acts>
    </form>
  );
}

type SidesProps = Readonly<{
  side: Side;
  offers: Offers;
  fault: string | undefined;
  onSide: (side: Side) => void;
}>;

const Sides = ({ side, offers, fault, onSide }: SidesProps) => (
  <>
    <OfferedField
      label={words.maker}
      value={side.maker}
      fault={fault}
      offers={offers.makers}
      onKeep={(maker = "") => onSide({ ...side, maker })}
    />
    <OfferedField
      label={words.line}
      value={side.line}
      offers={offers.linesOf(side.maker)}
      onKeep={(line = "") => onSide({ ...side, line })}
    />
    <Field
      label={words.code}
      hint={words.codeHint}
      value={side.code}
      onValue={(code) => onSide({ ...side, code })}
    />
  </>
);
