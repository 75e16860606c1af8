import { foldText } from "./fold.ts";

/** Short and long side in millimetres. */
export type SheetMm = readonly [number, number];

/** The largest sheet of each ISO series; every other one is the one before, halved. ISO 216 (A, B), ISO 269 (C). */
const largest: Readonly<Record<string, SheetMm>> = { a: [841, 1189], b: [1000, 1414], c: [917, 1297] };

/** US sizes in inches: ANSI/ASME Y14.1 for the lettered ones, common trade sizes for the others. */
const inches: ReadonlyMap<string, SheetMm> = new Map([
  ["halfletter", [5.5, 8.5]],
  ["statement", [5.5, 8.5]],
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

const sorted = (one: number, other: number): SheetMm => (one <= other ? [one, other] : [other, one]);

/** Halving drops the fraction: rounding the formula instead gives 595 for the short side of A1. */
const halved = ([short, long]: SheetMm): SheetMm => [Math.floor(long / 2), short];

function isoSheet(name: string): SheetMm | null {
  const [, series = "", step = ""] = /^(?:iso)?([abc])(10|\d)$/.exec(name) ?? [];
  const start = largest[series];
  if (!start) return null;
  return Array.from({ length: Number(step) }).reduce<SheetMm>(halved, start);
}

/** 25.4 mm to the inch exactly; in tenths, so that 8.5 in is 215.9 and not a hair beside it. */
function usSheet(name: string): SheetMm | null {
  const size = inches.get(name.replace(/^us/, "").replace(/-/g, ""));
  return size ? sorted(Math.round(size[0] * 2540) / 100, Math.round(size[1] * 2540) / 100) : null;
}

function typedSheet(name: string): SheetMm | null {
  const [, one, other] = /^(\d+(?:\.\d+)?)(?:mm)?[x×*](\d+(?:\.\d+)?)(?:mm)?$/.exec(name) ?? [];
  return one && other && Number(one) > 0 && Number(other) > 0 ? sorted(Number(one), Number(other)) : null;
}

/**
 * A paper size in millimetres, short side first: an ISO name ("A4"), a US name ("letter", "ANSI C"),
 * millimetres as text ("210 x 297") or as a pair either way round.
 * @returns null for a name nobody agreed on
 */
export function sheetMm(size: string | readonly [number, number] | null | undefined): SheetMm | null {
  if (!size) return null;
  if (typeof size !== "string") return sorted(size[0], size[1]);
  const name = foldText(size);
  return isoSheet(name) ?? usSheet(name) ?? typedSheet(name);
}
