import type { Language } from "../record/index.ts";
import type { Supply, SupplyOf } from "./schema.ts";
import { valueWord } from "./values.ts";
import { type SupplyWords, type Ways, wordsIn } from "./words/index.ts";

/** A fact, or one with other ways that a name may say it already. */
type Fact = string | number | null | undefined | false | Ways;
type Format = (value: number) => string;

/** How facts are said: numbers in the reader's format, values and phrases in a language. */
type Speech = Readonly<{
  format: Format;
  words: SupplyWords;
  value: <V extends string>(trait: string, value: V | null | undefined) => string | null;
}>;

function speechOf(supply: Supply, format: Format, language: Language): Speech {
  return {
    format,
    words: wordsIn[language],
    value: (trait, value) => (value ? valueWord(supply.family, trait, value, language) : null),
  };
}

/** A paper size as people write it: its name, or `240 × 320 mm`. */
export const sizeWords = (size: string | readonly [number, number], format: Format = String): string =>
  typeof size === "string" ? size : `${format(size[0])} × ${format(size[1])} mm`;

/** A size in millimetres, which a name may give in centimetres. */
function sizeFact(size: string | readonly [number, number] | null | undefined, format: Format): Fact {
  if (!size || typeof size === "string") return size;
  const [width, height] = size;
  return [sizeWords(size, format), `${width / 10} × ${height / 10} cm`, `${height / 10} × ${width / 10} cm`];
}

function paperFacts({ traits }: SupplyOf<"paper">, { format, words, value }: Speech): readonly Fact[] {
  const surface = value("surface", traits?.surface);
  return [
    sizeFact(traits?.size, format),
    traits?.gsm && words.gsm(format(traits.gsm)),
    surface && words.surface(surface),
    traits?.use && words.paper(traits.use),
    traits?.coated === "one" && words.coatedOne,
    traits?.coated === "both" && words.coatedBoth,
    traits?.sheets && words.sheets(traits.sheets),
  ];
}

function paintFacts({ traits }: SupplyOf<"paint">, { format, words, value }: Speech): readonly Fact[] {
  return [
    value("medium", traits?.medium),
    value("form", traits?.form),
    traits?.ml && `${format(traits.ml)} ml`,
    value("opacity", traits?.opacity),
    traits?.pigments?.length && words.and(traits.pigments),
  ];
}

function linerFacts({ traits }: SupplyOf<"liner">, { format, words, value }: Speech): readonly Fact[] {
  const tip = value("tip", traits?.tip);
  return [
    traits?.widthMm && `${format(traits.widthMm)} mm`,
    value("base", traits?.base),
    tip && words.tip(tip),
    traits?.waterproof && words.waterproof,
  ];
}

function brushFacts({ traits }: SupplyOf<"brush">, { format, words, value }: Speech): readonly Fact[] {
  return [
    value("shape", traits?.shape),
    traits?.widthMm && `${format(traits.widthMm)} mm`,
    value("hair", traits?.hair),
    traits?.waterReservoir && words.holdsWater,
  ];
}

function markerFacts({ traits }: SupplyOf<"marker">, { words, value }: Speech): readonly Fact[] {
  const tips = (traits?.tips ?? []).flatMap((tip) => value("tips", tip) ?? []);
  return [
    value("base", traits?.base),
    tips.length > 0 && words.tips(tips),
    traits?.refillable && words.refillable,
  ];
}

function factsByFamily(supply: Supply, speech: Speech): readonly Fact[] {
  const { format, words, value } = speech;
  switch (supply.family) {
    case "marker":
      return markerFacts(supply, speech);
    case "liner":
      return linerFacts(supply, speech);
    case "graphite": {
      const t = supply.traits;
      return [t?.grade, value("core", t?.core), value("form", t?.form)];
    }
    case "colour-pencil": {
      const binder = value("binder", supply.traits?.binder);
      return [binder && words.binder(binder)];
    }
    case "paint":
      return paintFacts(supply, speech);
    case "ink": {
      const t = supply.traits;
      return [value("base", t?.base), t?.ml && `${format(t.ml)} ml`, t?.waterproof && words.waterproof];
    }
    case "pastel":
    case "eraser":
    case "tool":
      return [value("kind", supply.traits?.kind)];
    case "brush":
      return brushFacts(supply, speech);
    case "paper":
      return paperFacts(supply, speech);
    case "other":
      return [];
  }
}

/** The ways to say each fact, in the same order in every language; none for what is not known. */
const waysOf = (supply: Supply, format: Format, language: Language): readonly (readonly string[])[] =>
  factsByFamily(supply, speechOf(supply, format, language)).map((fact) =>
    typeof fact === "string" ? [fact] : Array.isArray(fact) ? fact : [],
  );

/** Text to look for another in: case does not matter, nor which decimal sign a number has. */
const folded = (text: string): string => text.toLocaleLowerCase("en").replace(/(\d),(?=\d)/g, "$1.");

/**
 * Whether a name says a fact. Names of things are mostly English, whoever owns them, so that in another language
 * the English ways count as well.
 */
function isSaidIn(
  supply: Supply,
  format: Format,
  language: Language,
): (ways: readonly string[], at: number) => boolean {
  if (language === "en") {
    const name = supply.name.toLocaleLowerCase("en");
    return (ways) => ways.some((way) => name.includes(way.toLocaleLowerCase("en")));
  }
  const name = folded(supply.name);
  const english = waysOf(supply, format, "en");
  return (ways, at) => [...ways, ...(english[at] ?? [])].some((way) => name.includes(folded(way)));
}

/**
 * What is known of a supply beyond its name, in the trade's words ("tube", "15 ml", "opaque"), what the name
 * says already left out.
 * @param format how numbers are written where the reader lives
 */
export function factsOf(
  supply: Supply,
  format: Format = String,
  language: Language = "en",
): readonly string[] {
  const isSaid = isSaidIn(supply, format, language);
  return waysOf(supply, format, language).flatMap((ways, at) =>
    ways[0] && !isSaid(ways, at) ? [ways[0]] : [],
  );
}
