import type { Claim, Decided, Line } from "../../../engine/price/index.ts";
import { type Family, sizeWords } from "../../../engine/supply/index.ts";
import type { Path } from "../../../store/index.ts";
import { traitField, valueWord } from "../../supply-form/view/trait-fields.ts";
import { format as ownFormat } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { supplyWords } from "../../words/supply.ts";

const isPair = (value: unknown): value is [number, number] =>
  Array.isArray(value) && value.length === 2 && value.every((side) => typeof side === "number");

const traitOf = (field: string): string => field.replace(/^traits\./, "");

/** A value that a source gives a field, as the screen says it. */
export function valueText(family: Family, field: string, value: unknown): string {
  if (typeof value === "string") return valueWord(family, traitOf(field), value);
  if (typeof value === "boolean") return value ? supplyWords.yes : supplyWords.no;
  if (typeof value === "number") return ownFormat.number(value, 3);
  if (value === null || value === undefined) return kitsWords.contents.empty;
  if (isPair(value)) return sizeWords(value, (side) => ownFormat.number(side, 3));
  if (Array.isArray(value)) return value.map((one) => valueText(family, field, one)).join(", ");
  return JSON.stringify(value);
}

/** One field under one name: claims may say "gsm" or "traits.gsm". */
export const fieldOf = (family: Family, field: string | null | undefined): string =>
  field && traitField(family, field) ? `traits.${field}` : (field ?? "");

/** Where a claimed field stands in a line. */
export const pathOf = (field: string): Path => (field === "qty" ? ["qty"] : ["supply", ...field.split(".")]);

/** What stands in a field of a line now. */
export function valueAt(line: Line, field: string): unknown {
  if (field === "qty") return line.qty ?? 1;
  return fieldOf(line.supply.family, field)
    .split(".")
    .reduce<unknown>(
      (node, name) =>
        typeof node === "object" && node !== null
          ? Object.entries(node).find(([key]) => key === name)?.[1]
          : undefined,
      line.supply,
    );
}

/** Two values that say the same, whatever their case and whether a number was noted as text. */
export const saysSame = (one: unknown, other: unknown): boolean => keyOf(one) === keyOf(other);
const keyOf = (value: unknown): string =>
  typeof value === "string" || typeof value === "number"
    ? String(value).trim().toLowerCase().replace(",", ".")
    : JSON.stringify(value ?? null);

/** One of the things said of a field: who says it, and whether it is what stands in the line. */
export type Saying = Readonly<{ value: unknown; claims: readonly Claim[]; stands: boolean; fits: boolean }>;

/** A field of which different things are said. `decided`: the choice, for as long as it covers all that is said. */
export type Conflict = Readonly<{ field: string; sayings: readonly Saying[]; decided: Decided | null }>;

/** Whether a value can stand in a field as it is. */
function fits(family: Family, field: string, value: unknown): boolean {
  if (field === "qty") return typeof value === "number" && Number.isSafeInteger(value) && value > 0;
  const input = field.startsWith("traits.") ? traitField(family, traitOf(field))?.input : null;
  if (!input) return typeof value === "string" && value.trim() !== "";
  const isWord = (word: unknown) => "options" in input && input.options.some((one) => one.value === word);
  switch (input.kind) {
    case "word":
      return isWord(value);
    case "words":
      return Array.isArray(value) && value.every(isWord);
    case "number":
      return typeof value === "number" && value > 0 && (!input.whole || Number.isSafeInteger(value));
    case "yes-no":
      return typeof value === "boolean";
    case "texts":
      return Array.isArray(value) && value.every((one) => typeof one === "string");
    case "size":
      return typeof value === "string" || isPair(value);
  }
}

/** A number that was noted as text counts as the number. */
function asValue(family: Family, field: string, value: unknown): unknown {
  const number = typeof value === "string" ? Number(value.trim().replace(",", ".")) : Number.NaN;
  return !fits(family, field, value) && fits(family, field, number) ? number : value;
}

const isReadable = ({ sure, value }: Claim): boolean =>
  sure !== "unreadable" && value !== null && value !== undefined;

function sayingsOf(line: Line, field: string, claims: readonly Claim[]): readonly Saying[] {
  const { family } = line.supply;
  const now = valueAt(line, field);
  // A name may be put into better words at any time: that contradicts nobody.
  const own: readonly Claim[] = now === undefined || now === null || field === "name" ? [] : [{ value: now }];
  const apart = [...claims, ...own].filter(
    (claim, index, all) => all.findIndex((other) => saysSame(other.value, claim.value)) === index,
  );
  return apart.map(({ value: said }) => {
    const value = asValue(family, field, said);
    return {
      value,
      claims: claims.filter((claim) => saysSame(claim.value, said)),
      stands: saysSame(said, now),
      fits: fits(family, field, value),
    };
  });
}

const covers = (decided: Decided, sayings: readonly Saying[]): boolean =>
  sayings.some(({ stands, value }) => stands && saysSame(value, decided.value)) &&
  sayings.every(({ value }) =>
    [decided.value, ...(decided.against ?? [])].some((known) => saysSame(known, value)),
  );

/** The fields of a line of which sources say different things, or another thing than stands in it. */
export function conflictsOf(line: Line): readonly Conflict[] {
  const { family } = line.supply;
  const readable = (line.claims ?? []).filter(isReadable);
  const fields = new Set(readable.flatMap(({ field }) => (field ? [fieldOf(family, field)] : [])));
  return [...fields].flatMap((field) => {
    const claims = readable.filter((claim) => fieldOf(family, claim.field) === field);
    const sayings = sayingsOf(line, field, claims);
    if (sayings.length < 2) return [];
    const decided = (line.decided ?? []).find((one) => fieldOf(family, one.field) === field);
    return [{ field, sayings, decided: decided && covers(decided, sayings) ? decided : null }];
  });
}

/** The choice of one saying over the others. */
export const decidedFor = (
  { field, sayings }: Conflict,
  saying: Saying,
  reason: string,
  today: string,
): Decided => ({
  field,
  value: saying.value,
  against: sayings.filter((other) => other !== saying).map(({ value }) => value),
  ...(reason.trim() ? { reason: reason.trim() } : {}),
  date: today,
});
