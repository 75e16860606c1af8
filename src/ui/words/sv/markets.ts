import { marketsWords as en } from "../en/markets.ts";

export const marketsWords: typeof en = en;
