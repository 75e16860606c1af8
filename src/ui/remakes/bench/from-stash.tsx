import { type ReactNode, useMemo, useState } from "react";
import type { StashItem } from "../../../engine/supply/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import { Button, Chooser, classes } from "../../parts/index.ts";
import { Swatch } from "../../swatch/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import styles from "../entries.module.css";
import { factsBesideSwatch } from "../view/facts.ts";
import { stashOptions } from "../view/stash-options.ts";

const words = remakeWords.bench;

type Props = Readonly<{ book: Workbook; act: string; onAdd: (stash: string) => void; children: ReactNode }>;

/** An item of the stash to add to a list, with one more thing to say of it. */
export function FromStash({ book, act, onAdd, children }: Props) {
  const options = useMemo(() => stashOptions(book), [book]);
  const [stash, setStash] = useState<string | null>(null);
  const [isMissing, setMissing] = useState(false);
  const add = () => {
    setMissing(stash === null);
    if (stash === null) return;
    onAdd(stash);
    setStash(null);
  };
  return (
    <div className={classes(styles.add, styles.paired)}>
      <Chooser
        label={words.basicsFrom}
        value={stash}
        options={options}
        onValue={setStash}
        fault={isMissing && stash === null && words.choose}
      />
      {children}
      <Button onClick={add}>{act}</Button>
    </div>
  );
}

/** An item of the stash by its swatch, name and facts. */
export const StashThing = ({ item }: Readonly<{ item: StashItem | undefined }>) => (
  <div className={styles.thing}>
    {item && <Swatch item={item} width={56} height={24} />}
    <p>
      {item?.supply.name ?? "—"} <span className={styles.fact}>{item && factsBesideSwatch(item.supply)}</span>
    </p>
  </div>
);
