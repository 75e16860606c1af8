import type { Supply, SupplyOf } from "./schema.ts";

/** A fact, or one with other ways that a name may say it already. */
type Fact = string | number | null | undefined | false | readonly [string, ...string[]];
type Format = (value: number) => string;

const bases: Readonly<Record<string, string>> = {
  "water-dye": "water-based dye",
  "water-pigment": "water-based pigment",
};
const baseWord = (base: string | null | undefined): Fact => base && (bases[base] ?? base);
const and = (words: readonly string[]): string => words.join(" and ");
const count = (n: number, one: string): string => (n === 1 ? `1 ${one}` : `${n} ${one}s`);

/** A paper size as people write it: its name, or `240 × 320 mm`. */
export const sizeWords = (size: string | readonly [number, number], format: Format = String): string =>
  typeof size === "string" ? size : `${format(size[0])} × ${format(size[1])} mm`;

/** A size in millimetres, which a name may give in centimetres. */
function sizeFact(size: string | readonly [number, number] | null | undefined, format: Format): Fact {
  if (!size || typeof size === "string") return size;
  const [width, height] = size;
  return [sizeWords(size, format), `${width / 10} × ${height / 10} cm`, `${height / 10} × ${width / 10} cm`];
}

function paperFacts({ traits }: SupplyOf<"paper">, format: Format): readonly Fact[] {
  return [
    sizeFact(traits?.size, format),
    traits?.gsm && `${format(traits.gsm)} gsm`,
    traits?.surface,
    traits?.use && [`${traits.use} paper`, traits.use],
    traits?.coated === "one" && "coated on one side",
    traits?.coated === "both" && "coated on both sides",
    traits?.sheets && count(traits.sheets, "sheet"),
  ];
}

function factsByFamily(supply: Supply, format: Format): readonly Fact[] {
  switch (supply.family) {
    case "marker": {
      const t = supply.traits;
      return [baseWord(t?.base), t?.tips?.length && `${and(t.tips)} tip`, t?.refillable && "refillable"];
    }
    case "liner": {
      const t = supply.traits;
      return [
        t?.widthMm && `${format(t.widthMm)} mm`,
        t?.base,
        t?.tip && `${t.tip} tip`,
        t?.waterproof && "waterproof",
      ];
    }
    case "graphite":
      return [supply.traits?.grade, supply.traits?.core, supply.traits?.form];
    case "colour-pencil":
      return [supply.traits?.binder && `${supply.traits.binder} binder`];
    case "paint": {
      const t = supply.traits;
      const opacity = t?.opacity === "semi" ? "semi-opaque" : t?.opacity;
      return [
        t?.medium,
        t?.form,
        t?.ml && `${format(t.ml)} ml`,
        opacity,
        t?.pigments?.length && and(t.pigments),
      ];
    }
    case "ink": {
      const t = supply.traits;
      return [t?.base, t?.ml && `${format(t.ml)} ml`, t?.waterproof && "waterproof"];
    }
    case "pastel":
      return [supply.traits?.kind];
    case "brush": {
      const t = supply.traits;
      return [
        t?.shape,
        t?.widthMm && `${format(t.widthMm)} mm`,
        t?.hair,
        t?.waterReservoir && "holds its own water",
      ];
    }
    case "paper":
      return paperFacts(supply, format);
    case "eraser":
    case "tool":
      return [supply.traits?.kind];
    case "other":
      return [];
  }
}

/**
 * What is known of a supply beyond its name, in the trade's words ("tube", "15 ml", "opaque"), what the name
 * says already left out.
 * @param format how numbers are written where the reader lives
 */
export function factsOf(supply: Supply, format: Format = String): readonly string[] {
  const name = supply.name.toLocaleLowerCase("en");
  const isSaid = (text: string): boolean => name.includes(text.toLocaleLowerCase("en"));
  return factsByFamily(supply, format).flatMap((fact) => {
    const ways = typeof fact === "string" ? [fact] : Array.isArray(fact) ? fact : [];
    return ways[0] && !ways.some(isSaid) ? [ways[0]] : [];
  });
}
