import type { ReactNode } from "react";
import { isGtinSlip } from "../../engine/supply/index.ts";
import { withAddressValue } from "../app/navigate.ts";
import { Button, classes, Field, Tabs } from "../parts/index.ts";
import { words as common, format } from "../words/index.ts";
import { stashWords as words } from "../words/stash.ts";
import styles from "./find-bar.module.css";
import type { AskedState } from "./use-asked.ts";
import type { Found } from "./view/find.ts";

type Props = Readonly<{
  state: AskedState;
  found: Found;
  filters: ReactNode;
  adding: boolean;
  onAdd: () => void;
}>;

function foundText({ ids, apart }: Found): string {
  const count = format.count(ids.size);
  return apart ? words.foundNear(count) : words.found(count, ids.size === 1);
}

/** Search, how much it found, the two layouts, and Add. */
export function FindBar({ state, found, filters, adding, onAdd }: Props) {
  const { asked, setText, clear, isList } = state;
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
        <p role="status">{found.asked ? foundText(found) : ""}</p>
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
            { label: words.views.colour, to: withAddressValue("view", null), current: !isList },
            { label: words.views.list, to: withAddressValue("view", "list"), current: isList },
          ]}
        />
        {!adding && (
          <Button kind="primary" onClick={onAdd}>
            {words.add}
          </Button>
        )}
      </div>
      <div className={styles.filters}>{filters}</div>
    </div>
  );
}
