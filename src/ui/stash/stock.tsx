import type { StashItem } from "../../engine/supply/index.ts";
import { stockOf } from "../../store/index.ts";
import { Button } from "../parts/index.ts";
import { KeptField } from "../supply-form/index.ts";
import { stashWords } from "../words/stash.ts";
import styles from "./stock.module.css";
import { readCount } from "./view/read-item.ts";

const words = stashWords.item;

type Props = Readonly<{
  label: string;
  item: StashItem;
  field: "owned" | "sheetsLeft";
  /** Stock changes by amounts, so that two devices' uses both count. */
  onChange: (by: number) => void;
}>;

/** A stock with one less and one more; a number can be written too. */
export function Stock({ label, item, field, onChange }: Props) {
  const count = stockOf(item, field);
  const what = `${label}, ${item.supply.name}`;
  return (
    <div className={styles.stock}>
      <Button
        aria-label={words.takeOne(what)}
        className={styles.step ?? ""}
        notNow={count === 0 && stashWords.states.empty}
        onClick={() => onChange(-1)}
      >
        −
      </Button>
      <div className={styles.count}>
        <KeptField
          label={label}
          keys="numeric"
          value={String(count)}
          read={readCount}
          onKeep={(next) => {
            const by = (next ?? count) - count;
            if (by !== 0) onChange(by);
          }}
        />
      </div>
      <Button aria-label={words.addOne(what)} className={styles.step ?? ""} onClick={() => onChange(1)}>
        +
      </Button>
    </div>
  );
}
