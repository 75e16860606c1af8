import type { KitMatch, LineMatch } from "../../../engine/match/index.ts";
import { format } from "../../words/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { type RowView, rowView } from "./rows.ts";
import { outOfHundred, type Shelves, type Subject, shelvesOf } from "./solve.ts";

const words = remakeWords.standIns;

/** The two ways of choosing. */
export type Way = "nearest" | "palette";

export type StandInsView = Readonly<{
  lead: string;
  leadMore: string;
  ways: Readonly<Record<Way, string>>;
  /** Both ways come to the same. */
  same: boolean;
  /** What the palette changes: "lines 2 and 5". */
  differs: string;
  rows: readonly RowView[];
  hasOwnPicks: boolean;
}>;

/** What the palette would put in each line. */
export const palettePicks = (match: KitMatch): ReadonlyMap<string, string> =>
  new Map((match.palette?.picks ?? []).map(({ line, stash }) => [line, stash]));

const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;

const chosen = (line: LineMatch, stash: string | undefined) =>
  stash === undefined ? line.pick : (line.candidates.find((one) => one.stash === stash) ?? line.pick);

/**
 * "73 of 100, colours 7.4 apart, steps 5.2 off": mean likeness (a gap counts 0), mean colour miss, and by how
 * much the steps between the colours changed, which is what the palette's cost has beyond the misses.
 */
function figures({ lines }: KitMatch, picks: ReadonlyMap<string, string> | null, cost: number): string {
  const played = lines.map((line) => chosen(line, picks?.get(line.line)));
  const misses = played.flatMap((pick) => (pick && pick.deltaE00 !== null ? [pick.deltaE00] : []));
  const apart = mean(misses);
  const steps = apart === null || misses.length < 2 ? null : Math.max(0, cost / misses.length - apart);
  const tenth = (value: number | null) => (value === null ? null : format.number(value, 1, true));
  const near = mean(played.map((pick) => pick?.likeness ?? 0)) ?? 0;
  return words.figures(format.count(outOfHundred(near)), tenth(apart), tenth(steps));
}

const namesOf = (rows: readonly RowView[], state: RowView["state"]): readonly string[] =>
  rows.filter((row) => row.state === state).map(({ name }) => name);

function leadMore(rows: readonly RowView[]): string {
  const [gaps, open] = [namesOf(rows, "gap"), namesOf(rows, "left-out")];
  return [gaps.length > 0 ? words.gaps(gaps) : "", open.length > 0 ? words.leftOpen(open) : ""]
    .filter(Boolean)
    .join(" ");
}

function differing(match: KitMatch, shelves: Shelves): readonly number[] {
  const picks = palettePicks(match);
  return match.lines
    .filter(({ line, pick }) => pick !== null && picks.get(line) !== pick.stash)
    .map(({ line }) => shelves.numberOf(line));
}

/** The whole reveal, ready to print. */
export function standInsView(subject: Subject, match: KitMatch, way: Way): StandInsView {
  const shelves = shelvesOf(subject);
  const palette = palettePicks(match);
  const rows = match.lines.flatMap((line) => {
    const row = rowView(subject, shelves, line, way === "palette" ? palette.get(line.line) : undefined);
    return row ? [row] : [];
  });
  const differs = differing(match, shelves);
  return {
    lead: words.lead(rows.filter(({ state }) => state === "filled").length, rows.length),
    leadMore: leadMore(rows),
    ways: {
      nearest: figures(match, null, match.palette?.costOfFirst ?? 0),
      palette: figures(match, palette, match.palette?.cost ?? 0),
    },
    same: differs.length === 0,
    differs: words.line(differs),
    rows,
    hasOwnPicks: (subject.remake.picks ?? []).some(({ by }) => by !== "engine"),
  };
}
