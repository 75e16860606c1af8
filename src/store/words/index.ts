/** Words of the store: the names of acts, and what is said where something cannot be kept. */
import type { InEvery } from "../../engine/record/index.ts";
import { language } from "../device.ts";
import type { storeWords as en } from "./en.ts";

const words: InEvery<() => Promise<Readonly<{ storeWords: typeof en }>>> = {
  en: () => import("./en.ts"),
  sv: () => import("./sv.ts"),
};

/**
 * The words in the language in use, the only ones that are loaded. An act keeps, in the journal, the name it was
 * done under.
 */
export const { storeWords } = await words[language]();
