import { convert, exact, quotient } from "../money/index.ts";
import type { Supply } from "../supply/index.ts";
import type { Scene } from "./book.ts";
import { fitPowerLaw, type PowerLaw, type PricePoint } from "./power-law.ts";
import { amountOf, boughtBy, type Ratio } from "./quantity.ts";
import type { Evidence, Line } from "./schema.ts";

/** Digits beyond which a scaled price is nonsense, and could not be printed. */
const mostDigits = 100;

/** The trait that tells one kind of a family from another: what a paper is for, a paint's medium. */
function traitOf(supply: Supply): string | null {
  if (supply.family === "paper") return supply.traits?.use ?? null;
  return supply.family === "paint" ? (supply.traits?.medium ?? null) : null;
}

const sameKind = (a: Supply, b: Supply): boolean => a.family === b.family && traitOf(a) === traitOf(b);

/** What one unit of a currency is in the market's, each asked once; null where no rate is known. */
function unitsIn(scene: Scene): (currency: string) => number | null {
  const exchange = { rates: scene.book.rates ?? [], on: scene.valuedOn, place: scene.place };
  const known = new Map<string, number | null>();
  return (currency) => {
    const before = known.get(currency);
    if (before !== undefined) return before;
    const one = convert(exact({ amount: "1", currency }), scene.market.currency, exchange);
    const units = one.ok ? quotient(one.value.amount).toNumber() : null;
    known.set(currency, units);
    return units;
  };
}

/** Reads list prices as points; null for one in another unit, of nothing, or without a rate. */
function pointIn(scene: Scene): (evidence: Evidence, supply: Supply) => PricePoint | null {
  const unitIn = unitsIn(scene);
  const { unit } = amountOf(scene.line.supply);
  return ({ price, pack, plusTax }, supply) => {
    const bought = boughtBy(pack, supply);
    const worth = price ? unitIn(price.currency) : null;
    if (!price || worth === null || bought?.unit !== unit) return null;
    const paid = Number(price.amount) * (1 + Number(plusTax ?? "0")) * worth;
    return paid > 0 ? { quantity: bought.quantity.toNumber(), price: paid } : null;
  };
}

const listPrices = (line: Line): readonly Evidence[] =>
  (line.evidence ?? []).filter(({ kind }) => kind === "list");

/** How prices grow with quantity, from how many of them, and the factor that its range reaches either way. */
export type Curve = Readonly<{ exponent: number; points: number; spread: number }>;

/** A power that no money would be written with is none. */
const isUsable = (curve: Curve, ratio: Ratio): boolean =>
  Number.isFinite(curve.spread) &&
  Math.abs(curve.exponent * Math.log10(ratio.line.div(ratio.pack).toNumber())) < mostDigits;

/**
 * A power law through all list prices that the workbook has of the line's family and use or medium, tax
 * added, in the market's currency. One whose rate is missing is left out, since nothing is charged from it.
 */
function fitted(scene: Scene): PowerLaw | null {
  const toPoint = pointIn(scene);
  const points = (scene.book.kits ?? [])
    .flatMap((kit) => kit.lines ?? [])
    .filter(({ supply }) => sameKind(supply, scene.line.supply))
    .flatMap((line) => listPrices(line).map((evidence) => toPoint(evidence, line.supply)));
  return fitPowerLaw(points.filter((point) => point !== null));
}

/** `fitted`, once per kind and unit: a kit may have many lines of one. */
function lawOf(scene: Scene): PowerLaw | null {
  const { supply } = scene.line;
  const key = JSON.stringify([supply.family, traitOf(supply), amountOf(supply).unit]);
  const known = scene.laws.get(key);
  if (known !== undefined) return known;
  const law = fitted(scene);
  scene.laws.set(key, law);
  return law;
}

/**
 * How prices of the line's kind grow with quantity, at the line's own.
 * @param ratio what is to be scaled by it
 * @returns null where there are too few prices, or of one quantity only
 */
export function curveOf(scene: Scene, ratio: Ratio): Curve | null {
  const law = lawOf(scene);
  if (!law) return null;
  const spread = law.spreadAt(amountOf(scene.line.supply).quantity.toNumber());
  const curve = { exponent: law.exponent, points: law.points, spread };
  return isUsable(curve, ratio) ? curve : null;
}
