import type { Fault } from "../../engine/record/index.ts";
import { language } from "../../store/index.ts";

type Said = (english: string) => string | null;

/** What puts the engine's English into the language in use; nothing does until its words are there. */
const words: { said: Said } = { said: () => null };

// Faults are rare, and their words many: they come after the page, and only to those who read that language.
if (language === "sv") {
  import("./sv/faults.ts").then(
    ({ inSwedish }) => {
      words.said = inSwedish;
    },
    () => {}, // not to be had just now: faults are said in English
  );
}

/** A notice, or a part of a fault, in the language in use; in English where that language does not know it. */
export const noticeIn = (english: string): string => words.said(english) ?? english;

/** A fault, or more than a fault, with its sentences in the language in use. */
export const faultIn = <T extends Fault>(fault: T): T => ({
  ...fault,
  place: noticeIn(fault.place),
  problem: noticeIn(fault.problem),
  remedy: noticeIn(fault.remedy),
});
