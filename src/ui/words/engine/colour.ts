import * as engine from "../../../engine/colour/index.ts";
import { language } from "../../../store/index.ts";

// What the engine says, in the language of this page: screens take these from here, and cannot forget it. One file
// for each of its folders, so that a screen loads no more of the engine than it asks.

/** The English name as well where the page speaks another language: things are found by it too. */
export const englishName = (lab: engine.Lab): string | null =>
  language === "en" ? null : engine.plainName(lab, "en");

export const plainName = (lab: engine.Lab): string => engine.plainName(lab, language);

export const missWords = (kit: engine.Lab, standIn: engine.Lab): readonly string[] =>
  engine.missWords(kit, standIn, language);
