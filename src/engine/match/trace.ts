import type { Supply } from "../supply/index.ts";
import type { TraitPart } from "./likeness.ts";
import type { TraitName } from "./table.ts";

/** One row of "why?". `stash` null: not known of the stash item, which counts ½. Colours are printed as text. */
export type TraceRow = Readonly<{
  trait: TraitName;
  kit: unknown;
  stash: unknown;
  similarity: number;
  weight: number;
}>;

/** A colour as the document has it: the Lab values that count where there are some, else the hex. */
function colourText({ colour }: Supply): string | null {
  if (!colour?.lab) return colour?.hex ?? null;
  return `lab(${colour.lab.join(" ")})`;
}

function printed(supply: Supply, trait: TraitName): unknown {
  if (trait === "colour") return colourText(supply);
  if (trait === "lightfast") return supply.lightfast ?? null;
  const traits: Readonly<Record<string, unknown>> = supply.traits ?? {};
  return (Object.hasOwn(traits, trait) ? traits[trait] : null) ?? null;
}

/** The parts of a comparison with what each side is, as the document says it. */
export const traceOf = (kit: Supply, stash: Supply, parts: readonly TraitPart[]): readonly TraceRow[] =>
  parts.map(({ trait, known, similarity, weight }) => ({
    trait,
    kit: printed(kit, trait),
    stash: known ? printed(stash, trait) : null,
    similarity,
    weight,
  }));
