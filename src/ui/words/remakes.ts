import { remakeWords as en } from "./en/remakes.ts";
import { spoken } from "./spoken.ts";
import { remakeWords as sv } from "./sv/remakes.ts";

/** The words of Remakes, in the language in use. */
export const remakeWords = spoken<typeof en>({ en, sv });
