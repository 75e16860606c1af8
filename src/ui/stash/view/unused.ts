import type { StashItem } from "../../../engine/supply/index.ts";
import type { Remake, Workbook } from "../../../engine/workbook/index.ts";
import { ownPick, picksOf, type Subject, subjectOf } from "../../remakes/view/solve.ts";

/** The same day a year before; of 29 February the 28th. */
export function yearBefore(day: string): string {
  const [year = "", month = "", date = ""] = day.split("-");
  const before = String(Number(year) - 1).padStart(4, "0");
  return `${before}-${month}-${month === "02" && date === "29" ? "28" : date}`;
}

/** The day a remake was last worked on, as far as it says. */
const lastDay = ({ started, finished }: Remake): string =>
  finished && finished > started ? finished : started;

/** What plays a part in a remake, or is among its basics. What was only shown was not used. */
export function usedIn(subject: Subject): readonly string[] {
  const { remake } = subject;
  const parts = picksOf(subject).lines.flatMap(({ line, pick }) => {
    if (!pick) return [];
    const own = pick.by === "person" ? ownPick(remake, line) : undefined;
    return own ? (own.uses ?? []).flatMap(({ stash }) => stash ?? []) : [pick.stash];
  });
  return [...parts, ...(remake.essentials ?? []).flatMap(({ stash }) => stash ?? [])];
}

/**
 * What no remake of the last year has used: it plays no part in one that was worked on since then, and is not among
 * its basics. What was got within the year is left out, and so is what is used up or dried out; what has no day when
 * it was got counts as old.
 * @param today `YYYY-MM-DD`
 */
export function unusedSince(book: Workbook, today: string): readonly StashItem[] {
  const since = yearBefore(today);
  const used = new Set(
    (book.remakes ?? [])
      .filter((remake) => lastDay(remake) >= since)
      .flatMap(({ id }) => {
        const subject = subjectOf(book, id);
        return subject ? usedIn(subject) : [];
      }),
  );
  return (book.stash ?? []).filter(
    ({ id, acquired, state }) =>
      !used.has(id) && !(acquired && acquired >= since) && state !== "empty" && state !== "dried",
  );
}

/** In how many remakes each thing has a part, for telling which of two is the one that is known. */
export function partsOf({ remakes }: Pick<Workbook, "remakes">): ReadonlyMap<string, number> {
  const parts = new Map<string, number>();
  for (const { picks, essentials, shownOnly } of remakes ?? []) {
    const uses = [
      ...(picks ?? []).flatMap(({ uses: some }) => some ?? []),
      ...(essentials ?? []),
      ...(shownOnly ?? []),
    ];
    for (const { stash } of uses) if (stash) parts.set(stash, (parts.get(stash) ?? 0) + 1);
  }
  return parts;
}
