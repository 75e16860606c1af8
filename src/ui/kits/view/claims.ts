import type { Claim, Line } from "../../../engine/price/index.ts";
import type { Family } from "../../../engine/supply/index.ts";
import { traitFields, traitLabel } from "../../supply-form/view/trait-fields.ts";
import { kitsWords } from "../../words/kits.ts";
import { supplyWords } from "../../words/supply.ts";
import { type Conflict, conflictsOf, type Saying, valueText } from "./conflicts.ts";

const words = kitsWords.contents;

/** Who says what of a line: their names, or, where they differ, what each one says. */
export type Told = Readonly<{ text: string; differs: boolean; note: string | null }>;

const named: ReadonlyMap<string, string> = new Map([
  ["name", supplyWords.name],
  ["maker", supplyWords.maker],
  ["line", supplyWords.line],
  ["code", supplyWords.code],
  ["colour.name", supplyWords.colour],
  ["colour.hex", supplyWords.colourCode],
  ["qty", kitsWords.line.qty],
]);

/** A claimed field in words: "Width" of `traits.widthMm`, also where only `widthMm` was written. */
export const claimField = (field: string | null | undefined): string =>
  named.get(field ?? "") ?? (field ? traitLabel(field.replace(/^traits\./, "")) : kitsWords.line.wholeLine);

export const sourceOf = (claim: Claim): string => claim.source ?? words.aSource;

/** Who says a thing; where nobody does, it only stands in the line. */
const sayer = ({ claims: [first] }: Saying): string => (first ? sourceOf(first) : words.theLine);

function differText(family: Family, { field, sayings }: Conflict): string {
  const [first, ...others] = sayings;
  const value = (saying: Saying) => valueText(family, field, saying.value);
  return first
    ? [
        words.says(sayer(first), value(first)),
        ...others.map((saying) => words.alsoSays(sayer(saying), value(saying))),
      ].join(", ")
    : "";
}

const suresOf = ({ sayings }: Conflict): readonly string[] =>
  sayings.flatMap(({ claims: [first] }) =>
    first?.sure ? [words.wasSure(sourceOf(first), words.sure[first.sure])] : [],
  );

const decidedText = (family: Family, { field, decided }: Conflict): readonly string[] =>
  decided
    ? [words.decided(claimField(field), valueText(family, field, decided.value), decided.reason ?? null)]
    : [];

/** Who says what of a line, in a few words. */
export function toldOf(line: Line): Told {
  const { family } = line.supply;
  const conflicts = conflictsOf(line);
  const decided = conflicts.flatMap((conflict) => decidedText(family, conflict));
  const open = conflicts.find((conflict) => conflict.decided === null);
  if (open) {
    const note = [words.differ, ...suresOf(open), ...decided].join(" ");
    return { text: differText(family, open), differs: true, note };
  }
  const sources = [...new Set((line.claims ?? []).map(sourceOf))];
  return {
    text: kitsWords.joined(sources),
    differs: false,
    note: decided.length > 0 ? decided.join(" ") : null,
  };
}

/** What a source can say something about: the fields of a line, in words. */
export const claimFields = (family: Family): readonly Readonly<{ value: string; label: string }>[] =>
  [
    "name",
    "maker",
    "line",
    "code",
    "colour.name",
    "qty",
    ...traitFields(family).map(({ trait }) => `traits.${trait}`),
  ].map((value) => ({ value, label: claimField(value) }));
