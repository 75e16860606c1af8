import type { Candidate, LineMatch, PickResult } from "../../../engine/match/index.ts";
import type { Line } from "../../../engine/price/index.ts";
import type { StashItem, Supply } from "../../../engine/supply/index.ts";
import { cutSentence, reasonLine, verdictWords } from "../../words/engine/match.ts";
import { remakeWords } from "../../words/remakes.ts";
import { factsText } from "./facts.ts";
import { fewerHere } from "./how-many.ts";
import { outText } from "./left-out.ts";
import { nextBest } from "./next-best.ts";
import { outOfHundred, ownPick, type Shelves, type Subject } from "./solve.ts";

const words = remakeWords.standIns;

/** The runner-up of a row: what one key brings in. */
export type NextView = Readonly<{ stash: string; name: string; text: string }>;

/** A stand-in as its row shows it. */
export type StandInView = Readonly<{
  item: StashItem;
  name: string;
  facts: string;
  reasons: readonly string[];
}>;

/** One line of the kit with what plays it, ready to print. */
export type RowView = Readonly<{
  line: string;
  number: number;
  supply: Supply;
  name: string;
  facts: string;
  state: "filled" | "gap" | "left-out";
  standIn: StandInView | null;
  /** Of 100; null where nothing plays it. */
  figure: number | null;
  near: string;
  /** Why nothing plays it. */
  gapWhy: string | null;
  /** A person chose it. */
  isOwn: boolean;
  /** What the person wrote of the pick. */
  ownNote: string;
  notes: readonly string[];
  next: NextView | null;
}>;

/** What plays the line: the pick, or what another way of choosing puts in its place. */
type Played = Readonly<{ candidate: Candidate; pick: PickResult | null }>;

function playedOn(match: LineMatch, instead: string | undefined): Played | null {
  const stash = instead ?? match.pick?.stash;
  const candidate = match.candidates.find((one) => one.stash === stash);
  return candidate ? { candidate, pick: match.pick?.stash === stash ? match.pick : null } : null;
}

/** What a person mixes in besides the first: "with seal brown: a touch, to dull it". */
function mixedIn(subject: Subject, shelves: Shelves, line: string, first: string): readonly string[] {
  const uses = ownPick(subject.remake, line)?.uses ?? [];
  const others = uses
    .filter(({ stash }) => stash !== first)
    .flatMap(({ stash, work }) => {
      const item = shelves.item(stash);
      return item ? [words.mixedWith(item.supply.name, work || null)] : [];
    });
  return others.length > 0 ? [...others, words.judgedByLarger] : [];
}

function gapReason(match: LineMatch, shelves: Shelves): string {
  const [best] = match.candidates;
  const item = shelves.item(best?.stash);
  if (!best || !item || best.likeness === 0) return words.gapNone;
  return best.leftOut && best.verdict !== "gap"
    ? words.gapOut(item.supply.name, outText(best.leftOut, shelves))
    : words.gapNearest(item.supply.name, outOfHundred(best.likeness));
}

function notesOn(
  subject: Subject,
  match: LineMatch,
  played: Played | null,
  instead: string | null,
): readonly string[] {
  const own = ownPick(subject.remake, match.line);
  const cut = played?.candidate.adaptation;
  return [
    instead,
    played?.pick?.lastResort ? words.lastResort : null,
    cut ? cutSentence(cut) : null,
    own?.note ?? null,
  ].filter((note): note is string => Boolean(note));
}

const kitSide = (line: Line) => ({
  supply: line.supply,
  name: line.supply.name,
  facts: [(line.qty ?? 1) > 1 ? words.pieces(line.qty ?? 1) : "", factsText(line.supply)]
    .filter(Boolean)
    .join(", "),
});

function standInView(subject: Subject, shelves: Shelves, line: Line, played: Played): StandInView | null {
  const item = shelves.item(played.candidate.stash);
  if (!item) return null;
  const mixed = played.pick?.by === "person" ? mixedIn(subject, shelves, line.id, item.id) : [];
  return {
    item,
    name: item.supply.name,
    facts: [factsText(item.supply), ...fewerHere(line, item)].filter(Boolean).join(", "),
    reasons: [reasonLine(line.supply, item, played.candidate), ...mixed],
  };
}

/** How near it is in words; what is below that and picked all the same is called the person's own. */
const nearOf = ({ candidate }: Played, isOwn: boolean): string =>
  isOwn && candidate.verdict === "gap" ? words.ownPick : verdictWords(candidate.verdict);

/** @param instead what the palette puts here, where that way of choosing is looked at */
export function rowView(
  subject: Subject,
  shelves: Shelves,
  match: LineMatch,
  instead: string | undefined,
): RowView | null {
  const line = shelves.line(match.line);
  if (!line) return null;
  const played = playedOn(match, instead);
  const standIn = played && standInView(subject, shelves, line, played);
  const isOwn = ownPick(subject.remake, line.id) !== undefined && (match.pick?.by ?? "person") === "person";
  const first =
    instead !== undefined && instead !== match.pick?.stash ? shelves.item(match.pick?.stash) : undefined;
  return {
    line: line.id,
    number: shelves.numberOf(line.id),
    ...kitSide(line),
    state: standIn ? "filled" : isOwn ? "left-out" : "gap",
    standIn,
    figure: standIn && played ? outOfHundred(played.candidate.likeness) : null,
    near: standIn && played ? nearOf(played, isOwn) : isOwn ? "" : words.gapWord,
    gapWhy: standIn || isOwn ? null : gapReason(match, shelves),
    isOwn,
    ownNote: ownPick(subject.remake, line.id)?.note ?? "",
    notes: notesOn(subject, match, played, first ? words.instead(first.supply.name) : null),
    next: instead === undefined ? nextBest(match, shelves) : null,
  };
}
