import { paletteWords as words } from "../../words/palette.ts";
import type { Entry } from "./entries.ts";
import type { Measures, Point } from "./room.ts";

/** One line's column: its two lightnesses, in px from the top of its stave. */
export type Column = Readonly<{
  line: string;
  number: number;
  kit: Point;
  kitHex: string;
  standIn: Point | null;
  standInHex: string | null;
  isMost: boolean;
}>;

/** A run of columns over the same rungs: one, unless there are more lines than fit beside each other. */
export type Stave = Readonly<{
  key: string;
  top: number;
  left: number;
  right: number;
  columns: readonly Column[];
}>;

export type Ladder = Readonly<{
  width: number;
  height: number;
  /** `text`: the rung's figure, where there is room for it. */
  rungs: readonly Readonly<{ l: number; y: number; text: string }>[];
  staves: readonly Stave[];
  /** From a stave's top to the numbers under it. */
  numberY: number;
  mark: number;
}>;

const mostColumnPx = 60;
const leastColumnPx = 25;
const lightnesses = [100, 80, 60, 40, 20, 0] as const;

/** Below this the ends of the ladder are not named. */
const narrowPx = 240;

const isEnd = (l: number): boolean => l === 0 || l === 100;
const endNames: ReadonlyMap<number, string> = new Map([
  [100, words.white],
  [0, words.black],
]);

const rungText = (l: number, isNarrow: boolean): string => {
  const name = isNarrow ? undefined : endNames.get(l);
  return name === undefined ? String(l) : `${name} ${l}`;
};

const chunks = <T>(all: readonly T[], size: number): readonly (readonly T[])[] =>
  Array.from({ length: Math.ceil(all.length / size) }, (_, index) =>
    all.slice(index * size, (index + 1) * size),
  );

/** Lightness from black to white, a column for each line, to the disc's own scale. */
export function ladderOf(
  entries: readonly Entry[],
  most: string | null,
  { unit, ladder, mark }: Measures,
  textScale: number,
): Ladder {
  const isNarrow = ladder < narrowPx * textScale;
  const left = (isNarrow ? 40 : 76) * textScale; // "white 100" stands before the rungs
  const room = Math.max(ladder - left, leastColumnPx * textScale);
  const fit = Math.max(1, Math.floor(room / (leastColumnPx * textScale)));
  const runs = Math.ceil(entries.length / fit);
  const perStave = Math.ceil(entries.length / runs);
  const column = Math.min(room / perStave, mostColumnPx * textScale);
  const inset = 12;
  const y = (l: number) => inset + (100 - l) * unit;
  const numberY = y(0) + 26 * textScale;
  const staveHeight = numberY + 16 * textScale;
  const columnOf = ({ line, number, kit, standIn }: Entry, index: number): Column => {
    const x = left + (index + 0.5) * column;
    return {
      line,
      number,
      kit: { x, y: y(kit.lab.l) },
      kitHex: kit.hex,
      standIn: standIn && { x, y: y(standIn.lab.l) },
      standInHex: standIn?.hex ?? null,
      isMost: line === most,
    };
  };
  const width = left + perStave * column;
  return {
    width,
    height: runs * staveHeight,
    rungs: lightnesses.map((l) => ({
      l,
      y: y(l),
      text: unit * 20 < 17 * textScale && !isEnd(l) ? "" : rungText(l, isNarrow),
    })),
    staves: chunks(entries, perStave).map((run, index) => ({
      key: run[0]?.line ?? String(index),
      top: index * staveHeight,
      left,
      right: width,
      columns: run.map(columnOf),
    })),
    numberY,
    mark,
  };
}
