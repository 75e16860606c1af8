import { useState } from "react";
import { currencyCodes } from "../../engine/money/index.ts";
import { addRates, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { Acts, Button, Chooser, DateField, Field, FieldRow } from "../parts/index.ts";
import { useFirstField } from "../parts/use-focus.ts";
import { useSubmit } from "../parts/use-submit.ts";
import { marketsWords } from "../words/markets.ts";
import styles from "./markets.module.css";
import { readRateDraft } from "./view/new-rates.ts";
import { currenciesInUse, usualBase } from "./view/rates.ts";

const words = marketsWords.rates;
const currencies = currencyCodes.map((value) => ({ value, label: value }));

type Props = Readonly<{ asked: number; day?: string | undefined; onClose?: () => void }>;

/** A day's rates by hand: the day, the currency they are quoted for, and a rate for each other one in use. */
export function NewRates({ asked, day, onClose }: Props) {
  const book = useBook((state) => state.book);
  const [date, setDate] = useState<string | null>(day ?? null);
  const [base, setBase] = useState(usualBase(book));
  const [quotes, setQuotes] = useState<ReadonlyMap<string, string>>(new Map());
  const [source, setSource] = useState("");
  const [tried, setTried] = useState(false);
  const form = useFirstField<HTMLFormElement>(asked);
  const codes = [...new Set([...currenciesInUse(book), ...quotes.keys()])].filter((code) => code !== base);
  const read = readRateDraft({ date, base, quotes, source });
  const faultOf = (field: string) => (tried && !read.ok ? read.faults.get(field) : undefined);
  const write = (code: string, text: string) => setQuotes(new Map(quotes).set(code, text));
  const replaces = (book.rates ?? []).some((table) => table.date === date && table.base === base);

  const add = async () => {
    setTried(true);
    if (read.ok && (await doAct(addRates(read.table)))) onClose?.();
  };
  const submit = useSubmit(add);
  return (
    <form className={styles.form} ref={form} onSubmit={submit}>
      <FieldRow>
        <DateField
          label={words.date}
          value={date}
          onValue={setDate}
          fault={faultOf("date")}
          hint={replaces ? words.replaces : undefined}
        />
        <Chooser
          label={words.baseLong}
          value={base}
          options={currencies}
          onValue={(code) => code !== null && setBase(code)}
        />
      </FieldRow>
      <FieldRow>
        {codes.map((code, index) => (
          <Field
            key={code}
            label={words.quote(base, code)}
            keys="decimal"
            value={quotes.get(code) ?? ""}
            onValue={(text) => write(code, text)}
            fault={faultOf(code) ?? (index === 0 ? faultOf("quotes") : undefined)}
          />
        ))}
        <Chooser
          label={words.another}
          value={null}
          options={currencies.filter(({ value }) => value !== base && !codes.includes(value))}
          onValue={(code) => code !== null && write(code, "")}
          fault={codes.length === 0 ? faultOf("quotes") : undefined}
        />
        <Field label={words.source} value={source} onValue={setSource} />
      </FieldRow>
      <Acts>
        <Button kind="primary" type="submit">
          {words.verb}
        </Button>
        {onClose && (
          <Button kind="quiet" onClick={onClose}>
            {marketsWords.cancel}
          </Button>
        )}
      </Acts>
    </form>
  );
}
