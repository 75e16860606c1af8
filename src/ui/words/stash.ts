import { stashWords as en } from "./en/stash.ts";
import { spoken } from "./spoken.ts";
import { stashWords as sv } from "./sv/stash.ts";

/** The words of the Stash, in the language in use. */
export const stashWords = spoken<typeof en>({ en, sv });
