import { stashWords as en } from "../en/stash.ts";

export const stashWords: typeof en = en;
