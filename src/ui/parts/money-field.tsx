import { useRef } from "react";
import { currencyCodes, type Money, minorDigits } from "../../engine/money/index.ts";
import { languages } from "../../engine/record/index.ts";
import { format, words } from "../words/index.ts";
import styles from "./field.module.css";
import { type FieldBasics, FieldShell, useFieldIds } from "./field-shell.tsx";
import { currencyNamed, readMoney } from "./read/amount.ts";
import { useReading } from "./use-reading.tsx";

type Props = FieldBasics &
  Readonly<{
    /** `amount` is decimal text, or null while there is none. */
    value: Readonly<{ amount: string | null; currency: string }>;
    onValue: (value: Readonly<{ amount: string | null; currency: string }>) => void;
    /** The currencies to choose from; one alone is shown as a word. All of ISO 4217 when left out. */
    currencies?: readonly string[];
  }>;

/** Where a sign such as "kr" or "€" is known from. */
const locales = [...languages, format.locale];

/**
 * An amount with its currency. Comma and point are both taken; a doubtful amount is asked about. A currency written
 * beside the amount is the one chosen.
 */
export function MoneyField({ currencies = currencyCodes, ...props }: Props) {
  const { value, onValue } = props;
  const named = useRef(value.currency);
  const read = (text: string) => {
    const own = readMoney(text, value.currency, minorDigits(value.currency), locales);
    const other = own.kind === "fault" ? currencyNamed(text, currencies) : null;
    named.current = other ?? value.currency;
    return other ? readMoney(text, other, minorDigits(other), locales) : own;
  };
  const reading = useReading({
    value: value.amount,
    onValue: (amount) => onValue({ amount, currency: amount === null ? value.currency : named.current }),
    read,
    print: (amount) => printed({ amount, currency: value.currency }),
    ask: words.amount.ask,
    fault: props.fault,
  });
  const { id, control } = useFieldIds({ ...props, fault: reading.fault });
  return (
    <FieldShell {...props} id={id} fault={reading.fault} asks={reading.asks}>
      <div className={styles.side}>
        <input
          {...control}
          className={styles.line}
          inputMode="decimal"
          autoComplete="off"
          value={reading.text}
          onChange={(event) => reading.write(event.currentTarget.value)}
          onBlur={reading.leave}
        />
        {currencies.length === 1 ? (
          <span className={styles.unit}>{currencies[0]}</span>
        ) : (
          <select
            className={`${styles.line} ${styles.currency}`}
            aria-label={`${props.label}, ${words.amount.currency}`}
            value={value.currency}
            onChange={(event) => onValue({ ...value, currency: event.currentTarget.value })}
          >
            {currencies.map((code) => (
              <option key={code}>{code}</option>
            ))}
          </select>
        )}
      </div>
    </FieldShell>
  );
}

/** In the reader's format, with no fewer decimals than were written: 1.234 EUR must not turn into 1.23. */
function printed(money: Money): string {
  const written = money.amount.split(".")[1]?.length ?? 0;
  return written <= minorDigits(money.currency)
    ? format.amount(money)
    : format.number(money.amount, written, true);
}
