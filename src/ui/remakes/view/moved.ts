import type { KitMatch } from "../../../engine/match/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { picksOf, type Shelves, type Subject, shelvesOf } from "./solve.ts";

const words = remakeWords.standIns;

/** The lines that something else plays now. */
export function movedLines(before: KitMatch, after: KitMatch): readonly string[] {
  const was = new Map(before.lines.map(({ line, pick }) => [line, pick?.stash ?? null]));
  return after.lines
    .filter(({ line, pick }) => was.get(line) !== (pick?.stash ?? null))
    .map(({ line }) => line);
}

const playerOf = (match: KitMatch, line: string): string | undefined =>
  match.lines.find((one) => one.line === line)?.pick?.stash;

/** "Line 3 now has paint marker, brick." */
function nowSaid(match: KitMatch, line: string, shelves: Shelves): string {
  const item = shelves.item(playerOf(match, line));
  const number = shelves.numberOf(line);
  return item ? words.picked(number, item.supply.name) : words.pickedNone(number);
}

/**
 * What an act on `line` (null: on all of them) did to the stand-ins, in one or two sentences.
 * @param said what the act was, where the line's new stand-in does not say it
 */
export function tellOf(before: KitMatch, after: Subject, line: string | null, said: string | null): string {
  const match = picksOf(after);
  const shelves = shelvesOf(after);
  const others = movedLines(before, match).filter((other) => other !== line);
  const own = said ?? (line === null ? "" : nowSaid(match, line, shelves));
  const along = others.length > 0 ? words.moved(words.line(others.map(shelves.numberOf))) : "";
  return [own, along].filter(Boolean).join(" ");
}
