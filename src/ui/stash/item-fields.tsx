import { useState } from "react";
import type { StashItem } from "../../engine/supply/index.ts";
import { changeStock, editStashItem, type Path, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { Choice, Chooser, DateField, FieldRow, MoneyField } from "../parts/index.ts";
import { KeptField, readText } from "../supply-form/index.ts";
import { stashWords } from "../words/stash.ts";
import styles from "./item-fields.module.css";
import { Stock } from "./stock.tsx";
import { Twins } from "./twins.tsx";
import { type State, stateOf } from "./view/known.ts";
import { currenciesOf, homeCurrency, placeOptions } from "./view/options.ts";
import { readTags } from "./view/read-item.ts";

const words = stashWords.item;
const keep = (item: StashItem, path: Path, value: unknown) =>
  void doAct(editStashItem(item, path, value ?? undefined), null);

type Props = Readonly<{ item: StashItem }>;

/** How one has a thing: how many, in what state, where, since when. Each field is kept when it is left. */
export function ItemFields({ item }: Props) {
  return (
    <div className={styles.fields}>
      <Having item={item} />
      <FieldRow>
        <Place item={item} />
        <DateField
          label={words.acquired}
          value={item.acquired ?? null}
          onValue={(date) => keep(item, ["acquired"], date)}
        />
        <DateField
          label={words.openedOn}
          value={item.opened ?? null}
          onValue={(date) => keep(item, ["opened"], date)}
        />
        <Paid item={item} />
      </FieldRow>
      <Bought item={item} />
      <Twins item={item} />
      <FieldRow>
        <KeptField
          label={words.note}
          value={item.note ?? ""}
          lines={2}
          read={readText}
          onKeep={(note) => keep(item, ["note"], note)}
        />
        <KeptField
          label={words.tags}
          hint={words.tagsHint}
          value={(item.tags ?? []).join(", ")}
          read={readTags}
          onKeep={(tags) => keep(item, ["tags"], tags)}
        />
      </FieldRow>
    </div>
  );
}

const states = Object.entries(stashWords.states).map(([value, label]) => ({ value: value as State, label })); // its own keys

function Having({ item }: Props) {
  return (
    <div className={styles.having}>
      <Stock
        label={words.owned}
        item={item}
        field="owned"
        onChange={(by) => void doAct(changeStock(item, by), null)}
      />
      {item.supply.family === "paper" && (
        <Stock
          label={words.sheetsLeft}
          item={item}
          field="sheetsLeft"
          onChange={(by) => void doAct(changeStock(item, by, "sheetsLeft"), null)}
        />
      )}
      <Choice
        label={words.state}
        value={stateOf(item)}
        options={states}
        onValue={(state) => keep(item, ["state"], state === "ok" ? undefined : state)}
      />
    </div>
  );
}

function Place({ item }: Props) {
  const stash = useBook((state) => state.book.stash);
  return (
    <Chooser
      label={words.place}
      hint={words.placeHint}
      value={item.place ?? null}
      options={placeOptions(stash ?? [])}
      takesNew
      onValue={(place) => keep(item, ["place"], place)}
    />
  );
}

function Paid({ item }: Props) {
  const book = useBook((state) => state.book);
  const [currency, setCurrency] = useState(item.paid?.currency ?? homeCurrency(book));
  const value = item.paid ?? { amount: null, currency };
  return (
    <MoneyField
      label={words.paid}
      value={value}
      currencies={currenciesOf(book, value.currency)}
      onValue={(next) => {
        setCurrency(next.currency);
        if (next.amount !== value.amount || item.paid)
          keep(item, ["paid"], next.amount === null ? undefined : next);
      }}
    />
  );
}

function Bought({ item }: Props) {
  const said = item.boughtForThis ?? null;
  return (
    <Choice
      label={words.bought}
      hint={words.boughtHint}
      value={said === null ? "" : said ? "yes" : "no"}
      options={[
        { value: "yes", label: words.boughtYes },
        { value: "no", label: words.boughtNo },
        { value: "", label: words.notSaid },
      ]}
      onValue={(picked) => keep(item, ["boughtForThis"], picked === "" ? undefined : picked === "yes")}
    />
  );
}
