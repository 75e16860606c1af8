import { foldText } from "./fold.ts";
import { lineKey } from "./links.ts";
import type { Kinship, Supply } from "./schema.ts";

/** One of the two that a kinship links. */
export type KinSide = "a" | "b";

function isOn(kinship: Kinship, side: KinSide, supply: Supply): boolean {
  const [here, there] = side === "a" ? [kinship.a, kinship.b] : [kinship.b, kinship.a];
  const line = lineKey(foldText(here?.maker), foldText(here?.line));
  if (line === null || line !== lineKey(foldText(supply.maker), foldText(supply.line))) return false;
  const code = foldText(here?.code) || foldText(there?.code); // a side without a code takes the other's
  if (code) return code === foldText(supply.code);
  return foldText(kinship.by === "name" ? supply.name : supply.code) !== "";
}

/**
 * The sides of a kinship that a supply is on, as the kinships are followed by `relationsOf`: of the side's maker and
 * line, and of its code where either side names one. Case, accents and spacing do not count. Both sides where a line
 * is linked with itself; none where neither maker nor line is known.
 */
export const sidesOf = (kinship: Kinship, supply: Supply): readonly KinSide[] =>
  (["a", "b"] as const).filter((side) => isOn(kinship, side, supply));
