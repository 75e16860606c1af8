import type { InEvery } from "../../record/index.ts";
import { matchWords as en } from "./en.ts";
import { matchWords as sv } from "./sv.ts";

export type MatchWords = typeof en;

/** How near a stand-in comes, and why, by language. */
export const wordsIn: InEvery<MatchWords> = { en, sv };
