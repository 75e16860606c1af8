import type { Room } from "../../parts/room.ts";
import type { Formatter } from "../../words/index.ts";
import type { Chart, ChartRow, ChartTier, Piece } from "./chart.ts";

/** One swatch of a row, in px. `label` is its line's number where there is room for it. */
export type Placed = Readonly<{
  piece: Piece;
  key: string;
  x: number;
  width: number;
  label: string | null;
  mid: number;
}>;

/** A row in px: its name at `nameY`, swatches from `top`, the bar from `low` to `high` on `base`. */
export type PlacedRow = Readonly<{
  row: ChartRow;
  nameY: number;
  top: number;
  base: number;
  numberY: number;
  placed: readonly Placed[];
  joints: readonly number[];
  end: number;
  low: number;
  high: number;
  total: number;
  /** Where the amount stands: after the bar, or after the row's name where there is no room for it. */
  amountX: number | null;
}>;

/** A tier's line in px, with its label on a height of its own. */
export type PlacedTier = Readonly<{
  tier: ChartTier;
  name: string;
  x: number;
  labelX: number;
  labelY: number;
  anchor: "start" | "end";
  /** The line from its label down to the axis, in pieces: it pauses at every figure in its way. */
  runs: readonly Run[];
}>;

type Run = readonly [from: number, to: number];

export type Layout = Readonly<{
  width: number;
  height: number;
  swatchHeight: number;
  rows: readonly PlacedRow[];
  tiers: readonly PlacedTier[];
  axisY: number;
  ticks: readonly Readonly<{ x: number; text: string; anchor: "start" | "middle" }>[];
}>;

/** Below this the rows are drawn for a phone: lower, with their amounts beside their names. */
const narrowPx = 560;

// Widths of letters at 14 px, on the wide side: a label may leave room over, but never run into another.
const letterPx = 6.9;
const figurePx = 7.8;

type Measures = Readonly<{
  label: number;
  name: number;
  swatch: number;
  numbers: number;
  gap: number;
  after: number;
}>;

function measuresFor({ width, textScale }: Room): Measures {
  const narrow = width < narrowPx;
  return {
    label: 21 * textScale,
    name: 24 * textScale,
    swatch: narrow ? 36 : 52,
    numbers: 20 * textScale,
    gap: narrow ? 10 : 14,
    after: narrow ? 4 : 104 * textScale,
  };
}

