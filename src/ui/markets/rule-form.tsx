import type { ImportRule, Market } from "../../engine/worth/index.ts";
import { useBook } from "../../store/index.ts";
import { percentText, readPercent } from "../kits/view/line-fields.ts";
import { Button, Choice, FieldRow, Tick } from "../parts/index.ts";
import { KeptField } from "../supply-form/index.ts";
import { marketsWords } from "../words/markets.ts";
import { KeptMoney } from "./kept-money.tsx";
import styles from "./markets.module.css";
import { originsAfter } from "./view/rules.ts";

const words = marketsWords.rule;

type Props = Readonly<{
  market: Market;
  rule: ImportRule;
  number: number;
  onChange: (change: Partial<ImportRule>) => void;
  onRemove: () => void;
}>;

/** What a border charges for parcels from some markets, or from any other. */
export function RuleForm({ market, rule, number, onChange, onRemove }: Props) {
  return (
    <fieldset className={styles.rule}>
      <legend className={styles.ruleTitle}>{words.title(number)}</legend>
      <Origins market={market} rule={rule} onChange={onChange} />
      <Charges market={market} rule={rule} onChange={onChange} />
      <Choice
        label={words.basis}
        value={rule.valueBasis ?? "goods"}
        options={[
          { value: "goods", label: words.goods },
          { value: "goods-and-postage", label: words.both },
        ]}
        onValue={(valueBasis) => onChange({ valueBasis })}
      />
      <Button kind="quiet" onClick={onRemove}>
        {words.remove}
      </Button>
    </fieldset>
  );
}

type PartProps = Pick<Props, "market" | "rule" | "onChange">;

function Origins({ market, rule, onChange }: PartProps) {
  const markets = useBook((state) => state.book.markets) ?? [];
  const others = markets.filter(({ id }) => id !== market.id);
  const named = Array.isArray(rule.from) ? rule.from : null;
  return (
    <>
      <Choice
        label={words.from}
        value={named ? "these" : "any"}
        options={[
          { value: "any", label: words.any },
          { value: "these", label: words.these },
        ]}
        onValue={(which) => onChange({ from: which === "any" ? "any" : [] })}
      />
      {named && (
        <div className={styles.ticks}>
          {others.map(({ id, name }) => (
            <Tick
              key={id}
              label={name}
              value={named.includes(id)}
              onValue={(on) => onChange({ from: originsAfter(rule, others, id, on) })}
            />
          ))}
        </div>
      )}
    </>
  );
}

function Charges({ market, rule, onChange }: PartProps) {
  const money = { currency: market.currency, currencies: [market.currency] };
  const percent = { unit: marketsWords.percent, keys: "decimal" as const, read: readPercent };
  return (
    <FieldRow>
      <KeptField
        {...percent}
        label={words.duty}
        value={percentText(rule.dutyRate)}
        onKeep={(dutyRate) => onChange({ dutyRate })}
      />
      <KeptMoney
        {...money}
        label={words.dutyFree}
        hint={words.dutyFreeHint}
        money={rule.dutyFreeUpTo}
        onKeep={(dutyFreeUpTo) => onChange({ dutyFreeUpTo })}
      />
      <KeptField
        {...percent}
        label={words.tax}
        value={percentText(rule.taxRate)}
        onKeep={(taxRate) => onChange({ taxRate })}
      />
      <KeptMoney
        {...money}
        label={words.taxFree}
        hint={words.dutyFreeHint}
        money={rule.taxFreeUpTo}
        onKeep={(taxFreeUpTo) => onChange({ taxFreeUpTo })}
      />
      <KeptMoney
        {...money}
        label={words.fee}
        hint={words.feeHint}
        money={rule.handlingFee}
        onKeep={(handlingFee) => onChange({ handlingFee })}
      />
    </FieldRow>
  );
}
