const and = (words: readonly string[]): string => words.join(" and ");

/** What supplies are known to be, in English. */
export const supplyWords = {
  /** Words of trait values by family and trait; what is not here is said as the file writes it. */
  values: {
    marker: { base: { "water-dye": "water-based dye", "water-pigment": "water-based pigment" } },
    paint: { opacity: { semi: "semi-opaque" } },
  } as ValueWords,

  and,
  tips: (tips: readonly string[]) => `${and(tips)} tip`,
  tip: (tip: string) => `${tip} tip`,
  refillable: "refillable",
  waterproof: "waterproof",
  binder: (binder: string) => `${binder} binder`,
  surface: (surface: string) => surface,
  holdsWater: ["holds its own water"] as Ways,
  gsm: (weight: string) => `${weight} gsm`,
  paper: (use: string): Ways => [`${use} paper`, use],
  coatedOne: "coated on one side",
  coatedBoth: "coated on both sides",
  sheets: (count: number) => (count === 1 ? "1 sheet" : `${count} sheets`),
};

/** A fact, and other ways that a name may say it. */
export type Ways = readonly [string, ...string[]];

/** Words of values by family, trait and value. */
export type ValueWords = Readonly<
  Partial<Record<string, Readonly<Partial<Record<string, Readonly<Partial<Record<string, string>>>>>>>>
>;
