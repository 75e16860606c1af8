import { frameWords as en } from "../en/frame.ts";

export const frameWords: typeof en = en;
