import { useState } from "react";
import type { Parcel } from "../../engine/worth/index.ts";
import { addParcel, newId, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { DateField, MoneyField, Select } from "../parts/index.ts";
import { marketsWords } from "../words/markets.ts";
import { NewThing } from "./new-thing.tsx";

const words = marketsWords.parcels;

type Amount = Readonly<{ amount: string | null; currency: string }>;

/** The money of an amount, or nothing of it. */
const given = (name: "value" | "charged", { amount, currency }: Amount) =>
  amount === null ? {} : { [name]: { amount, currency } };

/** Asks what came from where, and what the border charged. */
export function NewParcel({ asked, onClose }: Readonly<{ asked: number; onClose: () => void }>) {
  const book = useBook((state) => state.book);
  const markets = book.markets ?? [];
  const currencyOf = (id: string) => markets.find((market) => market.id === id)?.currency ?? "EUR";
  const home = book.home?.market ?? "";
  const [from, setFrom] = useState("");
  const [to, setTo] = useState(home);
  const [date, setDate] = useState<string | null>(null);
  const [value, setValue] = useState<Amount>({ amount: null, currency: currencyOf(home) });
  const [charged, setCharged] = useState<Amount>({ amount: null, currency: currencyOf(home) });
  const [tried, setTried] = useState(false);
  const options = [
    { value: "", label: words.notSaid },
    ...markets.map((one) => ({ value: one.id, label: one.name })),
  ];
  const come = (id: string) => {
    setFrom(id);
    if (value.amount === null) setValue({ amount: null, currency: currencyOf(id) });
  };
  const add = async () => {
    setTried(true);
    if (from === "") return;
    const parcel: Parcel = {
      id: newId("pa-", book.parcels),
      from,
      ...(to === "" ? {} : { to }),
      ...(date === null ? {} : { date }),
      ...given("value", value),
      ...given("charged", charged),
    };
    if (await doAct(addParcel(parcel))) onClose();
  };
  return (
    <NewThing asked={asked} verb={words.verb} onAdd={add} onClose={onClose}>
      <Select
        label={words.from}
        value={from}
        options={options}
        onValue={come}
        fault={tried && from === "" ? words.fromMissing : undefined}
      />
      <Select label={words.to} value={to} options={options} onValue={setTo} />
      <DateField label={words.date} value={date} onValue={setDate} />
      <MoneyField label={words.value} value={value} onValue={setValue} />
      <MoneyField label={words.charged} hint={words.chargedHint} value={charged} onValue={setCharged} />
    </NewThing>
  );
}
