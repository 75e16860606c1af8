import type { Claim, Line } from "../../../engine/price/index.ts";
import type { Family } from "../../../engine/supply/index.ts";
import { traitFields, traitLabel } from "../../supply-form/view/trait-fields.ts";
import { kitsWords } from "../../words/kits.ts";
import { supplyWords } from "../../words/supply.ts";

const words = kitsWords.contents;

/** Who says what of a line: their names, or, where they differ, what each one says. */
export type Told = Readonly<{ text: string; differs: boolean; note: string | null }>;

/** A claimed value as text; numbers as they are. */
export function claimValue(value: unknown): string {
  if (typeof value === "string") return value;
  if (typeof value === "boolean") return value ? supplyWords.yes : supplyWords.no;
  if (typeof value === "number") return String(value);
  return value === null || value === undefined ? words.empty : JSON.stringify(value);
}

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

const sourceOf = (claim: Claim): string => claim.source ?? words.aSource;

/** The first field of which sources say different things, with one claim for each of those. */
function differing(claims: readonly Claim[]): readonly Claim[] {
  const readable = claims.filter(({ sure }) => sure !== "unreadable");
  for (const { field } of readable) {
    const about = readable.filter((claim) => claim.field === field);
    const apart = about.filter(
      (claim, index) =>
        about.findIndex((other) => claimValue(other.value) === claimValue(claim.value)) === index,
    );
    if (apart.length > 1) return apart;
  }
  return [];
}

/** Who says what of a line, in a few words. */
export function toldOf(line: Line): Told {
  const claims = line.claims ?? [];
  const apart = differing(claims);
  const [first, ...others] = apart;
  if (!first) {
    const sources = [...new Set(claims.map(sourceOf))];
    return { text: kitsWords.joined(sources), differs: false, note: null };
  }
  const said = [
    words.says(sourceOf(first), claimValue(first.value)),
    ...others.map((claim) => words.alsoSays(sourceOf(claim), claimValue(claim.value))),
  ];
  const sures = apart.flatMap((claim) =>
    claim.sure ? [words.wasSure(sourceOf(claim), words.sure[claim.sure])] : [],
  );
  return { text: said.join(", "), differs: true, note: [words.differ, ...sures].join(" ") };
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

/** What stands in a field of a line now, by its claim's name. */
export function valueAt(line: Line, field: string): unknown {
  if (field === "qty") return line.qty ?? 1;
  return field
    .split(".")
    .reduce<unknown>(
      (node, name) =>
        typeof node === "object" && node !== null
          ? Object.entries(node).find(([key]) => key === name)?.[1]
          : undefined,
      line.supply,
    );
}
