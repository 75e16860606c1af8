import type { Pick as Chosen } from "../../engine/match/index.ts";
import type { Line } from "../../engine/price/index.ts";
import type { Remake } from "../../engine/workbook/index.ts";
import type { Kit } from "../../engine/worth/index.ts";
import type { ActDraft, Path } from "../journal/index.ts";
import { storeWords as words } from "../words/index.ts";
import { act, put, putPart, set } from "./record.ts";
import { removal } from "./remove.ts";
import { change, kitName, supplyName } from "./words.ts";

type Verdict = NonNullable<Remake["verdicts"]>[number];
type LogEntry = NonNullable<Remake["log"]>[number];

export const startRemake = (remake: Remake, kit: Kit): ActDraft =>
  act(words.startRemake(kitName(kit)), put("remakes", remake));

/** Changes one field of a remake; undefined leaves it out. */
export const editRemake = (remake: Remake, path: Path, value: unknown): ActDraft =>
  act(change(path, words.remake), set("remakes", remake.id, path, value));

export const removeRemake = (remake: Remake, kit: Kit): ActDraft =>
  act(words.removeRemake(kitName(kit)), removal("remakes", remake.id));

const ofLine = (list: "picks" | "verdicts", line: Line): Path => [list, { line: line.id }];

/** Chooses what plays a line's part, instead of what was chosen before. */
export const setPick = (remake: Remake, line: Line, pick: Chosen): ActDraft =>
  act(
    words.setPick(supplyName(line)),
    putPart("remakes", remake.id, ofLine("picks", line), { ...pick, line: line.id }),
  );

/** Takes a choice back, so that the nearest is shown again. */
export const clearPick = (remake: Remake, line: Line): ActDraft =>
  act(words.clearPick(supplyName(line)), {
    op: "remove",
    list: "remakes",
    id: remake.id,
    path: ofLine("picks", line),
  });

export const setVerdict = (remake: Remake, line: Line, verdict: Verdict): ActDraft =>
  act(
    words.setVerdict(supplyName(line)),
    putPart("remakes", remake.id, ofLine("verdicts", line), { ...verdict, line: line.id }),
  );

/** An entry of the log has no id: it is told by its time and words. */
const inLog = ({ at, text }: LogEntry): Path => ["log", { at: at ?? null, text: text ?? null }];

export const addLogEntry = (remake: Remake, entry: LogEntry): ActDraft =>
  act(words.addLogEntry, putPart("remakes", remake.id, inLog(entry), entry));

export const removeLogEntry = (remake: Remake, entry: LogEntry): ActDraft =>
  act(words.removeLogEntry, { op: "remove", list: "remakes", id: remake.id, path: inLog(entry) });
