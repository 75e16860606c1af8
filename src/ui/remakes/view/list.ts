import type { Remake, Workbook } from "../../../engine/workbook/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { format } from "../../words/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { kitTitle, picksOf, type Subject, subjectOf } from "./solve.ts";
import { judgedCount } from "./verdict.ts";

const words = remakeWords.list;

/** One remake in the list, ready to print. */
export type RemakeRow = Readonly<{ id: string; title: string; maker: string; begun: string; stands: string }>;

export type RemakesView = Readonly<{ lead: string; rows: readonly RemakeRow[] }>;

const filled = (subject: Subject): number =>
  picksOf(subject).lines.filter(({ pick }) => pick !== null).length;

/** The furthest a remake has come, in a few words. */
function standsAt(subject: Subject): string {
  const { kit, remake } = subject;
  const all = kit.lines?.length ?? 0;
  const published = remake.published?.findLast(({ at }) => at)?.at;
  if (published) return words.published(format.date(published));
  if (remake.finished) return words.finished(format.date(remake.finished));
  if (all === 0) return words.noLines;
  const judged = judgedCount(remake);
  return judged > 0 ? words.verdicts(judged, all) : words.standIns(filled(subject), all);
}

const isDone = ({ finished, published }: Remake): boolean =>
  Boolean(finished) || (published ?? []).length > 0;

/** All remakes, the newest first; those of kits that are gone cannot be told of. */
export function remakesView(book: Workbook): RemakesView {
  const remakes = (book.remakes ?? []).toSorted((a, b) =>
    a.started < b.started ? 1 : a.started > b.started ? -1 : 0,
  );
  const done = remakes.filter(isDone).length;
  return {
    lead: words.lead(remakes.length - done, done),
    rows: remakes.flatMap((remake) => {
      const subject = subjectOf(book, remake.id);
      if (!subject) return [];
      return [
        {
          id: remake.id,
          title: kitTitle(subject.kit),
          maker: `${subject.kit.maker}, ${format.month(subject.kit.period)}`,
          begun: format.date(remake.started),
          stands: standsAt(subject),
        },
      ];
    }),
  };
}

/** The kits to choose from, the newest first. */
export const kitOptions = ({ kits }: Pick<Workbook, "kits">) =>
  (kits ?? [])
    .toSorted((a, b) => (a.period < b.period ? 1 : a.period > b.period ? -1 : 0))
    .map((kit) => ({
      value: kit.id,
      label: kitTitle(kit),
      more: `${kit.maker}, ${format.month(kit.period)}`,
    }));

/** A remake just begun: the kit's prompt comes with it. */
export const newRemake = (id: string, kit: Kit, started: string): Remake => ({
  id,
  kit: kit.id,
  started,
  finished: null,
  rules: { twins: false },
  prompts: kit.prompt ? [{ text: kit.prompt, from: "kit", date: kit.loggedOn ?? null }] : [],
  picks: [],
});
