import type { MouseEvent } from "react";
import type { Kit, Tier } from "../../../engine/worth/index.ts";
import { editTier, removeTier } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Acts, Button, FieldRow } from "../../parts/index.ts";
import { KeptField, readText, readWhole } from "../../supply-form/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { thenToHeading } from "../focus-heading.ts";
import { percentText, readPercent } from "../view/line-fields.ts";
import styles from "./contents.module.css";
import { Amount, type Keep, Where } from "./tier-parts.tsx";

const text = kitsWords.tiers;

type Props = Readonly<{ kit: Kit; tier: Tier; onGone: () => void }>;

/** Every field of a tier, each kept when it is left. */
export function TierForm({ kit, tier, onGone }: Props) {
  const keep: Keep = (path, value) => void doAct(editTier(kit, tier, path, value), null);
  const remove = (event: MouseEvent<HTMLElement>) =>
    thenToHeading(event.currentTarget, () => doAct(removeTier(kit, tier)), onGone);
  return (
    <div className={styles.tierForm}>
      <FieldRow>
        <KeptField
          label={text.label}
          value={tier.label ?? ""}
          read={readText}
          onKeep={(label) => keep(["label"], label)}
        />
        <KeptField
          label={text.kitsLong}
          keys="numeric"
          value={String(tier.kits)}
          read={readWhole(text.kitsFault)}
          onKeep={(kits) => keep(["kits"], kits)}
        />
        <Amount tier={tier} keep={keep} label={text.priceLong} path={["price"]} money={tier.price} needed />
        <Amount
          tier={tier}
          keep={keep}
          label={text.postage}
          path={["postagePerKit"]}
          money={tier.postagePerKit}
        />
        <Amount tier={tier} keep={keep} label={text.discount} path={["discount"]} money={tier.discount} />
        <Amount tier={tier} keep={keep} label={text.feeOnce} path={["feeOnce"]} money={tier.feeOnce} />
        <KeptField
          label={text.plusTax}
          unit={text.percent}
          keys="decimal"
          value={percentText(tier.plusTax)}
          read={readPercent}
          onKeep={(tax) => keep(["plusTax"], tax)}
        />
      </FieldRow>
      <Where tier={tier} keep={keep} />
      <Acts>
        <Button onClick={remove}>{text.remove}</Button>
      </Acts>
    </div>
  );
}
