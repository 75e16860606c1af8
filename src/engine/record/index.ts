/**
 * Record: the field kinds that every record of a workbook is made of, and the engine's way of saying
 * that something is at fault.
 *
 * Dates    ISO 8601 calendar dates `YYYY-MM-DD`, periods `YYYY-MM`, as text.
 * Numbers  money, rates and fractions are decimal text; widths, weights and counts are JSON numbers.
 * Absent   a field left out and a field that is null mean the same; unknown fields are kept.
 */
export { daysBetween, isDate, isPeriod } from "./dates.ts";
export {
  Count,
  DateText,
  Fraction,
  FractionToOne,
  Id,
  listOf,
  maybe,
  PeriodText,
  PositiveNumber,
  Text,
  UnsignedDecimal,
  WholeFromOne,
} from "./fields.ts";
export { figureIn, type InEvery, type Language, languages } from "./language.ts";
export { type Fault, fail, type Notice, type Outcome, ok } from "./outcome.ts";
