import { isDate, type Language } from "../../record/index.ts";
import type { Family } from "../../supply/index.ts";
import { readFigure } from "../read/number.ts";
import { escaped, plainText, unplainText } from "./plain.ts";

/**
 * A cell as it is written: text, a number as decimal text, a day, or nothing. `places`: how many decimals it is shown
 * with, so that "39.50" comes back as it was; null leaves that to the number.
 */
export type WrittenCell =
  | string
  | Readonly<{ number: string; places: number | null }>
  | Readonly<{ date: string }>
  | null;

/** What a cell's words depend on. */
export type Speech = Readonly<{ family: Family; language: Language }>;

/**
 * How one column writes its values, and reads them again. `read` takes the cell as text, and gives undefined for what
 * it does not understand.
 */
export type Codec = Readonly<{
  write: (value: unknown, speech: Speech) => WrittenCell;
  read: (text: string, speech: Speech) => unknown;
}>;

export const text: Codec = { write: (value) => plainText(String(value)), read: unplainText };

const inList = (one: string): string => plainText(one).replace(/;|^\s|\s$/g, escaped);

/** Texts with semicolons between them. */
export const texts: Codec = {
  write: (value) => (value as readonly string[]).map(inList).join("; "), // the schema's list of texts
  read: (written) =>
    written
      .split(";")
      .map((part) => part.trim())
      .filter((part) => part !== "")
      .map(unplainText),
};

const decimal = /^\d+(?:\.\d+)?$/;

/** Decimal text: as it stands, with a decimal comma, or as people group it. */
function decimalOf(written: string): string | undefined {
  const trimmed = written.trim();
  const pointed = /^\d+,\d+$/.test(trimmed) ? trimmed.replace(",", ".") : trimmed;
  return decimal.test(pointed) ? pointed : readFigure(trimmed, null)?.text;
}

export const number: Codec = {
  write: (value) => ({ number: String(value), places: null }),
  read: (written) => {
    const exponent = /^\d+(?:\.\d+)?e[+-]?\d+$/i.test(written.trim()) ? written.trim() : undefined;
    const found = exponent ?? decimalOf(written);
    return found === undefined ? undefined : Number(found);
  },
};

/** As many figures as a double keeps. */
const exactFigures = 15;

/** An amount of money: a number where a double holds it to the last figure, else text. */
export const amount: Codec = {
  write: (value) => {
    const written = String(value);
    const [, whole = "", fraction = ""] = /^(0|[1-9]\d*)(?:\.(\d+))?$/.exec(written) ?? [];
    const isExact = whole !== "" && whole.length + fraction.length <= exactFigures && fraction.length < 10;
    return isExact ? { number: written, places: fraction.length } : written;
  },
  read: decimalOf,
};

/** Days of spreadsheets begin in 1900, with a leap day in that year that never was. */
const firstDay = "1900-03-01";

export const day: Codec = {
  write: (value) => {
    const date = String(value);
    return date < firstDay ? date : { date };
  },
  read: (written) => (isDate(written.trim()) ? written.trim() : undefined),
};

const sides = /^(\d+(?:\.\d+)?(?:e[+-]?\d+)?) x (\d+(?:\.\d+)?(?:e[+-]?\d+)?) mm$/;

/** A paper size: its name, or its sides in millimetres. A name that looks like sides is told from them. */
export const size: Codec = {
  write: (value) => {
    if (Array.isArray(value)) return `${value[0]} x ${value[1]} mm`;
    const name = plainText(String(value));
    return sides.test(name) ? name.replace(/^\d/, escaped) : name;
  },
  read: (written) => {
    const [, width, height] = sides.exec(written) ?? [];
    return width === undefined ? unplainText(written) : [Number(width), Number(height)];
  },
};

/** Three numbers. */
export const triple: Codec = {
  write: (value) => (value as readonly number[]).join("; "), // the schema's triple
  read: (written) => {
    const parts = written.split(";").map((part) => Number(part.trim() || Number.NaN));
    return parts.length === 3 && parts.every(Number.isFinite) ? parts : undefined;
  },
};
