import { useBook } from "../../../store/index.ts";
import { FieldRow, Select } from "../../parts/index.ts";
import { importWords as words } from "../../words/import.ts";
import { format } from "../../words/index.ts";
import { currenciesOf } from "../view/options.ts";
import type { Bring, Reading } from "./use-bring.ts";
import { currencyOptions, delimiterOptions, familyOptions, headOptions } from "./view/options.ts";

type Props = Readonly<{ bring: Bring; reading: Reading }>;

/** What holds for the whole list: its sheet, what parts its cells, where its heads are, and what rows leave unsaid. */
export function Controls({ bring, reading }: Props) {
  const book = useBook((state) => state.book);
  const { opened, sheet, mapping } = reading;
  if (!mapping) return null;
  const head = mapping.head === null ? "" : String(mapping.head);
  return (
    <FieldRow>
      {opened.sheets.length > 1 && (
        <Select
          label={words.sheet}
          value={String(sheet)}
          options={opened.sheets.map(({ name, rows }, at) => ({
            value: String(at),
            label: words.sheetRows(name, format.count(rows), rows === 1),
          }))}
          onValue={(value) => void bring.chooseSheet(reading, Number(value))}
        />
      )}
      {opened.delimiter !== null && (
        <Select
          label={words.delimiter}
          value={opened.delimiter}
          options={delimiterOptions}
          onValue={(value) => void bring.partBy(reading, value)}
        />
      )}
      <Select
        label={words.head}
        value={head}
        options={headOptions(opened.sheets[sheet]?.rows ?? 0)}
        onValue={(value) => void bring.chooseHead(reading, value === "" ? null : Number(value))}
      />
      <Select
        label={words.family}
        hint={words.familyHint}
        value={mapping.family ?? ""}
        options={familyOptions}
        onValue={(value) => void bring.map(reading, { ...mapping, family: value === "" ? null : value })}
      />
      {mapping.columns.includes("paid") && (
        <Select
          label={words.currency}
          hint={words.currencyHint}
          value={mapping.currency}
          options={currencyOptions(currenciesOf(book, mapping.currency))}
          onValue={(currency) => void bring.map(reading, { ...mapping, currency })}
        />
      )}
    </FieldRow>
  );
}
