import { type Lab, labOf } from "../colour/index.ts";
import { type Supply, sheetMm } from "../supply/index.ts";
import { measures, type TraitName } from "./table.ts";

/** What a supply is known to be, by trait; a trait that is not in here is unknown. */
export type TraitValues = Readonly<{
  family: Supply["family"];
  lab: Lab | null;
  known: ReadonlyMap<TraitName, unknown>;
}>;

const names = Object.keys(measures) as TraitName[]; // keys of a literal we wrote: no others can be there

/** "Other" names no kind of tool: two of them may have nothing in common, so it counts as unknown. */
const saysNothing = (value: unknown): boolean =>
  value === null || value === undefined || value === "other" || (Array.isArray(value) && value.length === 0);

/** The value as the document has it; a paper size only where it is one that has millimetres. */
function rawValue(supply: Supply, traits: Readonly<Record<string, unknown>>, name: TraitName): unknown {
  if (name === "lightfast") return supply.lightfast;
  if (name === "size") return supply.family === "paper" ? sheetMm(supply.traits?.size) : null;
  return Object.hasOwn(traits, name) ? traits[name] : null;
}

/** Reads a supply once, so that comparing it with sixty lines does not parse it sixty times. */
export function traitValuesOf(supply: Supply): TraitValues {
  const lab = labOf(supply.colour);
  const traits: Readonly<Record<string, unknown>> = supply.traits ?? {};
  const known = new Map<TraitName, unknown>();
  if (lab) known.set("colour", lab);
  for (const name of names) {
    const value = name === "colour" ? null : rawValue(supply, traits, name);
    if (!saysNothing(value)) known.set(name, value);
  }
  return { family: supply.family, lab, known };
}
