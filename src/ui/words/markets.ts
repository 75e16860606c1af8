import { marketsWords as en } from "./en/markets.ts";
import { spoken } from "./spoken.ts";
import { marketsWords as sv } from "./sv/markets.ts";

/** The words of Markets, in the language in use. */
export const marketsWords = spoken<typeof en>({ en, sv });
