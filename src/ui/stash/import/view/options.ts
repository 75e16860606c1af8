import { type Field, fields, type Mapping, manyTimes } from "../../../../engine/intake/index.ts";
import { currencyCodes } from "../../../../engine/money/index.ts";
import { type Family, families } from "../../../../engine/supply/index.ts";
import { type Delimiter, delimiters } from "../../../../workers/index.ts";
import { importWords as words } from "../../../words/import.ts";
import { format } from "../../../words/index.ts";
import { supplyWords } from "../../../words/supply.ts";

type Options<Value extends string> = readonly Readonly<{ value: Value; label: string }>[];

/** What a column can be, and that it is left out. */
export const fieldOptions: Options<Field | ""> = [
  { value: "", label: words.leaveOut },
  ...fields.map((field) => ({ value: field, label: words.fields[field] })),
];

export const delimiterOptions: Options<Delimiter> = delimiters.map((value) => ({
  value,
  label: words.delimiters[value],
}));

/** Rows that may have the heads. */
const headsWithin = 10;

export const headOptions = (rows: number): Options<string> => [
  { value: "", label: words.headNone },
  ...Array.from({ length: Math.min(rows, headsWithin) }, (_, row) => ({
    value: String(row),
    label: words.headRow(format.count(row + 1)),
  })),
];

export const familyOptions: Options<Family | ""> = [
  { value: "", label: words.familyOpen },
  ...families
    .filter((family) => family !== "other")
    .map((family) => ({ value: family, label: supplyWords.families[family] })),
];

/** Currencies with the likely ones first. */
export const currencyOptions = (likely: readonly string[]): Options<string> =>
  [...new Set([...likely, ...currencyCodes])].map((value) => ({ value, label: value }));

/** The mapping with a column read otherwise: what can stand over one column only moves there from the other. */
export function withColumn(mapping: Mapping, column: number, field: Field | null): Mapping {
  const columns = mapping.columns.map((other, at) => {
    if (at === column) return field;
    return field !== null && other === field && !manyTimes.has(field) ? null : other;
  });
  return { ...mapping, columns };
}
