import type { MouseEvent } from "react";
import type { Kinship } from "../../../engine/supply/index.ts";
import { editKinship, removeKinship } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { thenToHeading } from "../../kits/focus-heading.ts";
import { Acts, Button, DateField, FieldRow, Select } from "../../parts/index.ts";
import { KeptField, OfferedField, type Offers, readText } from "../../supply-form/index.ts";
import { kinWords as words } from "../../words/kin.ts";
import styles from "./kin.module.css";
import { SideFields } from "./side-fields.tsx";
import { byOptions, kindOptions, sureOptions } from "./view/options.ts";

type Props = Readonly<{ kinship: Kinship; offers: Offers; onGone: () => void }>;
type Keep = (path: readonly string[], value: unknown) => void;

/** Every field of a link, each kept when it is left. */
export function KinForm({ kinship, offers, onGone }: Props) {
  const keep: Keep = (path, value) => void doAct(editKinship(kinship, path, value), null);
  const remove = (event: MouseEvent<HTMLElement>) =>
    thenToHeading(event.currentTarget, () => doAct(removeKinship(kinship), words.removed), onGone);
  return (
    <div className={styles.form}>
      <FieldRow>
        <Select
          label={words.kind}
          value={kinship.kind ?? "twin"}
          options={kindOptions}
          onValue={(kind) => keep(["kind"], kind)}
        />
        {!kinship.a?.code && !kinship.b?.code && (
          <Select
            label={words.pairing}
            value={kinship.by ?? "code"}
            options={byOptions}
            onValue={(by) => keep(["by"], by)}
          />
        )}
      </FieldRow>
      <div className={styles.sides}>
        <SideFields legend={words.one}>
          <KeptSide side="a" kinship={kinship} offers={offers} keep={keep} />
        </SideFields>
        <SideFields legend={words.other}>
          <KeptSide side="b" kinship={kinship} offers={offers} keep={keep} />
        </SideFields>
      </div>
      <FieldRow>
        <Select
          label={words.sure}
          value={kinship.sure ?? ""}
          options={sureOptions}
          onValue={(sure) => keep(["sure"], sure || undefined)}
        />
        <KeptField
          label={words.source}
          value={kinship.source ?? ""}
          read={readText}
          onKeep={(source) => keep(["source"], source)}
        />
        <DateField
          label={words.date}
          value={kinship.date ?? null}
          onValue={(date) => keep(["date"], date ?? undefined)}
        />
        <KeptField
          label={words.looks}
          value={kinship.looks ?? ""}
          read={readText}
          onKeep={(looks) => keep(["looks"], looks)}
        />
      </FieldRow>
      <Acts>
        <Button onClick={(event) => void remove(event)}>{words.remove}</Button>
      </Acts>
    </div>
  );
}

type SideProps = Readonly<{ side: "a" | "b"; kinship: Kinship; offers: Offers; keep: Keep }>;

function KeptSide({ side, kinship, offers, keep }: SideProps) {
  const told = kinship[side];
  return (
    <>
      <OfferedField
        label={words.maker}
        value={told?.maker}
        offers={offers.makers}
        onKeep={(maker) => keep([side, "maker"], maker)}
      />
      <OfferedField
        label={words.line}
        value={told?.line}
        offers={offers.linesOf(told?.maker ?? "")}
        onKeep={(line) => keep([side, "line"], line)}
      />
      <KeptField
        label={words.code}
        hint={words.codeHint}
        value={told?.code ?? ""}
        read={readText}
        onKeep={(code) => keep([side, "code"], code)}
      />
    </>
  );
}
