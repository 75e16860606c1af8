import type { KitMatch } from "../../../engine/match/index.ts";
import type { Line } from "../../../engine/price/index.ts";
import type { Remake } from "../../../engine/workbook/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { type Subject, shelvesOf } from "./solve.ts";

const words = remakeWords.verdict;

export type LineVerdict = NonNullable<Remake["verdicts"]>[number];

/** One item as it is judged, with what stood in. */
export type VerdictRow = Readonly<{ line: Line; number: number; stoodIn: string; verdict: LineVerdict }>;

export type VerdictView = Readonly<{ lead: string; more: string; rows: readonly VerdictRow[] }>;

const isSaid = ({ use, buy, replaces, text }: LineVerdict): boolean =>
  (use ?? null) !== null || (buy ?? null) !== null || Boolean(replaces) || Boolean(text);

/** From this on it counts as often. */
const often = 3;

/** Every item with what was said of it. */
export function verdictView(subject: Subject, match: KitMatch): VerdictView {
  const shelves = shelvesOf(subject);
  const said = new Map((subject.remake.verdicts ?? []).map((verdict) => [verdict.line, verdict]));
  const rows = (subject.kit.lines ?? []).map((line, index): VerdictRow => {
    const item = shelves.item(match.lines[index]?.pick?.stash);
    return {
      line,
      number: index + 1,
      stoodIn: item ? words.stoodIn(item.supply.name) : words.nothingStoodIn,
      verdict: said.get(line.id) ?? {},
    };
  });
  const judged = rows.filter(({ verdict }) => isSaid(verdict));
  return {
    lead: words.lead(judged.length, rows.length),
    more:
      judged.length === 0
        ? ""
        : words.leadMore(
            judged.filter(({ verdict }) => (verdict.use ?? 0) >= often).length,
            judged.filter(({ verdict }) => verdict.buy === true).length,
          ),
    rows,
  };
}

/** How many lines somebody has said something about. */
export const judgedCount = ({ verdicts }: Remake): number => (verdicts ?? []).filter(isSaid).length;
