import { useMemo, useState } from "react";
import { emptyWorkbook } from "../../engine/workbook/index.ts";
import { recordsIn, useBook } from "../../store/index.ts";
import { useOffer } from "../app/acts.ts";
import { Button, Dialog, Section } from "../parts/index.ts";
import { keepSafeWords } from "../words/keep-safe.ts";
import styles from "./keep-safe.module.css";
import { replaceWith } from "./replace.ts";

const words = keepSafeWords.clear;

/** Empties the notebook, with a copy offered first and Undo after. */
export function Clear({ onSave }: Readonly<{ onSave: () => Promise<void> }>) {
  const book = useBook((state) => state.book);
  const empty = useBook((state) => state.empty);
  const [asks, setAsks] = useState(false);
  useOffer(useMemo(() => (empty ? [] : [{ name: words.act, run: () => setAsks(true) }]), [empty]));
  const close = () => setAsks(false);
  const clear = () => {
    close();
    void replaceWith(emptyWorkbook(), words.label, words.done);
  };
  const saveThenClear = async () => {
    await onSave(); // its photos are read until then
    clear();
  };
  return (
    <Section title={words.title}>
      <p className={styles.text}>{words.text}</p>
      <Button notNow={empty && words.nothing} onClick={() => setAsks(true)}>
        {words.act}
      </Button>
      <Dialog
        open={asks}
        title={words.dialog}
        onClose={close}
        acts={
          <>
            <Button kind="primary" onClick={() => void saveThenClear()}>
              {words.withCopy}
            </Button>
            <Button onClick={clear}>{words.without}</Button>
            <Button onClick={close}>{words.keep}</Button>
          </>
        }
      >
        <p>{words.holds(recordsIn(book))}</p>
        <p>{words.traces}</p>
      </Dialog>
    </Section>
  );
}
