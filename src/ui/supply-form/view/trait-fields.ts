import { type Family, traitsByFamily } from "../../../engine/supply/index.ts";
import { valueWord as engineWord } from "../../words/engine/supply.ts";
import { supplyWords } from "../../words/supply.ts";

/** How a trait is filled in. */
export type TraitInput =
  | Readonly<{ kind: "word" | "words"; options: readonly Readonly<{ value: string; label: string }>[] }>
  | Readonly<{ kind: "number"; whole: boolean }>
  | Readonly<{ kind: "yes-no" | "texts" | "size" }>;

/** One field of a family's form. */
export type TraitField = Readonly<{ trait: string; label: string; unit: string | null; input: TraitInput }>;

/** What is looked at in a schema: its kind, its words, and what it wraps. */
type Definition = Readonly<{
  type: string;
  format?: string;
  entries?: Readonly<Record<string, string>>;
  innerType?: Schema;
  element?: Schema;
}>;
type Schema = Readonly<{ _zod: Readonly<{ def: Definition }> }>;

const own = (table: Readonly<Partial<Record<string, string>>>, key: string): string | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;

/** The word of a trait's value as the screen says it: the engine's, or one that only forms need. */
export function valueWord(family: Family, trait: string, value: string): string {
  const word = engineWord(family, trait, value);
  if (word !== value) return word;
  return (trait === "coated" ? own(supplyWords.coated, value) : own(supplyWords.values, value)) ?? value;
}

export const traitLabel = (trait: string): string => own(supplyWords.traits, trait) ?? trait;

const unwrapped = ({ _zod: { def } }: Schema): Definition => (def.innerType ? unwrapped(def.innerType) : def);

const optionsOf = (family: Family, trait: string, { entries = {} }: Definition) =>
  Object.values(entries).map((value) => ({ value, label: valueWord(family, trait, value) }));

function inputOf(family: Family, trait: string, schema: Schema): TraitInput {
  const definition = unwrapped(schema);
  const element = definition.element && unwrapped(definition.element);
  if (definition.type === "enum") return { kind: "word", options: optionsOf(family, trait, definition) };
  if (element?.type === "enum") return { kind: "words", options: optionsOf(family, trait, element) };
  if (element) return { kind: "texts" };
  if (definition.type === "boolean") return { kind: "yes-no" };
  if (definition.type === "number") return { kind: "number", whole: definition.format === "safeint" };
  return { kind: "size" };
}

/** The fields of a family's traits, read off its schema, so that a word added there is on the form at once. */
export function traitFields(family: Family): readonly TraitField[] {
  // zod's own types do not tell what a schema is made of; its documented `_zod.def` does.
  const schemas = Object.entries(traitsByFamily[family]) as unknown as readonly [string, Schema][];
  return schemas.map(([trait, schema]) => ({
    trait,
    label: traitLabel(trait),
    unit: own(supplyWords.units, trait) ?? null,
    input: inputOf(family, trait, schema),
  }));
}

/** The field of one trait, or null where the family has none of that name. */
export const traitField = (family: Family, trait: string): TraitField | null =>
  traitFields(family).find((field) => field.trait === trait) ?? null;

/** Whether supplies of this family lay a colour of their own, or come in one. */
export const hasColour = (family: Family): boolean =>
  family !== "brush" && family !== "eraser" && family !== "tool" && family !== "other";
