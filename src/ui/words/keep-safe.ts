import { keepSafeWords as en } from "./en/keep-safe.ts";
import { spoken } from "./spoken.ts";
import { keepSafeWords as sv } from "./sv/keep-safe.ts";

/** The words of Keep safe, in the language in use. */
export const keepSafeWords = spoken<typeof en>({ en, sv });
