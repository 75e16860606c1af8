import { useMemo } from "react";
import type { KitMatch } from "../../engine/match/index.ts";
import type { Line } from "../../engine/price/index.ts";
import type { StashItem } from "../../engine/supply/index.ts";
import { type ActDraft, clearPick } from "../../store/index.ts";
import { applyChanges } from "../../store/journal/index.ts";
import { doAct } from "../app/do-act.ts";
import { remakeWords } from "../words/remakes.ts";
import {
  type Bend,
  changeField,
  clearAll,
  leaveOut,
  markGone,
  pickBending,
  pickFor,
  setNote,
  takeAll,
  tickFetched,
} from "./acts.ts";
import type { Gone } from "./view/fetch.ts";
import { tellOf } from "./view/moved.ts";
import { ownPick, type Subject, shelvesOf, subjectOf } from "./view/solve.ts";
import { palettePicks } from "./view/stand-ins.ts";

const words = remakeWords.standIns;

/** What a person can do to the stand-ins. Each act re-solves the rest, and says what changed with it. */
export type StandInActs = ReturnType<typeof actsOn>;

/** Does an act and tells what it did to the lines. */
function doAndTell(
  subject: Subject,
  match: KitMatch,
  draft: ActDraft,
  line: string | null,
  said: string | null,
) {
  const after = applyChanges(subject.book, draft.changes);
  const next = after.ok ? subjectOf(after.value.book, subject.remake.id) : null;
  return doAct(draft, next ? tellOf(match, next, line, said) : draft.label);
}

/** The lines whose colours the palette weighed: those it has a say in. */
function palettesOwn(subject: Subject, match: KitMatch) {
  const { line: lineOf } = shelvesOf(subject);
  const picks = palettePicks(match);
  return match.lines.flatMap(({ line: id, pick }) => {
    const [line, stash] = [lineOf(id), picks.get(id)];
    return line && stash && pick && pick.deltaE00 !== null && !pick.lastResort ? [{ line, stash }] : [];
  });
}

function actsOn(subject: Subject, match: KitMatch) {
  const { remake, kit } = subject;
  const lines = kit.lines ?? [];
  const tell = (draft: ActDraft, line: string | null, said: string | null = null) =>
    doAndTell(subject, match, draft, line, said);
  const numberOf = (line: Line) => lines.indexOf(line) + 1;
  return {
    take: (line: Line, stash: string) => tell(pickFor(remake, line, stash), line.id),
    takeBending: (line: Line, item: StashItem, why: "acquired-after" | "received-before") => {
      const bend: Bend = { rule: why === "acquired-after" ? 1 : 2, why: words.bends[why](item.supply.name) };
      return tell(pickBending(remake, line, item.id, bend), line.id);
    },
    again: (line: Line) => tell(clearPick(remake, line), line.id),
    leaveOut: (line: Line) => tell(leaveOut(remake, line), line.id, words.leftOutSaid(numberOf(line))),
    note: (line: Line, note: string) => {
      const pick = ownPick(remake, line.id);
      return pick ? doAct(setNote(remake, line, pick, note), null) : Promise.resolve(false);
    },
    takePalette: () => doAct(takeAll(remake, palettesOwn(subject, match)), words.tookPalette),
    allAgain: () => doAct(clearAll(remake, lines), words.allCleared),
    twins: (on: boolean) =>
      tell(
        changeField(remake, "rules", { ...remake.rules, twins: on }, remakeWords.acts.twins(on)),
        null,
        on ? words.twinsOn : words.twinsOff,
      ),
    fetch: (stash: string, name: string, on: boolean) => doAct(tickFetched(remake, stash, name, on), null),
    gone: (stash: string, name: string, how: Gone) =>
      tell(markGone(stash, name, how), null, words.goneSaid[how](name)),
  } as const;
}

/** The acts on a remake's stand-ins as they are now. */
export const useStandInActs = (subject: Subject, match: KitMatch): StandInActs =>
  useMemo(() => actsOn(subject, match), [subject, match]);
