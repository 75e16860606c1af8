/** Words: every text of the frame and the parts, and the one way to print numbers, money and dates. */
import { frameWords as en } from "./en/frame.ts";
import { spoken } from "./spoken.ts";
import { frameWords as sv } from "./sv/frame.ts";

export { type Formatter, format, formatter, type MoneyPieces } from "./format.ts";

/** The words of the frame and the parts, in the language in use. */
export const words = spoken<typeof en>({ en, sv });
