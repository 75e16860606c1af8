import type { Money } from "../../../engine/money/index.ts";
import { Select, Tick } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { kitLogWords } from "../../words/kit-log.ts";
import { type SaidKind, saidKinds } from "../view/price-said.ts";
import styles from "./entry.module.css";

const text = kitLogWords.pasted;

type Props = Readonly<{
  /** The price that the line gives; null where it is left in the name. */
  price: Money | null;
  keeps: boolean;
  onKeeps: (keeps: boolean) => void;
  currencies: readonly string[];
  onCurrency: (currency: string) => void;
  kind: SaidKind;
  onKind: (kind: SaidKind) => void;
}>;

/** A price that stands in a line: kept as a price found, in which currency, and whose word it is. */
export function PriceSaid({ price, keeps, onKeeps, currencies, onCurrency, ...rest }: Props) {
  return (
    <div className={styles.price}>
      <Tick
        label={price ? text.price(format.money(price)) : text.priceInName}
        value={keeps}
        onValue={onKeeps}
      />
      {price && currencies.length > 1 && (
        <Select
          label={text.currency}
          value={price.currency}
          options={currencies.map((value) => ({ value, label: value }))}
          onValue={onCurrency}
        />
      )}
      {price && <KindOfPrices {...rest} />}
    </div>
  );
}

/** Whose word the prices are: the sender's, a shop's, or the maker's list. */
export const KindOfPrices = ({ kind, onKind }: Pick<Props, "kind" | "onKind">) => (
  <Select
    label={text.pricesAre}
    value={kind}
    options={saidKinds.map((value) => ({ value, label: text.kinds[value] }))}
    onValue={onKind}
  />
);
