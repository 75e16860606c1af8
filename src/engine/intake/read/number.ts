import type { Cell } from "../table.ts";
import { cellText } from "../table.ts";

/** Which sign parts whole from fraction in a column; null where its cells do not tell. */
export type DecimalSign = "." | "," | null;

const signOf = (text: string): DecimalSign => {
  const both =
    /[.,'’\s]\d{3}([.,])\d{1,2}(?!\d)/.exec(text)?.[1] ??
    /(?<![.,])([.,])(?:\d{1,2}|\d{4,})(?![\d.,])/.exec(text)?.[1];
  return both === "." || both === "," ? both : null;
};

/** The decimal sign of a column, by the first cell that leaves no doubt of it. */
export function decimalSign(cells: readonly Cell[]): DecimalSign {
  for (const cell of cells) {
    const sign = typeof cell === "string" ? signOf(cell) : null;
    if (sign !== null) return sign;
  }
  return null;
}

/** Beyond this a number is written with an exponent, and has lost its last figures. */
const largest = 1e15;

/** A number as decimal text, and whether its sign could also have parted thousands. */
type Figure = Readonly<{ text: string; unsure: boolean }>;

const figure = /^[+-]?\d[\d.,'’ ]*$/;

const plain = (whole: string, fraction: string): string =>
  `${whole.replace(/\D/g, "").replace(/^0+(?=\d)/, "")}${fraction === "" ? "" : `.${fraction}`}`;

/**
 * A written number as decimal text without grouping: `1.234,50` is `1234.50`. One sign with three digits behind it
 * ("1,234") parts thousands, unless the column's other cells tell otherwise; if they tell nothing, that is `unsure`.
 * @returns null for what is no number, or below nought
 */
export function readFigure(cell: Cell, sign: DecimalSign): Figure | null {
  if (typeof cell === "number") {
    if (!(cell >= 0 && cell < largest)) return null;
    // No float's noise ("0.30000000000000004") and no exponent.
    const fixed = cell.toFixed(6).replace(/\.?0+$/, "");
    return { text: fixed, unsure: false };
  }
  const text = cellText(cell).trim().replace(/\s+/g, " ");
  if (!figure.test(text) || text.startsWith("-")) return null;
  const last = /[.,](?=[^.,]*$)/.exec(text);
  if (!last) return { text: plain(text, ""), unsure: false };
  const [whole, fraction] = [text.slice(0, last.index), text.slice(last.index + 1)];
  if (!/^\d+$/.test(fraction))
    return /^\d{3}(?: \d{3})*$/.test(fraction) ? { text: plain(text, ""), unsure: false } : null;
  const isRepeated = whole.includes(last[0]);
  const isMixed = /[.,]/.test(whole.replaceAll(last[0], ""));
  const groups =
    fraction.length === 3 &&
    !isMixed &&
    (isRepeated || sign !== last[0]) &&
    !/^0?$/.test(whole.replace(/\D/g, ""));
  if (isRepeated && fraction.length !== 3) return null;
  if (groups) return { text: plain(whole + fraction, ""), unsure: !isRepeated && sign === null };
  return { text: plain(whole, fraction), unsure: false };
}
