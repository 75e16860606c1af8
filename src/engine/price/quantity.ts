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

/** Sheets × area on both sides; sheets alone where neither side knows its size. */
function paperRatio(pack: Pack, supply: Supply): Ratio | null {
  const own = sheetsOf(supply);
  const sheets = pack.sheets ?? own.sheets;
  const area = pack.size ? areaOf(pack.size) : own.area;
  if (own.sheets === null || sheets === null) return null;
  const count = sheets * (pack.count ?? 1);
  if (!pack.size && own.area === null) return ratio("sheets", own.sheets, count);
  if (own.area === null || area === null) return null;
  return ratio("mm²", own.area.times(own.sheets), area.times(count));
}

/**
 * How the line's own quantity compares with what a price bought: pieces, millilitres, or sheets × area.
 * @returns null where the two cannot be compared (the line's millilitres are not known, say). A pack
 *   left out is the same as the line.
 */
export function ratioOf(pack: Pack | null | undefined, supply: Supply): Ratio | null {
  const millilitres = pack?.ml;
  if (pack && millilitres) {
    const own = millilitresOf(supply);
    return own === null ? null : ratio("ml", own, new Decimal(millilitres).times(pack.count ?? 1));
  }
  if (pack?.sheets || pack?.size) return paperRatio(pack, supply);
  return ratio("pieces", one, pack?.count ?? 1);
}

/** Whether the price bought just what the line is. */
export const isOwnPack = (pack: Pack | null | undefined, supply: Supply): boolean => {
  const found = ratioOf(pack, supply);
  return found?.line.eq(found.pack) ?? false;
};

/** Whether the quantities are within `factor` of each other, either way. */
export const within = (found: Ratio, factor: number): boolean =>
  found.line.lte(found.pack.times(factor)) && found.pack.lte(found.line.times(factor));
