import { labOf } from "../../../engine/colour/index.ts";
import type { Supply } from "../../../engine/supply/index.ts";
import { factsOf } from "../../words/engine/supply.ts";
import { format } from "../../words/index.ts";
import { stashWords } from "../../words/stash.ts";

/** What is known of a supply, on one line: "tube, 15 ml, opaque". */
export const factsText = (supply: Supply): string => factsOf(supply, (n) => format.number(n, 2)).join(", ");

/** The same with the colour's lightness, for a swatch that no other figure stands beside. */
export function factsBesideSwatch(supply: Supply): string {
  const lab = labOf(supply.colour);
  return [factsText(supply), lab && stashWords.lightnessOf(format.number(lab.l, 0))]
    .filter(Boolean)
    .join(", ");
}
