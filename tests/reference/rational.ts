/** Exact fractions of BigInt, written apart from the engine so that the two can be compared. */
export type Rational = Readonly<{ over: bigint; under: bigint }>;

/** Reads a plain decimal such as "12.50" or "-3". */
export function rational(text: string): Rational {
  const [whole = "0", part = ""] = text.replace("-", "").split(".");
  const over = BigInt(whole + part) * (text.startsWith("-") ? -1n : 1n);
  return { over, under: 10n ** BigInt(part.length) };
}

export const add = (a: Rational, b: Rational): Rational => ({
  over: a.over * b.under + b.over * a.under,
  under: a.under * b.under,
});
export const multiply = (a: Rational, b: Rational): Rational => ({
  over: a.over * b.over,
  under: a.under * b.under,
});
export const divide = (a: Rational, b: Rational): Rational => multiply(a, { over: b.under, under: b.over });
export const negate = (a: Rational): Rational => ({ ...a, over: -a.over });
export const greater = (a: Rational, b: Rational): boolean => a.over * b.under > b.over * a.under;

/** Half away from zero, to `digits` decimals, as text. */
export function rounded(value: Rational, digits: number): string {
  const minus = value.over < 0n;
  const over = (minus ? -value.over : value.over) * 10n ** BigInt(digits);
  const units = (2n * over + value.under) / (2n * value.under);
  const text = units.toString().padStart(digits + 1, "0");
  const sign = minus && units > 0n ? "-" : "";
  if (digits === 0) return sign + text;
  return `${sign}${text.slice(0, -digits)}.${text.slice(-digits)}`;
}
