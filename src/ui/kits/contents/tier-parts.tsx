import { useState } from "react";
import type { Money } from "../../../engine/money/index.ts";
import type { Tier } from "../../../engine/worth/index.ts";
import { useBook } from "../../../store/index.ts";
import { FieldRow, MoneyField, Tick } from "../../parts/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { offeredAfter } from "../view/tiers.ts";
import styles from "./contents.module.css";

const text = kitsWords.tiers;

export type Keep = (path: readonly string[], value: unknown) => void;

type AmountProps = Readonly<{
  tier: Tier;
  keep: Keep;
  label: string;
  path: readonly string[];
  money: Money | null | undefined;
  hint?: string;
  needed?: boolean;
}>;

/** An amount of a tier, in the tier's own currency until another is chosen. */
export function Amount({ tier, keep, label, path, money, hint, needed }: AmountProps) {
  const [currency, setCurrency] = useState(money?.currency ?? tier.price.currency);
  const [missing, setMissing] = useState(false);
  return (
    <MoneyField
      label={label}
      hint={hint}
      fault={missing ? text.priceMissing : undefined}
      value={{ amount: money?.amount ?? null, currency }}
      onValue={(next) => {
        setCurrency(next.currency);
        setMissing(Boolean(needed) && next.amount === null);
        if (next.amount !== null) keep(path, { amount: next.amount, currency: next.currency });
        else if (!needed && money) keep(path, undefined);
      }}
    />
  );
}

/** Where a tier is offered, and postage to markets that have their own. */
export function Where({ tier, keep }: Readonly<{ tier: Tier; keep: Keep }>) {
  const markets = useBook((state) => state.book.markets) ?? [];
  const [none, setNone] = useState(false);
  const isOffered = (id: string) => !tier.markets || tier.markets.includes(id);
  const tick = (id: string, on: boolean) => {
    const next = offeredAfter(tier, markets, id, on);
    setNone(next?.length === 0);
    if (next?.length !== 0) keep(["markets"], next);
  };
  return (
    <>
      <fieldset>
        <legend className={styles.fact}>{text.offered}</legend>
        <div className={styles.offered}>
          {markets.map(({ id, name }) => (
            <Tick key={id} label={name} value={isOffered(id)} onValue={(on) => tick(id, on)} />
          ))}
        </div>
        {none && <p className={styles.fact}>{text.nowhereFault}</p>}
      </fieldset>
      <FieldRow>
        {markets
          .filter(({ id }) => isOffered(id))
          .map(({ id, name }) => (
            <Amount
              key={id}
              tier={tier}
              keep={keep}
              label={text.postageTo(name)}
              hint={text.postageToHint}
              path={["postageTo", id]}
              money={ownPostage(tier, id)}
            />
          ))}
      </FieldRow>
    </>
  );
}

/** Ids are the person's own words, so they may be called like anything an object has. */
const ownPostage = ({ postageTo }: Tier, id: string): Money | null =>
  postageTo && Object.hasOwn(postageTo, id) ? (postageTo[id] ?? null) : null;
