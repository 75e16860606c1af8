import { kitsWords as en } from "./en/kits.ts";
import { spoken } from "./spoken.ts";
import { kitsWords as sv } from "./sv/kits.ts";

/** The words of Kits, in the language in use. */
export const kitsWords = spoken<typeof en>({ en, sv });
