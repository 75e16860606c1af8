import type { MouseEvent } from "react";
import { currencyCodes } from "../../engine/money/index.ts";
import type { ImportRule, Market } from "../../engine/worth/index.ts";
import { editMarket, removeMarket, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { thenToHeading } from "../kits/focus-heading.ts";
import { Acts, Button, Chooser, FieldRow } from "../parts/index.ts";
import { KeptField, readNeeded } from "../supply-form/index.ts";
import { marketsWords } from "../words/markets.ts";
import styles from "./markets.module.css";
import { RuleForm } from "./rule-form.tsx";
import { pricesFound } from "./view/lists.ts";
import { withRule } from "./view/rules.ts";

const words = marketsWords.markets;

type Props = Readonly<{ market: Market; onGone: () => void }>;

/** Every field of a market, each kept when it is left. */
export function MarketForm({ market, onGone }: Props) {
  const book = useBook((state) => state.book);
  const keep = (path: readonly string[], value: unknown) => void doAct(editMarket(market, path, value), null);
  const rules = market.import ?? [];
  const keepRules = (next: readonly ImportRule[]) => keep(["import"], next);
  const remove = (event: MouseEvent<HTMLElement>) => {
    const shops = (book.shops ?? []).filter((shop) => shop.market === market.id).length;
    const told = words.removed(market.name, shops, pricesFound(book, { market: market.id }));
    return thenToHeading(event.currentTarget, () => doAct(removeMarket(book, market), told), onGone);
  };
  return (
    <div className={styles.form}>
      <FieldRow>
        <KeptField
          label={words.name}
          value={market.name}
          read={readNeeded(words.nameMissing)}
          onKeep={(name) => keep(["name"], name)}
        />
        <Chooser
          label={words.currency}
          value={market.currency}
          options={currencyCodes.map((value) => ({ value, label: value }))}
          onValue={(code) => code !== null && keep(["currency"], code)}
        />
      </FieldRow>
      {rules.map((rule, index) => (
        <RuleForm
          // biome-ignore lint/suspicious/noArrayIndexKey: rules have no id; their place is what names them
          key={index}
          market={market}
          rule={rule}
          number={index + 1}
          onChange={(change) => keepRules(withRule(market, index, change))}
          onRemove={() => keepRules(rules.filter((other) => other !== rule))}
        />
      ))}
      {rules.length > 1 && <p className={styles.fact}>{marketsWords.rule.order}</p>}
      <Acts>
        <Button onClick={() => keepRules([...rules, { from: "any" }])}>{marketsWords.rule.add}</Button>
        <Button onClick={(event) => void remove(event)}>{words.removeVerb}</Button>
      </Acts>
    </div>
  );
}
