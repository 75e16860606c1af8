import { isDate, isPeriod } from "../../../engine/record/index.ts";
import { words } from "../../words/index.ts";
import { fault, type Reading, value } from "./reading.ts";

/** What month names are known by: English and the reader's own language, whole and short. */
export type MonthNames = ReadonlyMap<string, number>;

const bare = (name: string): string => name.toLowerCase().replaceAll(".", "");

/** Month names of the given locales, in lower case without points, to 1–12. */
export function monthNames(locales: readonly string[]): MonthNames {
  const names = new Map<string, number>();
  for (const locale of locales) {
    for (const month of ["long", "short"] as const) {
      const printer = new Intl.DateTimeFormat(locale, { month, day: "numeric", timeZone: "UTC" });
      for (let index = 0; index < 12; index += 1) {
        const parts = printer.formatToParts(new Date(Date.UTC(2026, index, 1)));
        const name = bare(parts.find((part) => part.type === "month")?.value ?? "");
        // Some languages print months as figures ("4月"); figures are read as figures, not as names.
        if (/^\p{L}{3,}$/u.test(name)) names.set(name, index + 1);
      }
    }
  }
  return names;
}

const two = (figure: number): string => String(figure).padStart(2, "0");
const iso = (year: number, month: number, day: number): string => `${year}-${two(month)}-${two(day)}`;

/**
 * Reads a day as people write it: 2026-04-30, 30 April 2026, April 30 2026, 30.4.2026, 30/4/2026.
 * With slashes or hyphens either figure may be the day; where both readings exist the two are offered.
 * Points are read day first (common practice, no source).
 * @returns ISO 8601 text, `YYYY-MM-DD`
 */
export function readDate(written: string, names: MonthNames): Reading {
  const text = written.trim();
  if (text === "") return { kind: "empty" };
  const [first, second, third] = figuresAndNames(text, names);
  if (first === undefined || second === undefined) return fault(words.date.unread);
  if (third === undefined) return fault(words.date.noYear);
  if (figuresAndNames(text, names).length > 3) return fault(words.date.unread);
  return readPieces([first, second, third], text);
}

/** Words that stand between the pieces of a date: ordinal endings, small words, and the marks of East Asian dates. */
const ignored = /^(st|nd|rd|th|of|de|den|le|der|[年月日년월일])$/i;

type Piece = Readonly<{ figure: number; width: number; isName: boolean }>;

/** The figures and month names of a text in their order; empty when anything else is in it. */
function figuresAndNames(text: string, names: MonthNames): readonly Piece[] {
  const pieces = text.match(/\d+|\p{L}+/gu) ?? [];
  const read = pieces
    .filter((piece) => !ignored.test(piece))
    .map((piece) => {
      if (/^\d/.test(piece)) return { figure: Number(piece), width: piece.length, isName: false };
      const month = names.get(bare(piece));
      return month === undefined ? null : { figure: month, width: 0, isName: true };
    });
  return read.some((piece) => piece === null) ? [] : read.filter((piece) => piece !== null);
}

function readPieces([a, b, c]: readonly [Piece, Piece, Piece], text: string): Reading {
  if (a.isName && !b.isName) return day(c, a, b, text);
  if (b.isName) return a.width === 4 ? day(a, b, c, text) : day(c, b, a, text);
  if (a.isName || c.isName) return fault(words.date.unread);
  if (a.width === 4) return day(a, b, c, text);
  if (text.includes(".")) return day(c, b, a, text);
  return eitherWay(a, b, c, text);
}

function eitherWay(a: Piece, b: Piece, year: Piece, text: string): Reading {
  const dayFirst = day(year, b, a, text);
  const monthFirst = day(year, a, b, text);
  if (dayFirst.kind !== "value") return monthFirst;
  if (monthFirst.kind !== "value" || monthFirst.value === dayFirst.value) return dayFirst;
  return { kind: "ask", values: [dayFirst.value, monthFirst.value] };
}

function day(year: Piece, month: Piece, date: Piece, text: string): Reading {
  if (year.width !== 4) return fault(words.date.shortYear);
  const read = iso(year.figure, month.figure, date.figure);
  return isDate(read) ? value(read) : fault(words.date.noSuchDay(text));
}

/** Reads a month: April 2026, 2026-04, 4/2026. @returns ISO 8601 text, `YYYY-MM` */
export function readMonth(written: string, names: MonthNames): Reading {
  const text = written.trim();
  if (text === "") return { kind: "empty" };
  const pieces = figuresAndNames(text, names);
  const year = pieces.find((piece) => piece.width === 4);
  const month = pieces.find((piece) => piece !== year);
  if (!month || pieces.length > 2) return fault(words.date.unreadMonth);
  if (!year) return fault(pieces.length === 2 ? words.date.shortYear : words.date.noYear);
  const read = `${year.figure}-${two(month.figure)}`;
  return isPeriod(read) ? value(read) : fault(words.date.unreadMonth);
}
