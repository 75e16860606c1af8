import { type Supply, sizeWords } from "../../../engine/supply/index.ts";
import { format } from "../../words/index.ts";

/** The values of a trait as texts that can be asked for: one, of a list each, none where it is not known. */
export function traitValues({ traits }: Supply, trait: string): readonly string[] {
  const held: Readonly<Record<string, unknown>> = traits ?? {};
  const value = Object.hasOwn(held, trait) ? held[trait] : null;
  if (value === null || value === undefined || value === "") return [];
  if (!Array.isArray(value)) return [String(value)];
  return trait === "size" ? [value.join(" × ")] : value.map(String);
}

/** A number or a size as it is printed; anything else as it is. */
export function printedValue(trait: string, value: string): string {
  const [width, height] = value.split(" × ").map(Number);
  if (trait === "size" && width && height) return sizeWords([width, height], (one) => format.number(one, 2));
  const number = Number(value);
  return value !== "" && Number.isFinite(number) ? format.number(number, 3) : value;
}
