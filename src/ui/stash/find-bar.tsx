import type { ReactNode } from "react";
import { isGtinSlip } from "../../engine/supply/index.ts";
import { withAddressValue } from "../app/navigate.ts";
import { Button, classes, Field, Select, Tabs } from "../parts/index.ts";
import { findWords } from "../words/find.ts";
import { words as common } from "../words/index.ts";
import { stashWords as words } from "../words/stash.ts";
import { startChoosing, useChoosing } from "./choosing.ts";
import styles from "./find-bar.module.css";
import type { AskedState } from "./use-asked.ts";
import type { Found } from "./view/find.ts";
import { foundText } from "./view/found-text.ts";
import { orders } from "./view/order.ts";

type Props = Readonly<{
  state: AskedState;
  found: Found;
  /** The name of the thing whose colour is asked for. */
  nearName: string | null;
  filters: ReactNode;
  adding: boolean;
  onAdd: () => void;
}>;

/** Search, how much it found, the two layouts, and Add. */
export function FindBar({ state, found, nearName, filters, adding, onAdd }: Props) {
  const { asked, setText, clear, isList } = state;
  const choosing = useChoosing(({ on }) => on);
  return (
    <div className={classes(styles.bar, adding && styles.afterEntry)}>
      <div className={styles.search}>
        <Field
          kind="search"
          label={words.search}
          hint={asked.text === "" ? words.searchHint : isGtinSlip(asked.text) && common.find.slip}
          value={asked.text}
          onValue={setText}
        />
      </div>
      <div className={styles.found}>
        <p role="status">{found.asked ? foundText(found, nearName) : ""}</p>
        {found.asked && (
          <Button kind="quiet" onClick={clear}>
            {words.clear}
          </Button>
        )}
      </div>
      <div className={styles.views}>
        <Tabs
          kind="view"
          label={words.viewsLabel}
          tabs={[
            { label: words.views.colour, to: colourAddress(asked.near), current: !isList },
            { label: words.views.list, to: withAddressValue("view", "list"), current: isList },
          ]}
        />
        {!choosing && (
          <Button kind="quiet" onClick={startChoosing}>
            {findWords.choose}
          </Button>
        )}
        {!adding && (
          <Button kind="primary" onClick={onAdd}>
            {words.add}
          </Button>
        )}
      </div>
      <div className={styles.filters}>{filters}</div>
      {isList && <SortedBy state={state} found={found} />}
    </div>
  );
}

/** What is close to a thing is a list unless something else is said. */
const colourAddress = (near: string | null): string =>
  withAddressValue("view", near === null ? null : "colour");

function SortedBy({ state: { order, setSort }, found }: Pick<Props, "state" | "found">) {
  const usual = found.apart ? "near" : "name";
  const offered = orders.filter((one) => one !== "near" || found.apart !== null);
  const value = order !== null && offered.includes(order) ? order : usual;
  return (
    <div className={styles.sort}>
      <Select
        label={findWords.sort}
        value={value}
        options={offered.map((one) => ({ value: one, label: findWords.orders[one] }))}
        onValue={(picked) => setSort(picked === usual ? null : picked)}
      />
    </div>
  );
}
