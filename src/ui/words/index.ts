/** Words: every text of the frame and the parts, and the one way to print numbers, money and dates. */
import { en, type Words } from "./en.ts";

/** The words in use. English is the only language so far. */
export const words: Words = en;
export { type Formatter, format, formatter, type MoneyPieces } from "./format.ts";
export type { Words };
