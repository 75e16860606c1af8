import { families } from "../supply/index.ts";
import { traitLabel } from "./labels.ts";
import {
  blueWoolOfAstm,
  builtInWeights,
  type Crossing,
  colourHalving,
  crossings,
  fairFrom,
  farColour,
  gapBelow,
  type Measure,
  measures,
  nearFrom,
  roles,
  type TraitName,
} from "./table.ts";

const row = (...cells: readonly (string | number)[]): string => `| ${cells.join(" | ")} |`;

const table = (head: readonly string[], rows: readonly string[]): readonly string[] => [
  row(...head),
  row(...head.map(() => "---")),
  ...rows,
];

const roleRows = families.map((family) => row(`\`${family}\``, roles[family]));

function crossingRow({ kit, stash, factor, needs }: Crossing): string {
  const only = needs ? `\`${needs.trait}\` known to include ${needs.any.join(" or ")}` : "";
  return row(`\`${kit}\``, `\`${stash}\``, factor, only);
}

const weightRows = families.map((family) => {
  const weights = Object.entries(builtInWeights[family]).map(([trait, weight]) => `\`${trait}\` ${weight}`);
  return row(`\`${family}\``, weights.join(", ") || "none: only the same product or a twin stands in");
});

function measureText(measure: Measure): string {
  switch (measure.as) {
    case "colour":
      return `2^(−ΔE00 ÷ ${colourHalving})`;
    case "nominal":
      return measure.credits.length > 0 ? "1 if equal, else the credit below, else 0" : "1 if equal, else 0";
    case "set":
      return "shared ÷ all (Jaccard)";
    case "ordered":
      return `1 − steps apart ÷ ${measure.scale.length - 1}: ${measure.scale.join(", ")}`;
    case "lightfast":
      return "1 − steps apart ÷ range, see below";
    case "ratio":
      return `1 − log of the ratio ÷ log ${measure.zeroAt}; 0 from ${measure.zeroAt} times on`;
    case "sheet":
      return "1 where the kit's sheet can be cut from it, else the share of the kit's sheet it covers";
  }
}

const entries = Object.entries(measures) as [TraitName, Measure][]; // keys of a literal we wrote

const measureRows = entries.map(([trait, measure]) =>
  row(`\`${trait}\``, traitLabel(trait), measureText(measure)),
);

const creditRows = entries.flatMap(([trait, measure]) =>
  measure.as === "nominal"
    ? measure.credits.map(([one, other, credit]) => row(`\`${trait}\``, one, other, credit))
    : [],
);

/** docs/likeness.md, printed from the table the engine works with. */
export function likenessDoc(): string {
  return [
    "# How likeness is worked out",
    "",
    "Printed from `src/engine/match/table.ts`, the table the engine itself uses; a test compares the two.",
    "",
    "Likeness is Gower's general similarity (J. C. Gower 1971, Biometrics 27(4), 857–871) over the traits that are",
    "known of the kit item: the sum of weight × similarity, divided by the sum of the weights. A trait that the",
    "stash item is not known to have counts ½; one not known of the kit item is left out. The result is multiplied",
    "by the factor between the two families, and rounded to four decimals once.",
    "",
    `- Past ΔE00 ${farColour} the whole likeness is also multiplied by 2^(−(ΔE00 − ${farColour}) ÷ ${colourHalving}), so that a wrong`,
    "  colour ends as a gap. Equal colour names count for nothing.",
    "- The same product and its twins have likeness 1. A *same-colour* kinship makes the colour's similarity 1 and",
    "  waives the factor for a far colour; it also speaks for a colour that is not known of the stash item.",
    "- Where no trait is known to both, likeness is ½ times the families' factor (`other`: 0).",
    "- `sheets` and the number of pieces are amounts, not likeness. A tool of kind `other` counts as not known.",
    "- Certainty is the share of the weight that both sides know; 0 where nothing is known of the kit item.",
    "",
    "Weights, factors and credits are common practice and our own judgement, without a source. A person can change",
    "the weights by family and trait (`weights` in the workbook): the family is the kit item's, a weight of 0 takes",
    "the trait out, and taking colour out also waives the factor for a far colour.",
    "",
    "## Verdicts",
    "",
    ...table(
      ["verdict", "likeness"],
      [
        row("near", `from ${nearFrom}`),
        row("fair", `from ${fairFrom}`),
        row("stretch", `from ${gapBelow}`),
        row("gap", `below ${gapBelow}: nothing stands in`),
      ],
    ),
    "",
    "*same* and *twin* go before these, *same-colour* before all but *gap*.",
    "",
    "## Roles",
    "",
    ...table(["family", "role"], roleRows),
    "",
    "## Factors between families",
    "",
    "Within a family 1; between families not named here 0.",
    "",
    ...table(["kit item", "stash item", "factor", "only with"], crossings.map(crossingRow)),
    "",
    "## Weights",
    "",
    ...table(["family of the kit item", "weights"], weightRows),
    "",
    "## How each trait is compared",
    "",
    ...table(["trait", "on screen", "similarity"], measureRows),
    "",
    "Lightfastness: two ASTM D4303 categories by their four steps, two blue wool references by their seven. One of",
    "each: by seven steps, with the ASTM categories where they are customarily put (no standard does): " +
      `${Object.entries(blueWoolOfAstm)
        .map(([category, wool]) => `${category} at ${wool}`)
        .join(", ")}.`,
    "",
    "## Partial credits",
    "",
    "Either way round.",
    "",
    ...table(["trait", "one", "other", "similarity"], creditRows),
    "",
    "## Paper",
    "",
    "Paper larger than needed has full size credit and is cut: all pieces lie the same way, upright or turned,",
    "whichever gives more. Within 2 mm of the kit's size there is nothing to cut (what ISO 216 lets a trimmed sheet",
    "of 150 to 600 mm be off). Smaller paper has the credit of the area it covers.",
    "",
  ].join("\n");
}
