import type { Formatter } from "../../words/index.ts";
import { keepSafeWords } from "../../words/keep-safe.ts";

/** The day of a moment where the person is, `YYYY-MM-DD`. */
export function dayOf(at: string): string {
  const moment = new Date(at);
  const two = (figure: number) => String(figure).padStart(2, "0");
  return `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
}

/** "3 May 2026, 21:14". A moment that cannot be read is shown as it stands. */
export function momentText(at: string, format: Formatter): string {
  if (Number.isNaN(Date.parse(at))) return at;
  return keepSafeWords.state.at(format.date(dayOf(at)), format.time(new Date(at)));
}
