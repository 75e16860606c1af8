import { keepSafeWords as en } from "../en/keep-safe.ts";

export const keepSafeWords: typeof en = en;
