import type { MouseEvent } from "react";
import type { Parcel } from "../../engine/worth/index.ts";
import { editParcel, removeParcel, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { thenToHeading } from "../kits/focus-heading.ts";
import { Acts, Button, DateField, FieldRow, Select } from "../parts/index.ts";
import { KeptField, readText } from "../supply-form/index.ts";
import { marketsWords } from "../words/markets.ts";
import { KeptMoney } from "./kept-money.tsx";
import styles from "./markets.module.css";

const words = marketsWords.parcels;

type Props = Readonly<{ parcel: Parcel; onGone: () => void }>;

/** Every field of a parcel, each kept when it is left. */
export function ParcelForm({ parcel, onGone }: Props) {
  const markets = useBook((state) => state.book.markets) ?? [];
  const currencyOf = (id: string | null | undefined) =>
    markets.find((market) => market.id === id)?.currency ?? "EUR";
  const options = [
    { value: "", label: words.notSaid },
    ...markets.map(({ id, name }) => ({ value: id, label: name })),
  ];
  const keep = (path: readonly string[], value: unknown) => void doAct(editParcel(parcel, path, value), null);
  const remove = (event: MouseEvent<HTMLElement>) =>
    thenToHeading(event.currentTarget, () => doAct(removeParcel(parcel), words.removed), onGone);
  return (
    <div className={styles.form}>
      <FieldRow>
        <Select
          label={words.from}
          value={parcel.from ?? ""}
          options={options}
          onValue={(id) => keep(["from"], id || undefined)}
        />
        <Select
          label={words.to}
          value={parcel.to ?? ""}
          options={options}
          onValue={(id) => keep(["to"], id || undefined)}
        />
        <DateField
          label={words.date}
          value={parcel.date ?? null}
          onValue={(date) => keep(["date"], date ?? undefined)}
        />
        <KeptMoney
          label={words.value}
          currency={currencyOf(parcel.from)}
          money={parcel.value}
          onKeep={(money) => keep(["value"], money)}
        />
        <KeptMoney
          label={words.charged}
          hint={words.chargedHint}
          currency={currencyOf(parcel.to)}
          money={parcel.charged}
          onKeep={(money) => keep(["charged"], money)}
        />
        <KeptField
          label={words.note}
          value={parcel.note ?? ""}
          read={readText}
          onKeep={(note) => keep(["note"], note)}
        />
      </FieldRow>
      <Acts>
        <Button onClick={(event) => void remove(event)}>{words.removeVerb}</Button>
      </Acts>
    </div>
  );
}
