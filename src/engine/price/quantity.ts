import { Decimal, type Figure } from "../money/index.ts";
import { type Supply, sheetMm } from "../supply/index.ts";
import type { Pack } from "./schema.ts";

/** The line's own quantity ÷ the pack's, kept apart so that nothing is lost by dividing early. */
export type Ratio = Readonly<{ unit: "pieces" | "ml" | "sheets" | "mm²"; line: Decimal; pack: Decimal }>;

type Sheets = Readonly<{ sheets: number | null; area: Decimal | null }>;

const one = new Decimal(1);
const ratio = (unit: Ratio["unit"], line: Figure, pack: Figure): Ratio => ({
  unit,
  line: new Decimal(line),
  pack: new Decimal(pack),
});

/** Area of a sheet in mm²; null for a size that nobody knows. */
function areaOf(size: string | readonly [number, number] | null | undefined): Decimal | null {
  const sides = sheetMm(size);
  return sides && new Decimal(sides[0]).times(sides[1]);
}

const millilitresOf = (supply: Supply): number | null =>
  supply.family === "paint" || supply.family === "ink" ? (supply.traits?.ml ?? null) : null;

/** Sheets and area of a paper line. Loose paper without a count is one sheet. */
function sheetsOf(supply: Supply): Sheets {
  if (supply.family !== "paper") return { sheets: null, area: null };
  const { sheets, size, bound } = supply.traits ?? {};
  const loose = bound === null || bound === undefined || bound === "loose";
  return { sheets: sheets ?? (loose ? 1 : null), area: areaOf(size) };
}

/** A quantity in its unit. */
export type Amount = Readonly<{ unit: Ratio["unit"]; quantity: Decimal }>;

const amount = (unit: Ratio["unit"], quantity: Figure): Amount => ({ unit, quantity: new Decimal(quantity) });

/** What the line itself holds: millilitres, sheets × area, sheets of a size not known, or else one piece. */
export function amountOf(supply: Supply): Amount {
  const millilitres = millilitresOf(supply);
  if (millilitres !== null) return amount("ml", millilitres);
  const { sheets, area } = sheetsOf(supply);
  if (sheets === null) return amount("pieces", one);
  return area ? amount("mm²", area.times(sheets)) : amount("sheets", sheets);
}

/** Sheets × area, each the line's own where the pack leaves it out; sheets alone where no size is known. */
function paperIn(pack: Pack, supply: Supply): Amount | null {
  const own = sheetsOf(supply);
  const sheets = pack.sheets ?? own.sheets;
  if (sheets === null) return null;
  const count = sheets * (pack.count ?? 1);
  const area = pack.size ? areaOf(pack.size) : own.area;
  if (area) return amount("mm²", area.times(count));
  return pack.size ? null : amount("sheets", count);
}

/**
 * What a price bought: as its pack says, else as much as the line holds, times its pieces. Three tubes
 * of 15 ml are 45 ml.
 * @returns null for sheets whose number or size nobody knows
 */
export function boughtBy(pack: Pack | null | undefined, supply: Supply): Amount | null {
  const pieces = pack?.count ?? 1;
  if (pack?.ml) return amount("ml", new Decimal(pack.ml).times(pieces));
  if (pack?.sheets || pack?.size) return paperIn(pack, supply);
  const { unit, quantity } = amountOf(supply);
  return amount(unit, quantity.times(pieces));
}

/**
 * How the line's own quantity compares with what a price bought: pieces, millilitres, or sheets × area.
 * @returns null where the two cannot be compared (the line's millilitres are not known, say). A pack
 *   left out is the same as the line.
 */
export function ratioOf(pack: Pack | null | undefined, supply: Supply): Ratio | null {
  if (!pack?.ml && !pack?.sheets && !pack?.size) return ratio("pieces", one, pack?.count ?? 1);
  const [own, bought] = [amountOf(supply), boughtBy(pack, supply)];
  return bought?.unit === own.unit ? ratio(own.unit, own.quantity, bought.quantity) : null;
}

/** Whether the price bought just what the line is. */
export const isOwnPack = (pack: Pack | null | undefined, supply: Supply): boolean => {
  const found = ratioOf(pack, supply);
  return found?.line.eq(found.pack) ?? false;
};

/** Whether the quantities are within `factor` of each other, either way. */
export const within = (found: Ratio, factor: number): boolean =>
  found.line.lte(found.pack.times(factor)) && found.pack.lte(found.line.times(factor));
