const dayMs = 86_400_000;

/** Midnight UTC of a calendar date, or NaN where the calendar has no such day (30 February). */
function midnight(text: string): number {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return Number.NaN;
  const date = new Date(`${text}T00:00:00Z`);
  // Some engines roll 2026-02-30 over into March: only a day that is still the one that was asked for exists.
  return date.getUTCDate() === Number(text.slice(8)) ? date.getTime() : Number.NaN;
}

/** Whether `text` is a date of the calendar, written `YYYY-MM-DD` (ISO 8601). */
export const isDate = (text: string): boolean => !Number.isNaN(midnight(text));

/** Whether `text` is a month, written `YYYY-MM` (ISO 8601). */
export const isPeriod = (text: string): boolean => /^\d{4}-(0[1-9]|1[0-2])$/.test(text);

/** Whole days from `from` to `to`, negative when `to` is earlier; NaN when either is no date. */
export const daysBetween = (from: string, to: string): number => (midnight(to) - midnight(from)) / dayMs;
