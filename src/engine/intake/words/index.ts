import type { InEvery } from "../../record/index.ts";
import { intakeWords as en } from "./en.ts";
import { intakeWords as sv } from "./sv.ts";

export type IntakeWords = typeof en;

/** What lists are headed by, and what is said of their rows, by language. */
export const wordsIn: InEvery<IntakeWords> = { en, sv };
