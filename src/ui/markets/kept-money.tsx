import { useState } from "react";
import type { Money } from "../../engine/money/index.ts";
import { MoneyField } from "../parts/index.ts";

type Props = Readonly<{
  label: string;
  money: Money | null | undefined;
  /** The currency of an amount that is not there yet. */
  currency: string;
  /** The currencies to choose from; the amount's own is always among them. All when left out. */
  currencies?: readonly string[];
  hint?: string;
  onKeep: (money: Money | undefined) => void;
}>;

/** An amount that is kept when its field is left; emptied, it is left out. */
export function KeptMoney({ label, money, currency, currencies, hint, onKeep }: Props) {
  const [chosen, setChosen] = useState<string | null>(null);
  const shown = money?.currency ?? chosen ?? currency;
  return (
    <MoneyField
      label={label}
      hint={hint}
      value={{ amount: money?.amount ?? null, currency: shown }}
      {...(currencies ? { currencies: [...new Set([...currencies, shown])] } : {})}
      onValue={(next) => {
        setChosen(next.currency);
        if (next.amount !== null) onKeep({ amount: next.amount, currency: next.currency });
        else if (money) onKeep(undefined);
      }}
    />
  );
}
