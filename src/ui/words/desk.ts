import { deskWords as en } from "./en/desk.ts";
import { spoken } from "./spoken.ts";
import { deskWords as sv } from "./sv/desk.ts";

/** The words of the Desk, in the language in use. */
export const deskWords = spoken<typeof en>({ en, sv });
