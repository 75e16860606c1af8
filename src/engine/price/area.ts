import { Decimal, type Figure } from "../money/index.ts";

/** Sides of the largest size of each ISO 216 series, in millimetres: A0, B0, C0 (ISO 269). */
const largest: ReadonlyMap<string, readonly [number, number]> = new Map([
  ["a", [841, 1189]],
  ["b", [1000, 1414]],
  ["c", [917, 1297]],
]);

/** US sizes in inches. @see ANSI/ASME Y14.1; letter, legal and tabloid are common practice, no source */
const inches: ReadonlyMap<string, readonly [number, number]> = new Map([
  ["halfletter", [5.5, 8.5]],
  ["letter", [8.5, 11]],
  ["legal", [8.5, 14]],
  ["tabloid", [11, 17]],
  ["ledger", [11, 17]],
  ["ansia", [8.5, 11]],
  ["ansib", [11, 17]],
  ["ansic", [17, 22]],
  ["ansid", [22, 34]],
  ["ansie", [34, 44]],
]);

const area = (width: Figure, height: Figure): Decimal => new Decimal(width).times(height);

/** Halves the long side `steps` times and drops the fraction, as ISO 216 does. */
function halved([width, height]: readonly [number, number], steps: number): Decimal {
  if (steps === 0) return area(width, height);
  return halved([Math.floor(height / 2), width], steps - 1);
}

/**
 * Area of a sheet in mm², from an ISO 216 or US name in any case, or `[mm, mm]`.
 * @returns null for a name that is not known
 * @see ISO 216:2007: each size is the one before cut in half, fractions of a millimetre dropped
 */
export function areaOf(size: string | readonly [number, number]): Decimal | null {
  if (typeof size !== "string") return area(size[0], size[1]);
  const name = size.toLowerCase().replace(/[\s_-]/g, "");
  const series = largest.get(name.slice(0, 1));
  if (series && /^.(\d|10)$/.test(name)) return halved(series, Number(name.slice(1)));
  const us = inches.get(name);
  return us ? area(new Decimal(us[0]).times(25.4), new Decimal(us[1]).times(25.4)) : null;
}
