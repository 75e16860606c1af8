import { useState } from "react";
import type { Kit, Tier } from "../../../engine/worth/index.ts";
import { addTier, newId, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Acts, Button, Field, FieldRow, MoneyField } from "../../parts/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { likelyCurrency } from "../view/tiers.ts";
import styles from "./contents.module.css";

const text = kitsWords.tiers;

/** Asks for what a tier cannot be without; the rest is filled in once it stands. */
export function NewTier({ kit, onClose }: Readonly<{ kit: Kit; onClose: () => void }>) {
  const book = useBook((state) => state.book);
  const [label, setLabel] = useState("");
  const [kits, setKits] = useState("1");
  const [price, setPrice] = useState({ amount: null as string | null, currency: likelyCurrency(kit, book) });
  const [tried, setTried] = useState(false);
  const count = Number(kits.trim() || Number.NaN);
  const isCount = Number.isSafeInteger(count) && count > 0;

  const add = async () => {
    setTried(true);
    if (!isCount || price.amount === null) return;
    const tier: Tier = {
      id: newId("t-", kit.tiers),
      ...(label.trim() ? { label: label.trim() } : {}),
      kits: count,
      price: { amount: price.amount, currency: price.currency },
    };
    if (await doAct(addTier(kit, tier))) onClose();
  };
  return (
    <div className={styles.tierForm}>
      <FieldRow>
        <Field label={text.label} value={label} onValue={setLabel} placeholder={text.newLabel} autoFocus />
        <Field
          label={text.kitsLong}
          keys="numeric"
          value={kits}
          onValue={setKits}
          fault={tried && !isCount ? text.kitsFault : undefined}
        />
        <MoneyField
          label={text.priceLong}
          value={price}
          onValue={setPrice}
          fault={tried && price.amount === null ? text.priceMissing : undefined}
        />
      </FieldRow>
      <Acts>
        <Button onClick={add}>{text.verb}</Button>
        <Button kind="quiet" onClick={onClose}>
          {text.cancel}
        </Button>
      </Acts>
    </div>
  );
}
