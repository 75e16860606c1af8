import type { InEvery } from "../../record/index.ts";
import { supplyWords as en } from "./en.ts";
import { supplyWords as sv } from "./sv.ts";

export type { Ways } from "./en.ts";
export type SupplyWords = typeof en;

/** What supplies are known to be, by language. */
export const wordsIn: InEvery<SupplyWords> = { en, sv };
