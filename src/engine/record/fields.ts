import * as z from "zod/mini";
import { isDate, isPeriod } from "./dates.ts";

// A message reads "what is wrong; what would be right": the check splits it there.

/** Any text, also an empty one. */
export const Text = z.string();

/** An id: text that is not empty and has no `/`, which joins ids (`kit/line`). */
export const Id = z.string().check(
  z.minLength(1, "the id is empty; give it at least one character"),
  z.refine((text: string) => !text.includes("/"), "the id has a slash in it; leave the slash out"),
);

/** A calendar date, `YYYY-MM-DD`. */
export const DateText = z
  .string()
  .check(z.refine(isDate, "there is no such date; write an existing day as YYYY-MM-DD"));

/** A month, `YYYY-MM`. */
export const PeriodText = z.string().check(z.refine(isPeriod, "there is no such month; write it as YYYY-MM"));

const unsigned = /^\d+(\.\d+)?$/;

/** A decimal without sign or exponent, as text: money amounts and rates. */
export const UnsignedDecimal = z
  .string()
  .check(
    z.regex(unsigned, 'not a plain decimal without sign or exponent; write digits as text, such as "12.50"'),
  );

/** A fraction from 0 up, as decimal text ("0.25" is 25 in 100). */
export const Fraction = UnsignedDecimal;

/** A fraction from 0 to 1, as decimal text. */
export const FractionToOne = UnsignedDecimal.check(
  // Number is exact enough to tell "above one": the nearest double above 1 is 1 + 2^-52.
  z.refine(
    (text: string) => !unsigned.test(text) || Number(text) <= 1,
    "more than 1; write a fraction from 0 to 1",
  ),
);

/** A count from 0 up. */
export const Count = z.int().check(z.minimum(0, "below nought; write a whole number from 0 up"));

/** A whole number from 1 up. */
export const WholeFromOne = z.int().check(z.minimum(1, "less than one; write a whole number from 1 up"));

/** A measure: millimetres, grams per square metre, millilitres. */
export const PositiveNumber = z.number().check(z.gt(0, "not above nought; write a number above 0"));

/** A field that may be left out; null means the same. */
export const maybe = z.nullish;

/** A list that may be empty or left out. */
export const listOf = <T extends z.ZodMiniType>(item: T) => z.nullish(z.array(item));
