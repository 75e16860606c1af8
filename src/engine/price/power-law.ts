import { studentWithin } from "./student.ts";

/** One price, and how much it bought; both above 0. */
export type PricePoint = Readonly<{ quantity: number; price: number }>;

/** `price ∝ quantity^exponent`, fitted to so many prices. */
export type PowerLaw = Readonly<{
  exponent: number;
  points: number;
  /** At a quantity, the factor (1 or more) by which four prices in five miss the fitted one at most. */
  spreadAt: (quantity: number) => number;
}>;

/** The fewest prices that a law is fitted to. */
const fewestPoints = 4;

/** The share of prices that the range is to hold. */
const rangeShare = 0.8;

/** Below this a figure is what a double could not hold of another. */
const dust = 1e-12;

/** Clears the last bits, so that prices which follow a law exactly give its power: 0.75, not 0.7500…01. */
const clear = (power: number): number => Number(power.toFixed(12));

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const squares = (values: readonly number[]): number => values.reduce((sum, value) => sum + value ** 2, 0);

/**
 * Fits a power law by ordinary least squares on the natural logs, in centred sums.
 * @returns null for fewer than four prices, for prices of one quantity only, and for figures beyond a double
 * @see Weisberg (1985), Applied Linear Regression, 2nd edition: the prediction interval,
 *   t · s · √(1 + 1/n + (x₀ − x̄)² ÷ Sxx)
 */
export function fitPowerLaw(points: readonly PricePoint[]): PowerLaw | null {
  const count = points.length;
  if (count < fewestPoints || new Set(points.map(({ quantity }) => quantity)).size < 2) return null;
  const [x, y] = [points.map((point) => Math.log(point.quantity)), points.map((p) => Math.log(p.price))];
  const [meanX, meanY] = [meanOf(x), meanOf(y)];
  const [dx, dy] = [x.map((value) => value - meanX), y.map((value) => value - meanY)];
  const sxx = squares(dx);
  const slope = dx.reduce((sum, value, at) => sum + value * (dy[at] ?? 0), 0) / sxx;
  const residuals = dy.map((value, at) => value - slope * (dx[at] ?? 0));
  const deviation = Math.sqrt(squares(residuals) / (count - 2));
  if (!Number.isFinite(slope) || !Number.isFinite(deviation)) return null;
  const reach = studentWithin(rangeShare, count - 2) * (deviation < dust ? 0 : deviation);
  const spreadAt = (quantity: number): number =>
    Math.exp(reach * Math.sqrt(1 + 1 / count + (Math.log(quantity) - meanX) ** 2 / sxx));
  return { exponent: clear(slope), points: count, spreadAt };
}
