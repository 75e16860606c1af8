import { remakeWords as en } from "../en/remakes.ts";

export const remakeWords: typeof en = en;
