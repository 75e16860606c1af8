import { isDate, isPeriod } from "../../../engine/record/index.ts";
import { words } from "../../words/index.ts";
import { asName, type CalendarNames } from "./calendar-names.ts";
import { fault, type Reading, value } from "./reading.ts";

const two = (figure: number): string => String(figure).padStart(2, "0");

/** A figure or a month name. A name that two languages give to different months has both. */
type Piece = Readonly<{ figures: readonly number[]; width: number; isName: boolean }>;

type Written = Readonly<{ pieces: readonly Piece[]; weekdays: readonly number[] | null }>;

/** Words that stand between the pieces of a date: ordinal endings and small words. */
const ignored = new Set(
  "st nd rd th of the on de del den d le la der am e a er re ère r roku года г dia o".split(" "),
);

/** Figures, and words that may be joined by a point, a hyphen or a joiner that is not seen. */
const parts = /\d+|[\p{L}\p{M}]+(?:[.\u200c-]+[\p{L}\p{M}]+)*/gu;

/** A name as it stands, without its article, and without the marks that an East Asian date writes into one with it. */
function formsOf(word: string): readonly string[] {
  const name = asName(word);
  const marks = /^[年月日년월일]*/u.exec(name)?.[0].length ?? 0;
  const shorter = Array.from({ length: marks + 1 }, (_, cut) => name.slice(cut));
  return [...shorter, name.replace(/en$/, "")];
}

const lookUp = <T>(names: ReadonlyMap<string, T>, forms: readonly string[]): T | undefined =>
  forms.map((form) => names.get(form)).find((found) => found !== undefined);

const isIgnored = (form: string): boolean => form === "" || ignored.has(form);

/** The figures, month names and weekday of a text in their order; null when anything else is in it. */
function partsOf(text: string, { months, weekdays }: CalendarNames): Written | null {
  const pieces: Piece[] = [];
  let day: readonly number[] | null = null;
  // Full-width figures, as Japanese keyboards write them, are figures.
  for (const [part] of text.normalize("NFKC").matchAll(parts)) {
    if (/^\d/.test(part)) {
      pieces.push({ figures: [Number(part)], width: part.length, isName: false });
      continue;
    }
    const forms = formsOf(part);
    const month = months.get(forms[0] ?? "");
    const weekday = lookUp(weekdays, forms);
    if (month) pieces.push({ figures: month, width: 0, isName: true });
    else if (weekday) day = weekday;
    else if (!forms.some(isIgnored)) return null;
  }
  return { pieces, weekdays: day };
}

type Day = Readonly<{ year: Piece; month: Piece; date: Piece }>;

/** Which piece is what, in each way that the text can be taken. */
function ordersOf(pieces: readonly [Piece, Piece, Piece], hasPoints: boolean): readonly Day[] {
  const [a, b, c] = pieces;
  const [dayFirst, monthFirst] = [
    { date: a, month: b, year: c },
    { month: a, date: b, year: c },
  ];
  const yearFirst = { year: a, month: b, date: c };
  if (pieces.filter(({ isName }) => isName).length > 1 || c.isName) return [];
  if (a.isName) return [monthFirst];
  if (a.width === 4) return [yearFirst];
  return b.isName || hasPoints ? [dayFirst] : [dayFirst, monthFirst];
}

const isoOf = ({ year, month, date }: Day): readonly string[] =>
  month.figures
    .map((figure) => `${year.figures[0]}-${two(figure)}-${two(date.figures[0] ?? 0)}`)
    .filter(isDate);

const weekdayOf = (iso: string): number => new Date(`${iso}T12:00:00Z`).getUTCDay();

/**
 * Reads a day as people write it: 2026-04-30, 30 April 2026, April 30 2026, 30.4.2026, 30/4/2026, 2026年4月30日.
 * With slashes, hyphens or spaces either figure may be the day; where both readings exist the two are offered.
 * Points are read day first (common practice, no source). A weekday that is named has to be that day's.
 * @returns ISO 8601 text, `YYYY-MM-DD`
 */
export function readDate(written: string, names: CalendarNames): Reading {
  const text = written.trim();
  if (text === "") return { kind: "empty" };
  const read = partsOf(text, names);
  const [first, second, third] = read?.pieces ?? [];
  if (!read || !first || !second || read.pieces.length > 3) return fault(words.date.unread);
  if (!third) return fault(words.date.noYear);
  const orders = ordersOf([first, second, third], text.includes("."));
  if (orders.length === 0) return fault(words.date.unread);
  if (orders.every(({ year }) => year.width !== 4)) return fault(words.date.shortYear);
  const days = [...new Set(orders.flatMap(isoOf))].filter(
    (iso) => read.weekdays?.includes(weekdayOf(iso)) ?? true,
  );
  return readingOf(days, words.date.noSuchDay(text));
}

function readingOf(values: readonly string[], none: string): Reading {
  const [only] = values;
  if (only === undefined) return fault(none);
  return values.length === 1 ? value(only) : { kind: "ask", values };
}

/** Reads a month: April 2026, 2026-04, 4/2026, 2026年4月. @returns ISO 8601 text, `YYYY-MM` */
export function readMonth(written: string, names: CalendarNames): Reading {
  const text = written.trim();
  if (text === "") return { kind: "empty" };
  const pieces = partsOf(text, names)?.pieces ?? [];
  const year = pieces.find((piece) => piece.width === 4);
  const month = pieces.find((piece) => piece !== year);
  if (!month || pieces.length > 2) return fault(words.date.unreadMonth);
  if (!year) return fault(pieces.length === 2 ? words.date.shortYear : words.date.noYear);
  const months = month.figures.map((figure) => `${year.figures[0]}-${two(figure)}`).filter(isPeriod);
  return readingOf(months, words.date.unreadMonth);
}
