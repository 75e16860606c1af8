import { worthWords as en } from "./en/worth.ts";
import { spoken } from "./spoken.ts";
import { worthWords as sv } from "./sv/worth.ts";

/** The words of Worth, in the language in use. */
export const worthWords = spoken<typeof en>({ en, sv });
