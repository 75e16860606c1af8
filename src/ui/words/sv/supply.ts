import { supplyWords as en } from "../en/supply.ts";

export const supplyWords: typeof en = en;
