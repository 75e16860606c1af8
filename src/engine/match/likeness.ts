import { deltaE2000, type Lab } from "../colour/index.ts";
import type { Family, Relation, SheetMm, Supply } from "../supply/index.ts";
import { sizeCredit } from "./cut.ts";
import type { Weights } from "./schema.ts";
import {
  colourLikeness,
  gower,
  jaccard,
  lightfastLikeness,
  nominal,
  ordered,
  type Part,
  ratioLikeness,
} from "./similarity.ts";
import {
  builtInWeights,
  colourHalving,
  crossings,
  farColour,
  measures,
  roles,
  type TraitName,
} from "./table.ts";
import { type TraitValues, traitValuesOf } from "./traitValues.ts";

/** A kit item made ready to be compared: what is known of it, and how much each of that counts. */
export type KitSide = Readonly<{ values: TraitValues; weights: readonly (readonly [TraitName, number])[] }>;

/** How one stash item compares. Whole numbers are ten-thousandths, the figure all else works with. */
export type Likeness = Readonly<{
  units: number;
  certaintyUnits: number;
  deltaE: number | null;
  /** What the trait-by-trait likeness was multiplied by: for the family, and for a far colour. */
  factor: number;
  farFactor: number;
}>;

export const unitsPerOne = 10_000;
const inUnits = (share: number): number => Math.round(share * unitsPerOne);

/** The weights for a family: the built-in ones, with a person's own in their place. A weight of 0 takes a trait out. */
function weightsFor(
  family: Family,
  own: Weights | null | undefined,
): readonly (readonly [TraitName, number])[] {
  const changed = own && Object.hasOwn(own, family) ? (own[family] ?? {}) : {};
  const built = Object.entries(builtInWeights[family]) as [TraitName, number][]; // keys of a literal we wrote
  return built.map(([trait, weight]) => [
    trait,
    Object.hasOwn(changed, trait) ? (changed[trait] ?? weight) : weight,
  ]);
}

export function kitSideOf(supply: Supply, own: Weights | null | undefined): KitSide {
  const values = traitValuesOf(supply);
  const counted = weightsFor(supply.family, own).filter(
    ([trait, weight]) => weight > 0 && values.known.has(trait),
  );
  return { values, weights: counted };
}

/** 1 within a family, below 1 between families of one role, small where practice crosses roles, else 0. */
export function familyFactor(kit: TraitValues, stash: TraitValues): number {
  if (kit.family === stash.family) return 1;
  const crossing = crossings.find((one) => one.kit === kit.family && one.stash === stash.family);
  if (!crossing) return 0;
  const { needs, factor } = crossing;
  if (!needs) return factor;
  const has = [stash.known.get(needs.trait)].flat();
  return has.some((word) => needs.any.some((wanted) => wanted === word)) ? factor : 0;
}

/** Whether a stash item is listed under a kit line at all: same role, or practice crosses. */
export const canPlay = (kit: TraitValues, stash: TraitValues): boolean =>
  roles[kit.family] === roles[stash.family] || familyFactor(kit, stash) > 0;

/** Likeness of two known values of a trait. The casts are what the schema says of each measure's values. */
function similarityOf(trait: TraitName, kit: unknown, stash: unknown): number {
  const measure = measures[trait];
  switch (measure.as) {
    case "colour":
      return colourLikeness(deltaE2000(kit as Lab, stash as Lab));
    case "nominal":
      return nominal(measure.credits, kit, stash);
    case "set":
      return jaccard(kit as readonly string[], stash as readonly string[]);
    case "ordered":
      return ordered(measure.scale, kit as string, stash as string);
    case "lightfast":
      return lightfastLikeness(kit as string, stash as string);
    case "ratio":
      return ratioLikeness(measure.zeroAt, kit as number, stash as number);
    case "sheet":
      return sizeCredit(kit as SheetMm, stash as SheetMm);
  }
}

/** What a trait adds to a comparison; `known`: to both sides. */
export type TraitPart = Part & Readonly<{ trait: TraitName; known: boolean }>;

/**
 * The traits that count between a kit item and a stash item: Gower's parts. What the stash item is not known
 * to be counts ½; a kinship vouches for the colour.
 * @param deltaE ΔE00 of the two colours, null where one is not known
 */
export function partsOf(
  { values, weights }: KitSide,
  stash: TraitValues,
  relation: Relation | null,
  deltaE: number | null,
): readonly TraitPart[] {
  return weights.map(([trait, weight]) => {
    if (trait === "colour") {
      if (relation === "same-colour") return { trait, known: true, similarity: 1, weight };
      const similarity = deltaE === null ? 0.5 : colourLikeness(deltaE);
      return { trait, known: deltaE !== null, similarity, weight };
    }
    const [own, other] = [values.known.get(trait), stash.known.get(trait)];
    if (other === undefined) return { trait, known: false, similarity: 0.5, weight };
    return { trait, known: true, similarity: similarityOf(trait, own, other), weight };
  });
}

/** The whole likeness halves with every 12 past ΔE00 20, unless colour does not count or is the same by kinship. */
function farFactorOf(kit: KitSide, relation: Relation | null, deltaE: number | null): number {
  if (deltaE === null || deltaE <= farColour || relation === "same-colour") return 1;
  const counts = kit.weights.some(([trait]) => trait === "colour");
  return counts ? 2 ** (-(deltaE - farColour) / colourHalving) : 1;
}

/** Where nothing is known to both sides: half of what the families allow; `other` says nothing at all. */
function plainLikeness(kit: KitSide, parts: readonly TraitPart[]): number {
  const known = parts.some((part) => part.known) ? gower(parts) : null;
  return known ?? (kit.values.family === "other" ? 0 : 0.5);
}

const weightOf = (parts: readonly TraitPart[]): number => parts.reduce((sum, part) => sum + part.weight, 0);

/**
 * How like a stash item is to a kit item: Gower's similarity over the traits the kit item knows, times the
 * factor between their families and the one for a far colour. Same products and twins are 1.
 * @returns likeness and certainty as whole ten-thousandths, each rounded once; ΔE00 where both have a colour
 */
export function likenessOf(kit: KitSide, stash: TraitValues, relation: Relation | null): Likeness {
  const deltaE = kit.values.lab && stash.lab ? deltaE2000(kit.values.lab, stash.lab) : null;
  const parts = partsOf(kit, stash, relation, deltaE);
  const total = weightOf(parts);
  const both = weightOf(parts.filter((part) => part.known));
  const [factor, farFactor] = [familyFactor(kit.values, stash), farFactorOf(kit, relation, deltaE)];
  const equal = relation === "same" || relation === "twin";
  return {
    units: equal ? unitsPerOne : inUnits(plainLikeness(kit, parts) * factor * farFactor),
    certaintyUnits: total > 0 ? inUnits(both / total) : 0,
    deltaE,
    factor: equal ? 1 : factor,
    farFactor: equal ? 1 : farFactor,
  };
}
