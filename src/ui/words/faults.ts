import type { Fault } from "../../engine/record/index.ts";
import { spoken } from "./spoken.ts";
import { inSwedish } from "./sv/faults.ts";

/** A notice, or a part of a fault, in the language in use; in English where that language does not know it. */
export const noticeIn = spoken<(english: string) => string>({
  en: (english) => english,
  sv: (english) => inSwedish(english) ?? english,
});

/** A fault, or more than a fault, with its sentences in the language in use. */
export const faultIn = <T extends Fault>(fault: T): T => ({
  ...fault,
  place: noticeIn(fault.place),
  problem: noticeIn(fault.problem),
  remedy: noticeIn(fault.remedy),
});
