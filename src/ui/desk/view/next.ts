import type { Remake, Workbook } from "../../../engine/workbook/index.ts";
import type { RemakeTab } from "../../app/route.ts";
import { remakeTabs } from "../../app/route.ts";
import { fetchedIds, fetchView } from "../../remakes/view/fetch.ts";
import { promptsOf } from "../../remakes/view/prompts.ts";
import { kitTitle, type Subject, solve, subjectOf } from "../../remakes/view/solve.ts";
import { standInsView } from "../../remakes/view/stand-ins.ts";
import type { SwatchItem } from "../../swatch/pair.ts";
import { deskWords } from "../../words/desk.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";

const words = deskWords.next;

/** One item of the kit beside what plays it. */
export type StripPair = Readonly<{
  key: string;
  number: string;
  kit: SwatchItem;
  standIn: SwatchItem | null;
  name: string;
  /** Of 100; empty for a gap. */
  figure: string;
  for: string;
}>;

/** The remake to go on with, ready to print. */
export type NextView = Readonly<{
  id: string;
  step: RemakeTab;
  title: string;
  kit: string;
  /** Its kit's id: where the contents are logged. */
  kitId: string;
  stepText: string;
  prompts: readonly string[];
  pairs: readonly StripPair[];
  lead: string;
  leadMore: string;
  go: string;
  fetch: string | null;
  others: readonly Readonly<{ id: string; step: RemakeTab; text: string }>[];
}>;

const filled = (list: readonly unknown[] | null | undefined): boolean => (list ?? []).length > 0;

/** How far a remake has come: the page that is next. Null when it is published. */
export function stepOf(remake: Remake): RemakeTab | null {
  if (filled(remake.published)) return null;
  if (!remake.finished) {
    const begun = filled(remake.log) || filled(remake.picks) || fetchedIds(remake).size > 0;
    return begun ? "bench" : "stand-ins";
  }
  return filled(remake.verdicts) || remake.verdict ? "write-up" : "verdict";
}

/** Remakes under way: those not finished first, the latest begun first; of one day by id. */
export function underWay(book: Workbook): readonly Remake[] {
  const rank = (remake: Remake): number => (remake.finished ? 1 : 0);
  const later = (a: Remake, b: Remake): number =>
    a.started < b.started ? 1 : a.started > b.started ? -1 : 0;
  return (book.remakes ?? [])
    .filter((remake) => stepOf(remake) !== null && subjectOf(book, remake.id) !== null)
    .toSorted((a, b) => rank(a) - rank(b) || later(a, b) || (a.id < b.id ? -1 : 1));
}

function otherText(book: Workbook, remake: Remake, format: Formatter) {
  const subject = subjectOf(book, remake.id);
  const step = stepOf(remake) ?? "write-up";
  const name = subject ? kitTitle(subject.kit) : remake.kit;
  return {
    id: remake.id,
    step,
    text: `${name}, ${words.step(format.date(remake.started), remakeTabs.indexOf(step) + 1)}`,
  };
}

function viewOf(subject: Subject, step: RemakeTab, others: NextView["others"], format: Formatter): NextView {
  const { kit, remake } = subject;
  const match = solve(subject);
  const view = standInsView(subject, match, "nearest");
  const fetch = fetchView(subject, match);
  const done = fetch.places.flatMap(({ items }) => items).filter(({ fetched }) => fetched).length;
  const left = fetch.count - done;
  const atBench = step === "bench";
  return {
    id: remake.id,
    step,
    title: words.title[step],
    kit: kitTitle(kit),
    kitId: kit.id,
    stepText: words.step(format.date(remake.started), remakeTabs.indexOf(step) + 1),
    prompts: promptsOf(subject).map(words.prompt),
    pairs: view.rows.map((row) => ({
      key: row.line,
      number: format.count(row.number),
      kit: { id: row.line, supply: row.supply },
      standIn: row.standIn?.item ?? null,
      name: row.standIn?.name ?? (row.state === "gap" ? words.nothing : words.left),
      figure: row.figure === null ? "" : format.count(row.figure),
      for: words.for(row.name),
    })),
    lead: view.rows.length === 0 ? words.noLines : view.lead,
    leadMore: [view.leadMore, atBench && fetch.count > 0 ? words.fetched(done, fetch.count) : ""]
      .filter((part) => part !== "")
      .join(" "),
    go: words.go[step],
    fetch: atBench && left > 0 ? (done > 0 ? words.fetch(left) : words.fetchAll(left)) : null,
    others,
  };
}

/** What to go on with; null when no remake is under way. */
export function nextView(book: Workbook, format: Formatter = ownFormat): NextView | null {
  const [first, ...rest] = underWay(book);
  const subject = first && subjectOf(book, first.id);
  const step = first && stepOf(first);
  if (!subject || !step) return null;
  return viewOf(
    subject,
    step,
    rest.map((remake) => otherText(book, remake, format)),
    format,
  );
}
