import { isDate } from "../../record/index.ts";
import { type Cell, cellText } from "../table.ts";
import { type IntakeWords, wordsIn } from "../words/index.ts";
import { doubtful, type Said, sure, unread } from "./said.ts";

/** Whether the day or the month comes first in a column; null where its cells do not tell. */
export type DayOrder = "day" | "month" | null;

const threeParts = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2})\.?$/;

/** The order of a column, by the first cell that leaves no doubt: 25/12 has its day first. */
export function dayOrder(cells: readonly Cell[]): DayOrder {
  for (const cell of cells) {
    const [, first, , second] = typeof cell === "string" ? (threeParts.exec(cell) ?? []) : [];
    if (Number(first) > 12) return "day";
    if (Number(second) > 12) return "month";
  }
  return null;
}

const two = (part: string | number): string => String(part).padStart(2, "0");
const iso = (year: string | number, month: string | number, day: string | number): string | null => {
  const text = `${year}-${two(month)}-${two(day)}`;
  return isDate(text) ? text : null;
};

const months: ReadonlyMap<string, number> = new Map(
  Object.values(wordsIn).flatMap((words) =>
    words.months.split(" ").map((month, at) => [month, at + 1] as const),
  ),
);

const monthNamed = (word: string | undefined): number | undefined =>
  months.get((word ?? "").toLowerCase().slice(0, 3));

/** "2 November 2024", "den 2 nov 2024", "Nov 2, 2024". */
function withMonth(text: string): string | null {
  const [, day = "", word, year = ""] =
    /^(?:den\s)?(\d{1,2})(?:st|nd|rd|th)?\.?\s*(\p{L}{3,9})\.?,?\s*(\d{4})$/iu.exec(text) ?? [];
  const [, other, otherDay = "", otherYear = ""] =
    /^(\p{L}{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})$/iu.exec(text) ?? [];
  const month = monthNamed(word ?? other);
  return month === undefined ? null : iso(year || otherYear, month, day || otherDay);
}

/** The day that a spreadsheet counts, from 1 on 1 January 1900 with a leap day in that year that never was. */
const serialDay = (serial: number): string =>
  new Date(Math.floor(serial - 25_569) * 86_400_000).toISOString().slice(0, 10);

/** 1955 to 2064: before or after, a bare number is hardly a day. */
const isSerial = (value: number): boolean => value >= 20_000 && value <= 60_000;

function parted(text: string, order: DayOrder, words: IntakeWords): Said<string> | null {
  const [, first = "", sign, second = "", last = ""] = threeParts.exec(text) ?? [];
  if (first === "") return null;
  const year = last.length === 2 ? `20${last}` : last;
  const known = order ?? (sign === "/" ? null : "day"); // with points or dashes hardly anybody begins with the month
  const [day, month] = known === "month" ? [second, first] : [first, second];
  const date = iso(year, month, day);
  if (date === null) return null;
  if (known === null && first !== second) return doubtful(date, words.dayFirst(date));
  return last.length === 2 ? doubtful(date, words.dayRead(date)) : sure(date);
}

function dayOf(cell: Cell, order: DayOrder, words: IntakeWords): Said<string> {
  if (typeof cell === "number") {
    const compact = String(cell).replace(/^(\d{4})(\d{2})(\d{2})$/, "$1-$2-$3");
    if (isDate(compact)) return sure(compact);
    return isSerial(cell)
      ? doubtful(serialDay(cell), words.dayRead(serialDay(cell)))
      : unread(words.unread(String(cell)));
  }
  const text = cellText(cell).replace(/[T ]\d{1,2}:\d{2}.*$/, "");
  const turned = text.replace(
    /^(\d{4})([./-])(\d{1,2})\2(\d{1,2})$/,
    (_, year, __, month, day) => `${year}-${two(month)}-${two(day)}`,
  );
  if (isDate(turned)) return sure(turned);
  const compact = turned.replace(/^(\d{4})(\d{2})(\d{2})$/, "$1-$2-$3");
  if (isDate(compact)) return sure(compact);
  const named = withMonth(text);
  return named === null ? (parted(text, order, words) ?? unread(words.unread(text))) : sure(named);
}

/** A day of the calendar. One after `today` is kept and said. */
export function readDay(cell: Cell, order: DayOrder, today: string, words: IntakeWords): Said<string> {
  const said = dayOf(cell, order, words);
  return said.value !== null && said.value > today ? doubtful(said.value, words.toCome(said.value)) : said;
}

/** Whether a cell looks like a day. */
export const isDay = (cell: Cell): boolean =>
  typeof cell === "object"
    ? cell !== null
    : typeof cell === "string" && dayOf(cell, null, wordsIn.en).value !== null;
