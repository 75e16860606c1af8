import { useEffect, useRef, useState } from "react";
import type { Line } from "../../../engine/price/index.ts";
import type { Kit, Market } from "../../../engine/worth/index.ts";
import { type ActDraft, addEvidence, addShop, newId, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Button, DateField, Field, FieldRow, MoneyField, Select, Tick } from "../../parts/index.ts";
import { useSubmit } from "../../parts/use-submit.ts";
import { KeptField } from "../../supply-form/index.ts";
import { actWords } from "../../words/acts.ts";
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
import type { PriceRow } from "../view/prices.ts";
import { Range, Where } from "./add-price-parts.tsx";
import { PackFields } from "./pack-fields.tsx";
import styles from "./prices.module.css";

const text = kitsWords.prices;

/** Adds the price, and with it the shop where it is a new one. */
function actFor(kit: Kit, line: Line, draft: PriceDraft): ActDraft {
  const { shops } = useBook.getState().book;
  const shop = (shops ?? []).find((one) => one.id === draft.shop);
  const isNew = isShopKind(draft.kind) && draft.shop !== null && !shop && draft.market !== null;
  const made = isNew ? { id: newId("sh-", shops), name: draft.shop ?? "", market: draft.market ?? "" } : null;
  const act = addEvidence(
    kit,
    line,
    evidenceOf(newId("e", line.evidence), draft, made?.id ?? shop?.id ?? null),
  );
  return { ...act, changes: [...(made ? addShop(made).changes : []), ...act.changes] };
}

/** How one goes from line to line. */
export type GoOn = Readonly<{
  /** Whether the field for the price takes the focus. */
  writes: boolean;
  /** The next line that nothing is known about. */
  next: PriceRow | null;
  onNext: (line: string) => void;
}>;

type Props = Readonly<{ kit: Kit; line: Line; market: Market }> & GoOn;

const kindOptions = priceKinds.map((value) => ({ value, label: text.kinds[value] }));

const isPriced = (kind: PriceDraft["kind"]): boolean => kind !== "not-sold";

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

/**
 * A price found, in a few keys: the amount, the shop, Enter. The rest is filled in as it mostly is, and Enter
 * with nothing more to add goes on to the next line.
 */
export function AddPrice({ kit, line, market, writes, next, onNext }: Props) {
  const [draft, setDraft] = useState(() => draftFor(kit, market));
  const [tried, setTried] = useState(false);
  const [added, setAdded] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const focusPrice = () => {
    const field = form.current?.querySelector<HTMLInputElement>('input[inputmode="decimal"]');
    field?.focus();
    // Where a line above closes, the browser moves the page once more after it is drawn: then it is looked for again.
    const look = () => document.activeElement === field && field?.scrollIntoView({ block: "nearest" });
    requestAnimationFrame(() => requestAnimationFrame(look));
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the line is opened
  useEffect(() => {
    if (writes) focusPrice();
  }, []);
  const fault = faultOfDraft(draft, line.supply);
  const change = (part: Partial<PriceDraft>) => setDraft((before) => ({ ...before, ...part }));

  const keep = async () => {
    const blank = { ...draftFor(kit, market), kind: draft.kind, source: draft.source };
    // At once, so that Enter pressed twice does not add it twice; what was refused is put back.
    setDraft(blank);
    if (!(await doAct(actFor(kit, line, draft)))) setDraft((now) => (now === blank ? draft : now));
  };
  const add = async () => {
    if (added && next && draft.price.amount === null && isPriced(draft.kind)) return onNext(next.line.id);
    setTried(Boolean(fault));
    if (fault) return;
    setAdded(true);
    focusPrice();
    void keep();
  };
  const submit = useSubmit(add);
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
        {isPriced(draft.kind) && (
          <MoneyField
            label={text.price}
            value={draft.price}
            onValue={(price) => change({ price })}
            fault={tried && fault?.field === "price" ? fault.message : undefined}
          />
        )}
        <Where draft={draft} change={change} />
        <DateField label={text.date} value={draft.date} onValue={(date) => change({ date })} />
        {isPriced(draft.kind) && (
          <KeptField
            label={text.taxNotIn}
            hint={text.taxNotInHint}
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
        {next && (
          <Button kind="quiet" onClick={() => onNext(next.line.id)}>
            {actWords.nextWithout(next.name)}
          </Button>
        )}
      </div>
    </form>
  );
}
