import { useState } from "react";
import type { Estimate, Line, Settled } from "../../../engine/price/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { settle, unsettle } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Button, Choice, Field, MoneyField, Tick } from "../../parts/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { choicesFor, settledFor, settledOf } from "../view/go-with.ts";
import type { MarketPrices } from "../view/prices.ts";
import styles from "./prices.module.css";

const text = kitsWords.prices;

type Props = Readonly<{ kit: Kit; line: Line; here: MarketPrices }>;

/** Going with another figure than the first that applies: another way to it, or one's own. */
export function GoWith({ kit, line, here }: Props) {
  const estimate = here.rows.find((row) => row.line.id === line.id)?.estimate;
  return (
    <section aria-label={text.goWith}>
      <h3>{text.goWith}</h3>
      <p className={styles.fact}>{text.goWithText(here.market.name)}</p>
      <div className={styles.goWith}>
        <Ways kit={kit} line={line} here={here} kind="list" options={estimate?.listOptions ?? []} />
        <Ways kit={kit} line={line} here={here} kind="street" options={estimate?.streetOptions ?? []} />
      </div>
    </section>
  );
}

type WaysProps = Props & Readonly<{ kind: "list" | "street"; options: readonly Estimate[] }>;

function Ways({ kit, line, here, kind, options }: WaysProps) {
  const settled = settledFor(line, kind, here.market.id);
  const start = settled?.price ? "own" : (settled?.method ?? "");
  const [picked, setPicked] = useState<string>(start);
  const [price, setPrice] = useState({
    amount: settled?.price?.amount ?? null,
    currency: settled?.price?.currency ?? here.market.currency,
  });
  const [reason, setReason] = useState(settled?.reason ?? "");
  const [everywhere, setEverywhere] = useState(settled !== null && !settled.market);
  const [tried, setTried] = useState(false);

  const keep = async () => {
    setTried(true);
    if (picked === "own" && price.amount === null) return;
    const market = everywhere ? null : here.market.id;
    const next: Settled | null = settledOf({ kind, market, picked, price, reason });
    if (next) await doAct(settle(kit, line, next));
    else if (settled) await doAct(unsettle(kit, line, settled));
    setTried(false);
  };
  const isOwn = picked === "own";
  return (
    <div className={styles.ways}>
      <Choice
        label={kind === "list" ? text.forList : text.forShop}
        value={picked}
        options={choicesFor(options, kind)}
        onValue={setPicked}
      />
      {isOwn && (
        <MoneyField
          label={text.ownPrice}
          value={price}
          onValue={setPrice}
          fault={tried && price.amount === null ? text.ownMissing : undefined}
        />
      )}
      {picked !== "" && (
        <>
          <Field label={text.reason} value={reason} onValue={setReason} />
          <Tick label={text.everywhere} value={everywhere} onValue={setEverywhere} />
        </>
      )}
      <div>
        <Button onClick={keep}>{text.goVerb}</Button>
      </div>
    </div>
  );
}
