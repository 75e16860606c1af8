import { kitsWords as en } from "../en/kits.ts";

export const kitsWords: typeof en = en;
