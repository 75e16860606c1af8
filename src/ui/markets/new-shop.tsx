import { useState } from "react";
import { addShop, newId, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { Field, Select } from "../parts/index.ts";
import { marketsWords } from "../words/markets.ts";
import { NewThing } from "./new-thing.tsx";

const words = marketsWords.shops;

/** Asks for what a shop cannot be without. */
export function NewShop({ asked, onClose }: Readonly<{ asked: number; onClose: () => void }>) {
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
    <NewThing asked={asked} verb={words.verb} onAdd={add} onClose={onClose}>
      <Field
        label={words.name}
        value={name}
        onValue={setName}
        fault={tried && name.trim() === "" ? words.nameMissing : undefined}
      />
      <Select
        label={words.market}
        value={market}
        options={markets.map((one) => ({ value: one.id, label: one.name }))}
        onValue={setMarket}
      />
    </NewThing>
  );
}
