import type { InEvery } from "../../record/index.ts";
import { intakeWords as en } from "./en.ts";
import { ownWords as ownEn } from "./own-en.ts";
import { ownWords as ownSv } from "./own-sv.ts";
import { intakeWords as sv } from "./sv.ts";

export type IntakeWords = typeof en;

/** What lists are headed by, and what is said of their rows, by language. */
export const wordsIn: InEvery<IntakeWords> = { en, sv };

/** What our own list is headed by, and the words in its cells, by language. */
export const ownWordsIn: InEvery<typeof ownEn> = { en: ownEn, sv: ownSv };
