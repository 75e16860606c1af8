import { Decimal } from "../../../engine/money/index.ts";
import type { Formatter } from "../../words/index.ts";

/** A fraction in hundredths, as decimal text: "0.25" is "25", "0.125" is "12.5". */
export const inHundred = (fraction: string): string => new Decimal(fraction).times(100).toFixed();

/** The same in the reader's own format, with every digit it has. */
export function printedInHundred(fraction: string, format: Formatter): string {
  const text = inHundred(fraction);
  return format.number(text, text.split(".")[1]?.length ?? 0);
}
