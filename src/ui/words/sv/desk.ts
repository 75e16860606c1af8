import { deskWords as en } from "../en/desk.ts";

export const deskWords: typeof en = en;
