import { agree } from "./agree.ts";
import { matches, type Span, whole } from "./phrase.ts";
import { type Found, found } from "./piece.ts";
import type { Says } from "./says/index.ts";

/** Weights of watercolour paper in pounds a ream, and what the same sheets are sold as in grams. */
const gsmByPounds: ReadonlyMap<number, number> = new Map([
  [90, 190],
  [140, 300],
  [300, 640],
]);

/**
 * The weight of watercolour paper in pounds. For other papers a pound says something else with every kind, so that
 * it stays in the name. Common practice, no source; a ream is 500 sheets of 22 by 30 inches.
 */
export function readPounds(
  text: string,
  says: Says,
  taken: readonly Found[],
  aside: readonly Span[],
): readonly Found[] {
  const isWatercolour = taken.some(({ field, value }) => field === "traits.use" && value === "watercolour");
  const weight = taken.find(({ field }) => field === "traits.gsm");
  return matches(text, whole("(\\d{2,3})\\s*-?\\s*(?:lbs?|pounds?)"), [...taken, ...aside])
    .flatMap((match) => {
      const gsm = isWatercolour ? gsmByPounds.get(Number(match[1])) : undefined;
      return gsm ? [found(match, "traits.gsm", gsm, says.pounds(gsm))] : [];
    })
    .filter(({ value }) => !weight || agree(weight.value, value))
    .slice(0, 1);
}
