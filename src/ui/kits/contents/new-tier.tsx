import { useState } from "react";
import type { Kit, Tier } from "../../../engine/worth/index.ts";
import { addTier, newId, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Acts, Button, Field, FieldRow, MoneyField } from "../../parts/index.ts";
import { useFirstField } from "../../parts/use-focus.ts";
import { useSubmit } from "../../parts/use-submit.ts";
import { kitsWords } from "../../words/kits.ts";
import { likelyCurrency } from "../view/tiers.ts";
import styles from "./contents.module.css";

const text = kitsWords.tiers;

type Props = Readonly<{
  kit: Kit;
  /** How often it was asked for: each time its first field takes the focus. */
  asked: number;
  onClose: () => void;
}>;

/** Asks for what a tier cannot be without; the rest is filled in once it stands. */
export function NewTier({ kit, asked, onClose }: Props) {
  const form = useFirstField<HTMLFormElement>(asked);
  const book = useBook((state) => state.book);
  const [label, setLabel] = useState("");
  const [kits, setKits] = useState("1");
  const [price, setPrice] = useState({ amount: null as string | null, currency: likelyCurrency(kit, book) });
  const [postage, setPostage] = useState({ ...price, amount: null as string | null });
  const [tried, setTried] = useState(false);
  const count = Number(kits.trim() || Number.NaN);
  const isCount = Number.isSafeInteger(count) && count > 0;

  const add = async () => {
    setTried(true);
    if (!isCount || price.amount === null) return;
    const tier: Tier = {
      id: newId("t-", kit.tiers),
      label: label.trim() || text.usual(count),
      kits: count,
      price: { amount: price.amount, currency: price.currency },
      ...(postage.amount === null
        ? {}
        : { postagePerKit: { amount: postage.amount, currency: postage.currency } }),
    };
    if (await doAct(addTier(kit, tier))) onClose();
  };
  return (
    <form ref={form} className={styles.tierForm} onSubmit={useSubmit(add)}>
      <FieldRow>
        <Field
          label={text.label}
          value={label}
          onValue={setLabel}
          hint={isCount ? text.usualHint(text.usual(count)) : undefined}
        />
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
        <MoneyField label={text.postage} value={postage} onValue={setPostage} />
      </FieldRow>
      <Acts>
        <Button type="submit">{text.verb}</Button>
        <Button kind="quiet" onClick={onClose}>
          {text.cancel}
        </Button>
      </Acts>
    </form>
  );
}
