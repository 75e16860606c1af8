import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { keepSafeWords } from "../../words/keep-safe.ts";
import { momentText } from "./moment.ts";

const words = keepSafeWords.state;

/** What there is to keep and when it was last copied. */
export type Kept = Readonly<{
  empty: boolean;
  /** Whether anything outlives the tab. */
  lasting: boolean;
  /** When the last copy was saved, ISO 8601 with time. */
  lastCopy: string | null;
  /** Changes that stand, each with its time. */
  past: readonly Readonly<{ at: string }>[];
  /** ISO 8601 with time. */
  now: string;
}>;

/** How many changes the last copy does not have. */
export const changesSince = ({ past, lastCopy }: Kept): number =>
  past.filter(({ at }) => lastCopy === null || Date.parse(at) > Date.parse(lastCopy)).length;

const manyChanges = 25;
const dayMs = 86_400_000;

/** Whether it is time for a copy: after 25 changes, or a day after the last copy where anything changed. */
export function isCopyDue(kept: Kept): boolean {
  if (kept.empty) return false;
  const count = changesSince(kept);
  if (count >= manyChanges) return true;
  const since = kept.lastCopy ?? kept.past[0]?.at;
  return count > 0 && since !== undefined && Date.parse(kept.now) - Date.parse(since) > dayMs;
}

function leadOf(kept: Kept, format: Formatter): string {
  if (kept.empty) return words.empty;
  if (kept.lastCopy === null) return kept.lasting ? words.never : words.notKept;
  const when = momentText(kept.lastCopy, format);
  const count = changesSince(kept);
  return count === 0 ? words.fresh(when) : words.since(when, count);
}

/** How safe everything is, in a sentence and what follows from it. */
export function keptView(
  kept: Kept,
  format: Formatter = ownFormat,
): Readonly<{ lead: string; more: string }> {
  const where = kept.lasting ? words.where : words.notKeptMore;
  const due = kept.lastCopy === null ? words.dueFirst : words.due;
  return { lead: leadOf(kept, format), more: isCopyDue(kept) ? `${due} ${where}` : where };
}
