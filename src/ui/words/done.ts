import { asDone as en } from "./en/done.ts";
import { spoken } from "./spoken.ts";
import { asDone as sv } from "./sv/done.ts";

/** An act's name as what was just done: "Log the kit …" reads "Logged the kit …". Others stay as they are. */
export const asDone = spoken({ en, sv });
