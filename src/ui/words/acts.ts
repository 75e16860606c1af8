import { actWords as en } from "./en/acts.ts";
import { spoken } from "./spoken.ts";
import { actWords as sv } from "./sv/acts.ts";

/** The names of acts in the search field, in the language in use. */
export const actWords = spoken<typeof en>({ en, sv });
