import type { InEvery } from "../../record/index.ts";
import { priceWords as en } from "./en.ts";
import { priceWords as sv } from "./sv.ts";

export type PriceWords = typeof en;

/** How a price came about, by language. */
export const wordsIn: InEvery<PriceWords> = { en, sv };
