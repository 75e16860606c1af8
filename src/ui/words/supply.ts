import { supplyWords as en } from "./en/supply.ts";
import { spoken } from "./spoken.ts";
import { supplyWords as sv } from "./sv/supply.ts";

/** The words of a supply's form, in the language in use. */
export const supplyWords = spoken<typeof en>({ en, sv });
