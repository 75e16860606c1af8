import * as z from "zod/mini";
import { DateText, maybe, Text, UnsignedDecimal } from "../record/index.ts";
import { isCurrency } from "./currencies.ts";

/** An ISO 4217 currency code. */
export const CurrencyCode = z
  .string()
  .check(z.refine(isCurrency, 'not a currency code; write one of ISO 4217, such as "EUR"'));

/** An amount of money, exact: `amount` is decimal text without sign or exponent. */
export const MoneySchema = z.looseObject({ amount: UnsignedDecimal, currency: CurrencyCode });

/** Exchange rates of one day: 1 `base` is `quotes[code]` of each other currency; null: no rate that day. */
export const RateTableSchema = z.looseObject({
  date: DateText,
  base: CurrencyCode,
  quotes: z.record(
    CurrencyCode,
    z.nullable(
      UnsignedDecimal.check(
        z.refine(
          (text: string) => !/^[0.]+$/.test(text),
          "a rate of nought; write what 1 of the base is worth",
        ),
      ),
    ),
  ),
  source: maybe(Text),
});

export type Money = Readonly<{ amount: string; currency: string }>;
export type RateTable = z.infer<typeof RateTableSchema>;
