import type { InEvery, Language } from "../record/index.ts";
import { foldText, type Supply } from "../supply/index.ts";
import { type WriteupWords, wordsIn } from "./words/index.ts";

type Kind = keyof WriteupWords["cautions"];

/** What a caution says. `source`: where the words come from; `checked`: when somebody last looked. */
type Said = WriteupWords["cautions"][Kind];

/** One class of caution, in every language. */
export type Caution = Readonly<{ id: Kind; said: InEvery<Said>; fits: (supply: Supply) => boolean }>;

const names = (supply: Supply, ...words: readonly string[]) =>
  words.some((word) => foldText(supply.name).includes(word));

/** Which supplies a class is for. A supply's name is read in any of the languages. */
const classes: Readonly<Record<Kind, Caution["fits"]>> = {
  solvent: (supply) =>
    (supply.family === "marker" && (supply.traits?.base === "alcohol" || supply.traits?.base === "oil")) ||
    (supply.family === "liner" && supply.traits?.base === "alcohol") ||
    (supply.family === "ink" && (supply.traits?.base === "alcohol" || supply.traits?.base === "shellac")) ||
    (supply.family === "paint" && supply.traits?.medium === "oil"),
  aerosol: (supply) => names(supply, "spray", "fixative", "aerosol", "sprej", "fixativ"),
  dust: (supply) =>
    supply.family === "pastel" ||
    (supply.family === "graphite" && supply.traits?.core === "charcoal") ||
    names(supply, "powder", "pulver"),
  blade: (supply) =>
    (supply.family === "tool" && supply.traits?.kind === "knife") ||
    names(supply, "knife", "blade", "kniv", "skalpell"),
};

const caution = (id: Kind): Caution => ({
  id,
  said: { en: wordsIn.en.cautions[id], sv: wordsIn.sv.cautions[id] },
  fits: classes[id],
});

/** The cautions shown beside supplies that can hurt somebody. The maker's label and local rules come first. */
export const cautions: readonly Caution[] = [
  caution("solvent"),
  caution("aerosol"),
  caution("dust"),
  caution("blade"),
];

/** The caution lines for a set of supplies, each once, then what their labels say. */
export function cautionLines(supplies: readonly Supply[], language: Language = "en"): readonly string[] {
  const words = wordsIn[language];
  const fitting = cautions.filter(({ fits }) => supplies.some(fits)).map(({ said }) => said[language].line);
  const labels = [
    ...new Set(supplies.flatMap(({ name, safety }) => (safety ? [words.label(name, safety)] : []))),
  ];
  const all = [...fitting, ...labels];
  return all.length > 0 ? [...all, words.defer] : all;
}
