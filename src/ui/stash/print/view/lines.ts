import { sheet } from "./layout.ts";

/** How far off the corner its mark begins, and how long it is, in mm. */
const off = 1;
const long = 3;

/**
 * The mark at a corner of the grid, outside it; `turn` counts the corners from the upper left around. Below the lower
 * ones stand words: those are marked from the side alone.
 */
export function marksAt([x, y]: readonly [number, number], turn: number): string {
  const right = turn === 1 || turn === 2 ? 1 : -1;
  const across = `M${x + right * off} ${y}h${right * long}`;
  return turn < 2 ? `${across}M${x} ${y - off}v${-long}` : across;
}

/** What a ruler measures, in mm. */
const rulerMm = 100;

/** Ticks at each centimetre, longer at both ends. */
const ticks = Array.from({ length: 11 }, (_, at) => ({
  at: at * 10,
  length: at % 10 === 0 ? 4 : at % 5 === 0 ? 3 : 2,
}));

type Ruler = Readonly<{
  key: string;
  path: string;
  text: Readonly<{ x: number; y: number; turned: boolean }>;
}>;

const foot = { x: 5, y: sheet.height - 1 };
const side = { x: sheet.width - 1, y: 16 };

/** One ruler along the foot, one down the right side: a printer that scales one way only is found out, too. */
export const rulers: readonly Ruler[] = [
  {
    key: "across",
    path: `M${foot.x} ${foot.y}h${rulerMm}${ticks.map(({ at, length }) => `M${foot.x + at} ${foot.y}v${-length}`).join("")}`,
    text: { x: foot.x + rulerMm + 3, y: foot.y, turned: false },
  },
  {
    key: "down",
    path: `M${side.x} ${side.y}v${rulerMm}${ticks.map(({ at, length }) => `M${side.x} ${side.y + at}h${-length}`).join("")}`,
    text: { x: side.x, y: side.y + rulerMm + 56, turned: true },
  },
];
