import { type FormEvent, useRef, useState } from "react";
import type { Line } from "../../../engine/price/index.ts";
import type { Kit, Market } from "../../../engine/worth/index.ts";
import { addEvidence, addShop, newId, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Button, DateField, Field, FieldRow, MoneyField, Select, Tick } from "../../parts/index.ts";
import { KeptField } from "../../supply-form/index.ts";
import { kitsWords } from "../../words/kits.ts";
import {
  evidenceOf,
  faultOfDraft,
  isPackKind,
  isShopKind,
  type PriceDraft,
  priceKinds,
} from "../view/add-price.ts";
import { percentText, readPercent } from "../view/line-fields.ts";
import { Range, Where } from "./add-price-parts.tsx";
import { PackFields } from "./pack-fields.tsx";
import styles from "./prices.module.css";

const text = kitsWords.prices;

type Props = Readonly<{ kit: Kit; line: Line; market: Market }>;

const kindOptions = priceKinds.map((value) => ({ value, label: text.kinds[value] }));

const draftFor = (kit: Kit, market: Market): PriceDraft => {
  const none = { amount: null, currency: market.currency };
  return {
    kind: "shop",
    price: none,
    low: none,
    high: none,
    market: market.id,
    shop: null,
    date: kit.valuedOn ?? null,
    source: "",
    inStock: true,
    plusTax: "",
    pack: {},
  };
};

/** A price found, in a few keys: the amount, the shop, Enter. The rest is filled in as it mostly is. */
export function AddPrice({ kit, line, market }: Props) {
  const book = useBook((state) => state.book);
  const [draft, setDraft] = useState(() => draftFor(kit, market));
  const [tried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const fault = faultOfDraft(draft, line.supply);
  const change = (part: Partial<PriceDraft>) => setDraft((before) => ({ ...before, ...part }));

  const add = async () => {
    setTried(true);
    if (fault) return;
    const shop = (book.shops ?? []).find((one) => one.id === draft.shop);
    const isNewShop = isShopKind(draft.kind) && draft.shop !== null && !shop && draft.market !== null;
    const made = isNewShop
      ? { id: newId("sh-", book.shops), name: draft.shop ?? "", market: draft.market ?? "" }
      : null;
    const evidence = evidenceOf(newId("e", line.evidence), draft, made?.id ?? shop?.id ?? null);
    const act = addEvidence(kit, line, evidence);
    const changes = [...(made ? addShop(made).changes : []), ...act.changes];
    if (!(await doAct({ ...act, changes }))) return;
    setTried(false);
    setDraft({ ...draftFor(kit, market), kind: draft.kind, source: draft.source });
    form.current?.querySelector<HTMLInputElement>('input[inputmode="decimal"]')?.focus();
  };
  // Enter comes before the field is left: what is in it is read first, then the newest `add` is called.
  const latest = useRef(add);
  latest.current = add;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    setTimeout(() => void latest.current(), 0);
  };
  return (
    <form ref={form} className={styles.add} aria-label={text.add} onSubmit={submit}>
      <h3>{text.add}</h3>
      <FieldRow>
        <Select
          label={text.kind}
          value={draft.kind}
          options={kindOptions}
          onValue={(kind) => change({ kind })}
        />
        {draft.kind !== "not-sold" && (
          <MoneyField
            label={text.price}
            value={draft.price}
            onValue={(price) => change({ price })}
            fault={tried && fault?.field === "price" ? fault.message : undefined}
          />
        )}
        <Where draft={draft} change={change} />
        <DateField label={text.date} value={draft.date} onValue={(date) => change({ date })} />
        {draft.kind !== "not-sold" && (
          <KeptField
            label={text.taxNotIn}
            unit={kitsWords.tiers.percent}
            keys="decimal"
            value={percentText(draft.plusTax)}
            read={readPercent}
            onKeep={(plusTax) => change({ plusTax: plusTax ?? "" })}
          />
        )}
        <Field label={text.source} value={draft.source} onValue={(source) => change({ source })} />
        {draft.kind === "guess" && <Range draft={draft} change={change} fault={tried && fault?.message} />}
        {isPackKind(draft.kind) && (
          <PackFields
            supply={line.supply}
            pack={draft.pack}
            onPack={(pack) => change({ pack })}
            fault={tried && fault?.field === "pack" ? fault.message : null}
          />
        )}
      </FieldRow>
      <div className={styles.addFoot}>
        {isShopKind(draft.kind) && (
          <Tick label={text.inStock} value={draft.inStock} onValue={(inStock) => change({ inStock })} />
        )}
        <Button type="submit" kind="primary">
          {text.addVerb}
        </Button>
      </div>
    </form>
  );
}
