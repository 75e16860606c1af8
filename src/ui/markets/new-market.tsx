import { useState } from "react";
import { currencyCodes } from "../../engine/money/index.ts";
import { addMarket, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { Chooser, Field } from "../parts/index.ts";
import { foldWords } from "../words/fold-words.ts";
import { marketsWords } from "../words/markets.ts";
import { NewThing } from "./new-thing.tsx";
import { marketId } from "./view/names.ts";

const words = marketsWords.markets;

/** Asks for what a market cannot be without; its border is filled in once it stands. The first is where one lives. */
export function NewMarket({ asked, onClose }: Readonly<{ asked: number; onClose?: () => void }>) {
  const markets = useBook((state) => state.book.markets) ?? [];
  const home = useBook((state) => state.book.home?.market);
  const [name, setName] = useState("");
  const [currency, setCurrency] = useState("EUR");
  const [tried, setTried] = useState(false);
  const wanted = name.trim();
  const isTwice = markets.some((market) => foldWords(market.name) === foldWords(wanted));
  const fault = wanted === "" ? words.nameMissing : isTwice ? words.twice(wanted) : undefined;

  const add = async () => {
    setTried(true);
    if (fault) return;
    const market = { id: marketId(wanted, markets), name: wanted, currency };
    if (await doAct(addMarket(market, !home && markets.length === 0))) onClose?.();
  };
  return (
    <NewThing asked={asked} verb={words.verb} onAdd={add} {...(onClose && { onClose })}>
      <Field label={words.name} value={name} onValue={setName} fault={tried ? fault : undefined} />
      <Chooser
        label={words.currency}
        value={currency}
        options={currencyCodes.map((value) => ({ value, label: value }))}
        onValue={(code) => code !== null && setCurrency(code)}
      />
    </NewThing>
  );
}
