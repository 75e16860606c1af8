import type { InEvery } from "../../record/index.ts";
import { colourWords as en } from "./en.ts";
import { colourWords as sv } from "./sv.ts";

export type ColourWords = typeof en;

/** What colours and their differences are called, by language. */
export const wordsIn: InEvery<ColourWords> = { en, sv };
