import { useState } from "react";
import { addShop, newId, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { Acts, Button, Field, FieldRow, Select } from "../parts/index.ts";
import { marketsWords } from "../words/markets.ts";
import styles from "./markets.module.css";

const words = marketsWords.shops;

/** Asks for what a shop cannot be without. */
export function NewShop({ onClose }: Readonly<{ onClose: () => void }>) {
  const book = useBook((state) => state.book);
  const markets = book.markets ?? [];
  const [name, setName] = useState("");
  const [market, setMarket] = useState(book.home?.market ?? markets[0]?.id ?? "");
  const [tried, setTried] = useState(false);
  const add = async () => {
    setTried(true);
    if (name.trim() === "") return;
    const shop = { id: newId("sh-", book.shops), name: name.trim(), market };
    if (await doAct(addShop(shop))) onClose();
  };
  return (
    <div className={styles.form}>
      <FieldRow>
        <Field
          label={words.name}
          value={name}
          onValue={setName}
          onEnter={() => void add()}
          fault={tried && name.trim() === "" ? words.nameMissing : undefined}
          autoFocus
        />
        <Select
          label={words.market}
          value={market}
          options={markets.map((one) => ({ value: one.id, label: one.name }))}
          onValue={setMarket}
        />
      </FieldRow>
      <Acts>
        <Button kind="primary" onClick={() => void add()}>
          {words.verb}
        </Button>
        <Button kind="quiet" onClick={onClose}>
          {marketsWords.cancel}
        </Button>
      </Acts>
    </div>
  );
}
