import { foldText, type Supply } from "../supply/index.ts";

/** One class of caution. `source`: where the words come from; `checked`: when somebody last looked. */
export type Caution = Readonly<{
  id: string;
  line: string;
  source: string;
  checked: string;
  fits: (supply: Supply) => boolean;
}>;

const usual = { source: "the usual caution, common practice, no source", checked: "2026-11-25" };
const names = (supply: Supply, ...words: readonly string[]) =>
  words.some((word) => foldText(supply.name).includes(word));

/** The cautions shown beside supplies that can hurt somebody. The maker's label and local rules come first. */
export const cautions: readonly Caution[] = [
  {
    id: "solvent",
    line: "Spirit-based inks and oil media: open a window, keep flames away.",
    ...usual,
    fits: (supply) =>
      (supply.family === "marker" && (supply.traits?.base === "alcohol" || supply.traits?.base === "oil")) ||
      (supply.family === "liner" && supply.traits?.base === "alcohol") ||
      (supply.family === "ink" && (supply.traits?.base === "alcohol" || supply.traits?.base === "shellac")) ||
      (supply.family === "paint" && supply.traits?.medium === "oil"),
  },
  {
    id: "aerosol",
    line: "Sprays: outdoors or by an open window, away from flames, and do not breathe the mist.",
    ...usual,
    fits: (supply) => names(supply, "spray", "fixative", "aerosol"),
  },
  {
    id: "dust",
    line: "Pastel, charcoal and powdered colour: do not breathe the dust, wipe up damp; some pigments are toxic.",
    ...usual,
    fits: (supply) =>
      supply.family === "pastel" ||
      (supply.family === "graphite" && supply.traits?.core === "charcoal") ||
      names(supply, "powder"),
  },
  {
    id: "blade",
    line: "Blades: cut away from the hand, on a mat.",
    ...usual,
    fits: (supply) =>
      (supply.family === "tool" && supply.traits?.kind === "knife") || names(supply, "knife", "blade"),
  },
];

/** The caution lines for a set of supplies, each once, then what their labels say. */
export function cautionLines(supplies: readonly Supply[]): readonly string[] {
  const classes = cautions.filter((caution) => supplies.some(caution.fits)).map(({ line }) => line);
  const labels = [
    ...new Set(
      supplies.flatMap(({ name, safety }) => (safety ? [`${name}, its label says: ${safety}`] : [])),
    ),
  ];
  const defer =
    classes.length + labels.length > 0
      ? ["Read the label and the maker's safety data sheet; local rules come first."]
      : [];
  return [...classes, ...labels, ...defer];
}
