import type { Workbook } from "../../../engine/workbook/index.ts";
import type { LastCopy } from "../../keep-safe/last-copy.ts";
import { deskWords } from "../../words/desk.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";

const words = deskWords.kept;

export type KeptView = Readonly<{ lead: string; more: string }>;

const dayOf = (at: Date): string => {
  const two = (figure: number) => String(figure).padStart(2, "0");
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
};

function savedText(last: LastCopy, today: string, format: Formatter): string {
  const at = new Date(last.at);
  const day = dayOf(at);
  return day === today ? words.today(format.time(at)) : words.on(format.date(day));
}

/** When the last copy was saved, and what a copy would hold now. */
export function keptView(
  book: Workbook,
  last: LastCopy | null,
  state: Readonly<{ lasting: boolean; today: string }>,
  format: Formatter = ownFormat,
): KeptView {
  const holds = words.holds(book.stash?.length ?? 0, book.kits?.length ?? 0);
  const lead = last ? savedText(last, state.today, format) : state.lasting ? words.never : words.gone;
  return { lead, more: holds };
}
