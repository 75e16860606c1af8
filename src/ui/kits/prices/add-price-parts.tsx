import { useBook } from "../../../store/index.ts";
import { Chooser, MoneyField, Select } from "../../parts/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { isShopKind, type PriceDraft, shopsOf } from "../view/add-price.ts";

const text = kitsWords.prices;

type PartProps = Readonly<{ draft: PriceDraft; change: (part: Partial<PriceDraft>) => void }>;

/** Market and shop. With another market its currency comes along while no amount stands there yet. */
export function Where({ draft, change }: PartProps) {
  const book = useBook((state) => state.book);
  const markets = book.markets ?? [];
  const move = (id: string) => {
    const currency = markets.find((one) => one.id === id)?.currency;
    const price = draft.price.amount === null && currency ? { amount: null, currency } : draft.price;
    change({ market: id || null, price, shop: null });
  };
  return (
    <>
      <Select
        label={text.market}
        value={draft.market ?? ""}
        options={[
          ...markets.map(({ id, name }) => ({ value: id, label: name })),
          { value: "", label: text.noMarket },
        ]}
        onValue={move}
      />
      {isShopKind(draft.kind) && (
        <Chooser
          label={text.shopName}
          value={draft.shop}
          options={shopsOf(book.shops ?? [], draft.market).map(({ id, name }) => ({
            value: id,
            label: name,
          }))}
          takesNew={draft.market !== null}
          onValue={(shop) => change({ shop })}
        />
      )}
    </>
  );
}

/** The least and the most of a guess. */
export function Range({ draft, change, fault }: PartProps & Readonly<{ fault: string | false | undefined }>) {
  return (
    <>
      <MoneyField
        label={text.low}
        value={{ ...draft.low, currency: draft.price.currency }}
        currencies={[draft.price.currency]}
        onValue={(low) => change({ low })}
      />
      <MoneyField
        label={text.high}
        value={{ ...draft.high, currency: draft.price.currency }}
        currencies={[draft.price.currency]}
        onValue={(high) => change({ high })}
        fault={fault || undefined}
      />
    </>
  );
}