/** 1, 2 or 5 times a power of ten: the first step that leaves `room` px between ticks. */
export function tickStep(most: number, width: number, room: number): number {
  const least = (most * room) / Math.max(width, 1);
  if (!(least > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(least));
  return ([1, 2, 5, 10].find((times) => times * power >= least) ?? 10) * power;
}

const labelWidth = (tier: ChartTier, name: string, { textScale }: Room): number =>
  (name.length * letterPx + (tier.amount.length + 1) * figurePx) * textScale;

/** A name cut so that its label fits the picture; the table has it whole. */
function fittingName(tier: ChartTier, room: Room): string {
  const most = Math.floor((room.width / room.textScale - (tier.amount.length + 1) * figurePx) / letterPx) - 1;
  return tier.name.length <= most
    ? tier.name
    : `${tier.name.slice(0, Math.max(1, most - 1)).trimEnd()}\u2026`;
}

const labelGap = 6;

/** How far above the foot of its label a tier's line begins. */
const lineAbove = 11;

/**
 * Places the tiers' labels, each on a height of its own, so that none runs into another. Where all have room at
 * the right of their lines, the leftmost stands highest and no line crosses a label; likewise the other way round.
 */
function placeTiers(
  tiers: readonly ChartTier[],
  toX: (value: number) => number,
  room: Room,
  step: number,
  runsAt: (x: number, from: number) => readonly Run[],
) {
  const named = tiers.map((tier) => {
    const name = fittingName(tier, room);
    return { tier, name, x: toX(tier.cost), wide: labelWidth(tier, name, room) };
  });
  const fitsRight = (one: (typeof named)[number]) => one.x + labelGap + one.wide <= room.width;
  const right = named.every(fitsRight);
  const ordered = named.toSorted((a, b) => (right ? a.x - b.x : b.x - a.x));
  return ordered.map((one, level): PlacedTier => {
    const labelY = (level + 1) * step - step * 0.3;
    const { tier, name, x } = one;
    const runs = runsAt(x, labelY - lineAbove);
    if (right || (x - labelGap - one.wide < 0 && fitsRight(one))) {
      return { tier, name, x, labelX: x + labelGap, labelY, anchor: "start", runs };
    }
    return { tier, name, x, labelX: Math.max(x - labelGap, one.wide), labelY, anchor: "end", runs };
  });
}

const mostPieces = 12;
const leastPiecePx = 8;
const seamPx = 1;

/** One line's swatches: as many as there are of it, while each is wide enough to be seen. */
function placePiece(piece: Piece, from: number, to: number, room: Room): readonly Placed[] {
  const wide = to - from;
  const count = piece.qty <= mostPieces && wide / piece.qty >= leastPiecePx ? piece.qty : 1;
  const each = wide / count;
  const text = String(piece.number);
  const label = wide >= (text.length * figurePx + 4) * room.textScale ? text : null;
  return Array.from({ length: count }, (_, index) => ({
    piece,
    key: `${piece.number}.${index}`,
    x: from + index * each,
    width: Math.max(each - seamPx, 0.5),
    label: index === 0 ? label : null,
    mid: from + wide / 2,
  }));
}

function placeRow(
  row: ChartRow,
  top: number,
  toX: (value: number) => number,
  room: Room,
  measures: Measures,
): PlacedRow {
  let sum = 0;
  const joints: number[] = [0];
  const placed = row.pieces.flatMap((piece) => {
    const from = toX(sum);
    sum += piece.value;
    joints.push(toX(sum));
    return placePiece(piece, from, toX(sum), room);
  });
  const base = top + measures.name + measures.swatch + 4;
  const [low, high, total] = [toX(row.low), toX(row.high), toX(row.total)];
  return {
    row,
    nameY: top + measures.name * 0.72,
    top: top + measures.name,
    base,
    numberY: base + measures.numbers * 0.85,
    placed,
    joints,
    end: toX(sum),
    low,
    high,
    total,
    amountX: room.width < narrowPx ? null : Math.max(high, total) + 12,
  };
}

// A total is set larger than the other figures: the width of one of its letters, on the wide side.
const amountPx = 8.4;
const clearPx = 4;

type Box = Readonly<{ left: number; right: number; top: number; foot: number }>;

/** Where a row's figures stand: its total, and the number of each line. */
function figuresOf(row: PlacedRow, { textScale }: Room): readonly Box[] {
  const around = (left: number, width: number, baseline: number): Box => ({
    left: left - clearPx,
    right: left + width + clearPx,
    top: baseline - 14 * textScale,
    foot: baseline + 5 * textScale,
  });
  const total = row.row.amount.length * amountPx * textScale;
  return [
    ...(row.amountX === null ? [] : [around(row.amountX, total, row.base + 5)]),
    ...row.placed.flatMap(({ label, mid }) => {
      const wide = (label?.length ?? 0) * figurePx * textScale;
      return label === null ? [] : [around(mid - wide / 2, wide, row.numberY)];
    }),
  ];
}

/** A line down from `from` to `to` at `x`, broken off where a figure stands in its way. */
function runsPast(figures: readonly Box[], x: number, from: number, to: number): readonly Run[] {
  const inTheWay = figures
    .filter(({ left, right }) => left <= x && x <= right)
    .toSorted((a, b) => a.top - b.top);
  const starts = [from, ...inTheWay.map(({ foot }) => foot)];
  const ends = [...inTheWay.map(({ top }) => top), to];
  return starts.map((start, at): Run => [start, ends[at] ?? to]);
}

/** The picture in px for a given room. Everything in it grows with the reader's text size but the swatches. */
export function layoutOf({ rows, tiers }: Chart, room: Room, format: Formatter): Layout {
  const measures = measuresFor(room);
  const plot = Math.max(room.width - measures.after, 60);
  const most = Math.max(
    ...rows.map(({ high, total }) => Math.max(high, total)),
    ...tiers.map(({ cost }) => cost),
    1,
  );
  const full = most * 1.02;
  const toX = (value: number) => (value / full) * plot;
  const headHeight = tiers.length * measures.label + (tiers.length > 0 ? 4 : 0);
  const rowHeight = measures.name + measures.swatch + 4 + measures.numbers + measures.gap;
  const placed = rows.map((row, index) => placeRow(row, headHeight + index * rowHeight, toX, room, measures));
  const axisY = headHeight + rows.length * rowHeight + 4;
  const figures = placed.flatMap((row) => figuresOf(row, room));
  const step = tickStep(full, plot, 64 * room.textScale);
  const ticks = Array.from({ length: Math.floor(full / step + 1e-9) + 1 }, (_, index) => ({
    x: toX(index * step),
    text: format.number(index * step, 3),
    anchor: index === 0 ? ("start" as const) : ("middle" as const),
  }));
  return {
    width: room.width,
    height: axisY + 28 * room.textScale,
    swatchHeight: measures.swatch,
    rows: placed,
    tiers: placeTiers(tiers, toX, room, measures.label, (x, from) => runsPast(figures, x, from, axisY)),
    axisY,
    ticks,
  };
}
