import type { Evidence, Line, Settled } from "../../engine/price/index.ts";
import type { Workbook } from "../../engine/workbook/index.ts";
import type { Kit } from "../../engine/worth/index.ts";
import type { ActDraft, Match, Path } from "../journal/index.ts";
import { storeWords as words } from "../words/index.ts";
import { act, putPart, set } from "./record.ts";
import { thenMend } from "./remove.ts";
import { change, kitName, supplyName } from "./words.ts";

const lineAt = (line: Pick<Line, "id">): Path => ["lines", { id: line.id }];

/** Adds a line, last or before another one. */
export const addLine = (kit: Kit, line: Line, before?: Pick<Line, "id">): ActDraft =>
  act(
    words.addLine(supplyName(line), kitName(kit)),
    putPart("kits", kit.id, lineAt(line), line, before && { id: before.id }),
  );

export const addLines = (kit: Kit, lines: readonly Line[]): ActDraft =>
  act(
    words.addLines(lines.length, kitName(kit)),
    ...lines.map((line) => putPart("kits", kit.id, lineAt(line), line)),
  );

/** Changes one field of a line, `["supply", "name"]`; undefined leaves it out. */
export const editLine = (kit: Kit, line: Line, path: Path, value: unknown): ActDraft =>
  act(change(path, supplyName(line)), set("kits", kit.id, [...lineAt(line), ...path], value));

/** Moves a line in front of another, or to the end. */
export const moveLine = (kit: Kit, line: Line, before: Pick<Line, "id"> | null): ActDraft =>
  act(
    words.moveLine(supplyName(line), kitName(kit)),
    putPart("kits", kit.id, lineAt(line), line, before && { id: before.id }),
  );

/** Removes a line, and what remakes and other kits say of it. */
export const removeLine = (book: Workbook, kit: Kit, line: Line): ActDraft => ({
  label: words.removeLine(supplyName(line), kitName(kit)),
  changes: thenMend(book, [{ op: "remove", list: "kits", id: kit.id, path: lineAt(line) }]),
});

const evidenceAt = (line: Line, { id }: Evidence): Path => [...lineAt(line), "evidence", { id }];

export const addEvidence = (kit: Kit, line: Line, evidence: Evidence): ActDraft =>
  act(words.addEvidence(supplyName(line)), putPart("kits", kit.id, evidenceAt(line, evidence), evidence));

export const editEvidence = (
  kit: Kit,
  line: Line,
  evidence: Evidence,
  path: Path,
  value: unknown,
): ActDraft =>
  act(
    change(path, words.evidence(supplyName(line))),
    set("kits", kit.id, [...evidenceAt(line, evidence), ...path], value),
  );

export const removeEvidence = (kit: Kit, line: Line, evidence: Evidence): ActDraft =>
  act(words.removeEvidence(supplyName(line)), {
    op: "remove",
    list: "kits",
    id: kit.id,
    path: evidenceAt(line, evidence),
  });

/** A line has one price to go with for each kind and market. */
const settledMatch = ({ kind, market }: Pick<Settled, "kind" | "market">): Match => ({
  kind: kind ?? null,
  market: market ?? null,
});

/** Goes with a price, or a method, instead of the one gone with so far. */
export const settle = (kit: Kit, line: Line, settled: Settled): ActDraft =>
  act(
    words.settle(supplyName(line)),
    putPart("kits", kit.id, [...lineAt(line), "settled", settledMatch(settled)], settled),
  );

export const unsettle = (kit: Kit, line: Line, settled: Pick<Settled, "kind" | "market">): ActDraft =>
  act(words.unsettle(supplyName(line)), {
    op: "remove",
    list: "kits",
    id: kit.id,
    path: [...lineAt(line), "settled", settledMatch(settled)],
  });
