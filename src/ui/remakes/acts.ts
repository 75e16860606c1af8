import type { Pick as Chosen } from "../../engine/match/index.ts";
import type { Line } from "../../engine/price/index.ts";
import type { Remake } from "../../engine/workbook/index.ts";
import { type ActDraft, type Change, clearPick, editRemake, setPick } from "../../store/index.ts";
import { remakeWords } from "../words/remakes.ts";
import { fetchedIds, type Gone } from "./view/fetch.ts";
import { ownPick } from "./view/solve.ts";

const words = remakeWords.acts;

/** One field of a remake, under a name a person would give the act. */
export const changeField = (remake: Remake, field: string, value: unknown, label: string): ActDraft => ({
  ...editRemake(remake, [field], value),
  label,
});

const bothOf = (label: string, acts: readonly ActDraft[]): ActDraft => ({
  label,
  changes: acts.flatMap(({ changes }) => changes),
});

const alone = (remake: Remake, line: string, stash: string): Chosen => ({
  ...ownPick(remake, line),
  uses: [{ stash, share: "1" }],
  by: "person",
});

/** A person's pick for a line; the note on the line stays. */
export const pickFor = (remake: Remake, line: Line, stash: string): ActDraft =>
  setPick(remake, line, alone(remake, line.id, stash));

export type Bend = NonNullable<Remake["bends"]>[number];

/** A pick that the rules leave out, with the bend said. */
export const pickBending = (remake: Remake, line: Line, stash: string, bend: Bend): ActDraft => {
  const bends = [...(remake.bends ?? []), bend];
  const pick = pickFor(remake, line, stash);
  return bothOf(pick.label, [pick, changeField(remake, "bends", bends, pick.label)]);
};

/** Nothing plays this line, on purpose. */
export const leaveOut = (remake: Remake, line: Line): ActDraft => ({
  ...setPick(remake, line, { ...ownPick(remake, line.id), uses: [], by: "person" }),
  label: words.leaveOut(line.supply.name),
});

export const setNote = (remake: Remake, line: Line, pick: Chosen, note: string): ActDraft => ({
  ...setPick(remake, line, { ...pick, note }),
  label: words.note(line.supply.name),
});

/** Takes several picks as the person's own. */
export const takeAll = (
  remake: Remake,
  picks: readonly Readonly<{ line: Line; stash: string }>[],
): ActDraft =>
  bothOf(
    words.takePalette,
    picks.map(({ line, stash }) => pickFor(remake, line, stash)),
  );

/** Takes back every pick of a person. */
export const clearAll = (remake: Remake, lines: readonly Line[]): ActDraft =>
  bothOf(
    words.clearAll,
    lines.filter(({ id }) => ownPick(remake, id)).map((line) => clearPick(remake, line)),
  );

export const tickFetched = (remake: Remake, stash: string, name: string, isFetched: boolean): ActDraft => {
  const others = [...fetchedIds(remake)].filter((id) => id !== stash);
  const label = isFetched ? remakeWords.standIns.tickFetched(name) : remakeWords.standIns.untickFetched(name);
  return changeField(remake, "fetched", isFetched ? [...others, stash] : others, label);
};

const asGone = (stash: string, how: Gone): Change => ({
  op: "set",
  list: "stash",
  id: stash,
  path: ["state"],
  value: how,
});

/** Found dry, or used up, at the shelf. */
export const markGone = (stash: string, name: string, how: Gone): ActDraft => ({
  label: words.gone[how](name),
  changes: [asGone(stash, how)],
});
