import type { InEvery } from "../../record/index.ts";
import { writeupWords as en } from "./en.ts";
import { writeupWords as sv } from "./sv.ts";

export type WriteupWords = typeof en;

/** The words of a write-up by language. */
export const wordsIn: InEvery<WriteupWords> = { en, sv };
