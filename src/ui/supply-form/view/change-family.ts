import { type Family, type Supply, traitsByFamily } from "../../../engine/supply/index.ts";

type Traits = Readonly<Record<string, unknown>>;

/** The traits that both families know by the same words; what the new family cannot hold is left out. */
function sharedTraits(traits: Traits, from: Family, to: Family): Traits {
  const before: Traits = traitsByFamily[from];
  const after: Traits = traitsByFamily[to];
  const kept = Object.keys(traits).filter(
    // Only numbers and yes-or-no mean the same everywhere: a "base" has other words in each family.
    (trait) =>
      Object.hasOwn(before, trait) && Object.hasOwn(after, trait) && typeof traits[trait] !== "string",
  );
  return Object.fromEntries(kept.map((trait) => [trait, traits[trait]]));
}

/** A supply as one of another family: named and coloured as before, with the traits that carry over. */
export function asFamily(supply: Supply, family: Family): Supply {
  if (supply.family === family) return supply;
  const { traits, ...rest } = supply;
  const shared = sharedTraits(traits ?? {}, supply.family, family);
  const next = { ...rest, family, ...(Object.keys(shared).length > 0 ? { traits: shared } : {}) };
  return next as Supply; // each family takes the fields of all; its traits were picked by its own schema
}
