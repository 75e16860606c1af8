import { worthWords as en } from "../en/worth.ts";

export const worthWords: typeof en = en;
