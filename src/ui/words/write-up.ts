import { writeUpWords as en } from "./en/write-up.ts";
import { spoken } from "./spoken.ts";
import { writeUpWords as sv } from "./sv/write-up.ts";

/** The words of the choice of a text's language, in the language in use. */
export const writeUpWords = spoken<typeof en>({ en, sv });
