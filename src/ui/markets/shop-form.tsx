import type { MouseEvent } from "react";
import type { Shop } from "../../engine/price/index.ts";
import { editShop, removeShop, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { thenToHeading } from "../kits/focus-heading.ts";
import { Acts, Button, FieldRow, Select } from "../parts/index.ts";
import { KeptField, readNeeded } from "../supply-form/index.ts";
import { marketsWords } from "../words/markets.ts";
import { KeptMoney } from "./kept-money.tsx";
import styles from "./markets.module.css";
import { pricesFound } from "./view/lists.ts";

const words = marketsWords.shops;

type Props = Readonly<{ shop: Shop; onGone: () => void }>;
type Keep = (path: readonly string[], value: unknown) => void;

/** Every field of a shop, each kept when it is left. */
export function ShopForm({ shop, onGone }: Props) {
  const book = useBook((state) => state.book);
  const markets = book.markets ?? [];
  const currency = markets.find(({ id }) => id === shop.market)?.currency ?? "EUR";
  const keep: Keep = (path, value) => void doAct(editShop(shop, path, value), null);
  const remove = (event: MouseEvent<HTMLElement>) => {
    const told = words.removed(shop.name, pricesFound(book, { shop: shop.id }));
    return thenToHeading(event.currentTarget, () => doAct(removeShop(book, shop), told), onGone);
  };
  return (
    <div className={styles.form}>
      <FieldRow>
        <KeptField
          label={words.name}
          value={shop.name}
          read={readNeeded(words.nameMissing)}
          onKeep={(name) => keep(["name"], name)}
        />
        <Select
          label={words.market}
          value={shop.market}
          options={markets.map(({ id, name }) => ({ value: id, label: name }))}
          onValue={(id) => keep(["market"], id)}
        />
        <KeptMoney
          label={words.postage}
          currency={currency}
          money={shop.postage}
          onKeep={(money) => keep(["postage"], money)}
        />
        <KeptMoney
          label={words.free}
          hint={words.freeHint}
          currency={currency}
          money={shop.freeFrom}
          onKeep={(money) => keep(["freeFrom"], money)}
        />
      </FieldRow>
      <Abroad shop={shop} currency={currency} keep={keep} />
      <Acts>
        <Button onClick={(event) => void remove(event)}>{words.removeVerb}</Button>
      </Acts>
    </div>
  );
}

/** Postage to each other market; a market left open is not sent to. */
function Abroad({ shop, currency, keep }: Readonly<{ shop: Shop; currency: string; keep: Keep }>) {
  const markets = useBook((state) => state.book.markets) ?? [];
  const own = (id: string) =>
    shop.postageTo && Object.hasOwn(shop.postageTo, id) ? shop.postageTo[id] : undefined;
  return (
    <FieldRow>
      {markets
        .filter(({ id }) => id !== shop.market)
        .map(({ id, name }) => (
          <KeptMoney
            key={id}
            label={words.postageTo(name)}
            hint={words.abroadHint}
            currency={currency}
            money={own(id)}
            onKeep={(money) => keep(["postageTo", id], money)}
          />
        ))}
    </FieldRow>
  );
}
