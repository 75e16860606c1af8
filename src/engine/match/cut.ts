import { figureIn, type Language } from "../record/index.ts";
import type { SheetMm } from "../supply/index.ts";
import { wordsIn } from "./words/index.ts";

/** How a larger sheet is cut to the size the kit had. Millimetres; waste as strips, short side first. */
export type Cut = Readonly<{
  kind: "cut";
  /** Pieces one sheet yields, all laid the same way: the better of the two ways. */
  pieces: number;
  piece: SheetMm;
  sheet: SheetMm;
  /** Strips left over from each sheet; empty when it comes out even. */
  waste: readonly SheetMm[];
  /** Share of the sheet that is wasted, 0 to 1. */
  wasteShare: number;
  /** In English, as a file has it; `cutSentence` says it in any language. */
  sentence: string;
}>;

/** Trimmed sheets may be this much off (ISO 216 for sides over 150 up to 600 mm): not worth a cut. */
const trimMm = 2;

/** How many whole `part`s fit into `length`; a hair's breadth of floating point does not lose one. */
const fits = (length: number, part: number): number => Math.floor(length / part + 1e-9);

const tidy = (mm: number): number => Math.round(mm * 10) / 10;

type Laid = Readonly<{ across: number; along: number; piece: SheetMm }>;

const count = ({ across, along }: Laid): number => across * along;

/** The better of the two ways to lay `piece` on `sheet`; upright wins a tie. */
function lay(sheet: SheetMm, piece: SheetMm): Laid {
  const way = (width: number, height: number): Laid => ({
    across: fits(sheet[0], width),
    along: fits(sheet[1], height),
    piece: [width, height],
  });
  const [upright, turned] = [way(piece[0], piece[1]), way(piece[1], piece[0])];
  return count(turned) > count(upright) ? turned : upright;
}

const inOrder = (a: number, b: number): SheetMm => (a <= b ? [tidy(a), tidy(b)] : [tidy(b), tidy(a)]);

/** First the strip beside the pieces, as long as the sheet; then the one at their end. */
function strips(sheet: SheetMm, { across, along, piece }: Laid): readonly SheetMm[] {
  const [used, run] = [across * piece[0], along * piece[1]];
  const beside: readonly SheetMm[] = tidy(sheet[0] - used) > 0 ? [inOrder(sheet[0] - used, sheet[1])] : [];
  const atEnd: readonly SheetMm[] = tidy(sheet[1] - run) > 0 ? [inOrder(used, sheet[1] - run)] : [];
  return [...beside, ...atEnd];
}

/** How to cut, in one sentence: "Cut each sheet to 210 × 297 mm: 2 pieces a sheet, nothing is left over." */
export function cutSentence(
  { piece, pieces, waste }: Pick<Cut, "piece" | "pieces" | "waste">,
  language: Language = "en",
): string {
  const inWords = (sheet: SheetMm): string =>
    `${sheet.map((side) => figureIn(String(tidy(side)), language)).join(" × ")} mm`;
  return wordsIn[language].cut(inWords(piece), pieces, waste.map(inWords));
}

/**
 * How `sheet` is cut down to `piece`.
 * @returns null when it is too small, and when it is larger only by what trimming may leave
 */
export function cutOf(piece: SheetMm, sheet: SheetMm): Cut | null {
  const laid = lay(sheet, piece);
  const pieces = count(laid);
  if (pieces === 0 || (sheet[0] - piece[0] <= trimMm && sheet[1] - piece[1] <= trimMm)) return null;
  const waste = strips(sheet, laid);
  const wasteShare = Math.max(0, 1 - (pieces * piece[0] * piece[1]) / (sheet[0] * sheet[1]));
  return {
    kind: "cut",
    pieces,
    piece,
    sheet,
    waste,
    wasteShare,
    sentence: cutSentence({ piece, pieces, waste }),
  };
}

/** 1 where the kit's sheet can be cut from this one, else the share of the kit's sheet that it covers. */
export function sizeCredit(kit: SheetMm, stash: SheetMm): number {
  const covered = Math.min(kit[0], stash[0]) * Math.min(kit[1], stash[1]);
  return Math.min(1, covered / (kit[0] * kit[1]));
}
