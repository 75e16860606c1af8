/** Words of the store: the names of acts, and what is said where something cannot be kept. */
import { language } from "../device.ts";
import { storeWords as en } from "./en.ts";
import { storeWords as sv } from "./sv.ts";

/** The words in the language in use. An act keeps, in the journal, the name it was done under. */
export const storeWords: typeof en = { en, sv }[language];
