/** What months are known by, whole and short, to 1–12: more than one where two languages mean different ones. */
type MonthNames = ReadonlyMap<string, readonly number[]>;

/** The names of months and of weekdays (0 Sunday to 6 Saturday), in lower case without points. */
export type CalendarNames = Readonly<{ months: MonthNames; weekdays: MonthNames }>;

/** A name as it is looked up. */
export const asName = (name: string): string => name.normalize("NFKC").toLowerCase().replaceAll(".", "");

type Style = Intl.DateTimeFormatOptions;

/** Alone and beside a day, since some languages decline: Polish has "maj 2026" and "3 maja 2026". */
const monthStyles: readonly Style[] = (["long", "short"] as const).flatMap((month) => [
  { month },
  { month, day: "numeric" },
  { month, year: "numeric" },
]);
const weekdayStyles: readonly Style[] = [{ weekday: "long" }, { weekday: "short" }];

function namesOf(
  locales: readonly string[],
  part: "month" | "weekday",
  styles: readonly Style[],
  days: readonly Readonly<{ date: Date; figure: number }>[],
): MonthNames {
  const names = new Map<string, readonly number[]>();
  for (const locale of locales)
    for (const style of styles) {
      const printer = new Intl.DateTimeFormat(locale, { ...style, calendar: "gregory", timeZone: "UTC" });
      for (const { date, figure } of days) {
        const name = asName(printer.formatToParts(date).find(({ type }) => type === part)?.value ?? "");
        // Some languages print months as figures ("4月"); figures are read as figures, not as names.
        if (!/^[\p{L}\p{M}\u200c-]{2,}$/u.test(name)) continue;
        names.set(name, [...new Set([...(names.get(name) ?? []), figure])]);
      }
    }
  return names;
}

const firsts = Array.from({ length: 12 }, (_, index) => ({
  date: new Date(Date.UTC(2026, index, 1)),
  figure: index + 1,
}));

// 1 February 2026 is a Sunday.
const week = Array.from({ length: 7 }, (_, day) => ({
  date: new Date(Date.UTC(2026, 1, 1 + day)),
  figure: day,
}));

/** The names that these locales print, as CLDR has them. */
export const calendarNames = (locales: readonly string[]): CalendarNames => ({
  months: namesOf(locales, "month", monthStyles, firsts),
  weekdays: namesOf(locales, "weekday", weekdayStyles, week),
});
