import type { Language } from "../record/index.ts";
import type { Relation } from "../supply/index.ts";
import { unitsPerOne } from "./likeness.ts";
import { fairFrom, gapBelow, nearFrom } from "./table.ts";
import { wordsIn } from "./words/index.ts";

/** How near a stand-in comes, in one word. `gap`: nothing to stand in with. */
export type Nearness = "same" | "twin" | "same-colour" | "near" | "fair" | "stretch" | "gap";

const at = (threshold: number): number => Math.round(threshold * unitsPerOne);
export const gapUnits = at(gapBelow);

/** @param units likeness in ten-thousandths. A shared colour alone does not make a gap a stand-in. */
export function nearnessOf(units: number, relation: Relation | null): Nearness {
  if (relation === "same" || relation === "twin") return relation;
  if (units < gapUnits) return "gap";
  if (relation === "same-colour") return relation;
  if (units >= at(nearFrom)) return "near";
  return units >= at(fairFrom) ? "fair" : "stretch";
}

/** How near, as it is said on screen. */
export const verdictWords = (nearness: Nearness, language: Language = "en"): string =>
  wordsIn[language].nearness[nearness];
