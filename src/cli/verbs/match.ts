import { type KitMatch, type MatchRemake, matchKit, verdictWords } from "../../engine/match/index.ts";
import type { Workbook } from "../../engine/workbook/index.ts";
import type { Kit } from "../../engine/worth/index.ts";
import { byId, workbookFrom } from "../input.ts";
import { Misuse } from "../io.ts";
import { table } from "../table.ts";
import { textOption, type Values, type Verb } from "../verb.ts";
import { visible } from "../visible.ts";

const defaultLimit = 5;

function limitFrom(options: Values): number {
  const text = textOption(options, "limit");
  if (text === undefined) return defaultLimit;
  if (!/^\d+$/.test(text)) throw new Misuse("--limit takes a whole number; 0 shows all");
  return Number(text);
}

/** The kit and, where one is named, the remake; a remake brings its kit along. */
function chosen(book: Workbook, options: Values): Readonly<{ kit: Kit; remake: MatchRemake | null }> {
  const [kitId, remakeId] = [textOption(options, "kit"), textOption(options, "remake")];
  if (remakeId === undefined) return { kit: byId(book.kits, kitId, "kit"), remake: null };
  const remake = byId(book.remakes, remakeId, "remake");
  if (kitId !== undefined && kitId !== remake.kit) {
    byId(book.kits, kitId, "kit");
    throw new Misuse(`remake "${remakeId}" is of kit "${remake.kit}", not of "${kitId}"`);
  }
  return { kit: byId(book.kits, remake.kit, "kit"), remake };
}

/** Exactly the fields of the contract, in its order. */
const document = ({ kit, totalLikeness, lines, palette }: KitMatch) => ({
  kit,
  totalLikeness,
  lines: lines.map(({ line, pick, candidates }) => ({
    line,
    pick: pick && {
      stash: pick.stash,
      likeness: pick.likeness,
      certainty: pick.certainty,
      deltaE00: pick.deltaE00,
      verdict: pick.verdict,
      adaptation: pick.adaptation,
      by: pick.by,
      ...(pick.lastResort ? { lastResort: true } : {}),
    },
    candidates: candidates.map((candidate) => ({
      stash: candidate.stash,
      likeness: candidate.likeness,
      certainty: candidate.certainty,
      deltaE00: candidate.deltaE00,
      verdict: candidate.verdict,
      leftOut: candidate.leftOut,
      trace: candidate.trace,
    })),
  })),
  palette,
});

function text(book: Workbook, kit: Kit, match: KitMatch): string {
  const names = new Map((book.stash ?? []).map((item) => [item.id, item.supply.name]));
  const rows = match.lines.map(({ line, pick }) => {
    const name = kit.lines?.find(({ id }) => id === line)?.supply.name ?? "";
    if (!pick) return [line, name, "nothing close", "", "", ""];
    const how = verdictWords(pick.verdict) + (pick.lastResort ? ", last resort" : "");
    return [
      line,
      name,
      names.get(pick.stash) ?? "",
      pick.stash,
      String(Math.round(pick.likeness * 100)),
      how,
    ];
  });
  const { palette } = match;
  return [
    table(["line", "in the kit", "stand-in", "id", "of 100", "how near"], rows, [4]),
    `Together ${match.totalLikeness.toFixed(4)} over ${match.lines.length} lines.\n`,
    palette
      ? `The palette kept: ${palette.picks.map(({ line, stash }) => visible(`${line} ${names.get(stash) ?? stash}`)).join(", ")}; ${palette.cost.toFixed(4)} against ${palette.costOfFirst.toFixed(4)}.\n`
      : "",
  ].join("");
}

export const match: Verb = {
  usage: "FILE --kit ID [--remake ID] [--palette] [--limit N]",
  operands: 1,
  options: {
    kit: { type: "string" },
    remake: { type: "string" },
    palette: { type: "boolean" },
    limit: { type: "string" },
  },
  hasJson: true,
  run: ({ operands, options, io }) => {
    const limit = limitFrom(options);
    const book = workbookFrom(io, operands[0]);
    const { kit, remake } = chosen(book, options);
    const result = matchKit({
      kit,
      stash: book.stash ?? [],
      kinships: book.kinships,
      weights: book.weights,
      remake,
      limit,
      palette: options.palette === true,
    });
    return { json: () => document(result), text: () => text(book, kit, result) };
  },
};
