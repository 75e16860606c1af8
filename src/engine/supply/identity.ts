import { foldText } from "./fold.ts";
import { gtin14 } from "./gtin.ts";
import { sheetMm } from "./paper.ts";
import type { Supply } from "./schema.ts";

/** What tells one product from another, folded once so that comparing is comparing text. */
export type Identity = Readonly<{
  gtin: string | null;
  /** Maker, line and code; null without a code. */
  coded: string | null;
  /** Family, maker, line, name, colour name and traits: counts only where either side lacks a code. */
  plain: string;
}>;

/** Parts joined so that no part can run into the next. */
export const keyOf = (...parts: readonly string[]): string => JSON.stringify(parts);

const isEmpty = (value: unknown): boolean =>
  value === null || value === undefined || (Array.isArray(value) && value.length === 0);

const isSize = (value: unknown): value is string | [number, number] =>
  typeof value === "string" || (Array.isArray(value) && value.length === 2);

function valueText(value: unknown): string {
  if (typeof value === "string") return foldText(value);
  if (!Array.isArray(value)) return JSON.stringify(value) ?? "";
  return JSON.stringify(value.map(valueText).toSorted()); // tips, pigments: the order says nothing
}

/** "A4" and its millimetres are one size, either way round. */
const traitText = (name: string, value: unknown): string =>
  valueText(name === "size" && isSize(value) ? (sheetMm(value) ?? value) : value);

function traitsKey(traits: Readonly<Record<string, unknown>>): string {
  const known = Object.keys(traits).filter((name) => !isEmpty(traits[name]));
  return keyOf(...known.toSorted().flatMap((name) => [name, traitText(name, traits[name])]));
}

/** A code belongs to a maker's line. With neither known, only the same code on the same thing counts. */
const codedKey = (maker: string, line: string, code: string, plain: string): string =>
  maker || line ? keyOf(maker, line, code) : keyOf(code, plain);

export function identityOf(supply: Supply): Identity {
  const [maker, line, code] = [foldText(supply.maker), foldText(supply.line), foldText(supply.code)];
  const colourName = foldText(supply.colour?.name);
  const traits = traitsKey(supply.traits ?? {});
  const plain = keyOf(supply.family, maker, line, foldText(supply.name), colourName, traits);
  return {
    gtin: gtin14(supply.gtin),
    coded: code ? codedKey(maker, line, code, plain) : null,
    plain,
  };
}

/** `sameProduct` for identities already at hand. */
export function sameIdentity(a: Identity, b: Identity): boolean {
  if (a.gtin !== null && a.gtin === b.gtin) return true;
  if (a.coded !== null && b.coded !== null) return a.coded === b.coded;
  return a.plain === b.plain;
}

/**
 * Whether two supplies are the same product: same GTIN; or same maker, line and code; or, where either
 * lacks a code, same maker, line, name, colour name and traits. Case, accents and spacing do not count.
 * Where maker and line are unknown on both sides, the rest must agree, so a bare code makes nothing the same.
 * Not transitive: something without a code may be the same as two things with different codes.
 */
export const sameProduct = (a: Supply, b: Supply): boolean => sameIdentity(identityOf(a), identityOf(b));
