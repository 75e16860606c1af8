const lengths = [8, 12, 13, 14];

const digitsOf = (text: string): string => text.replace(/[\s-]/g, "");

/**
 * The check digit of a GS1 key whose other digits are `body`: weights 3, 1, 3 … from the right.
 * @see GS1 General Specifications, "Standard check digit calculations for GS1 data structures"
 */
export function gtinCheckDigit(body: string): number {
  const sum = [...body].toReversed().reduce((total, digit, place) => {
    return total + Number(digit) * (place % 2 === 0 ? 3 : 1);
  }, 0);
  return (10 - (sum % 10)) % 10;
}

/** Whether `text` is a GTIN of 8, 12, 13 or 14 digits with the right last digit; spaces and hyphens may part it. */
export function isGtin(text: string): boolean {
  const digits = digitsOf(text);
  if (!/^\d+$/.test(digits) || !lengths.includes(digits.length)) return false;
  return gtinCheckDigit(digits.slice(0, -1)) === Number(digits.at(-1));
}

/**
 * A GTIN filled up to 14 digits, so that the 12-digit and the 13-digit form of one number are equal.
 * The check digit is not asked for: two labels typed with the same slip still mean the same thing.
 * @returns null for what is not 8 to 14 digits, and for a row of noughts, which names nothing
 */
export function gtin14(text: string | null | undefined): string | null {
  const digits = digitsOf(text ?? "");
  return /^\d{8,14}$/.test(digits) && !/^0+$/.test(digits) ? digits.padStart(14, "0") : null;
}

/** Whether `text` looks like a GTIN whose last digit does not fit the others: one of them was mistyped. */
export const isGtinSlip = (text: string): boolean =>
  /^[\d\s-]+$/.test(text) && lengths.includes(digitsOf(text).length) && !isGtin(text);
