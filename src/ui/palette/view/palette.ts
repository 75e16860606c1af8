import type { Formatter } from "../../words/index.ts";
import { paletteWords as words } from "../../words/palette.ts";
import {
  type Entry,
  entriesOf,
  furthest,
  isPair,
  type PairEntry,
  type PlayedLine,
  type Spot,
} from "./entries.ts";

/** A row of the table that says what the picture shows. */
export type ColourRow = Readonly<{
  line: string;
  number: string;
  name: string;
  kit: string;
  kitLab: string;
  mine: string;
  mineLab: string;
  apart: string;
  how: string;
}>;

/** The palette, before it has a size. `most`: the line furthest apart, where it is worth pointing out. */
export type PaletteView = Readonly<{
  entries: readonly Entry[];
  finding: string;
  more: string;
  most: string | null;
  rows: readonly ColourRow[];
}>;

// Under this nobody sees a difference: usual for CIEDE2000, see `differenceWord`.
const visible = 1;

/** To one decimal, never "−0.0". */
const tenth = (value: number, format: Formatter): string =>
  format.number(Math.round(value * 10) / 10 + 0, 1, true);

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(values.length, 1);

function findingOf(pairs: readonly PairEntry[], format: Formatter): string {
  const most = furthest(pairs);
  if (!most) return words.finding.none;
  const { kit, number, apart, how } = most;
  if (pairs.length === 1) return words.finding.only(kit.words, number, tenth(apart, format), how);
  if (apart < 0.05) return words.finding.met;
  if (apart < visible) return words.finding.lookTheSame(tenth(apart, format));
  return words.finding.drifts(tenth(mean(pairs.map((pair) => pair.apart)), format), kit.words, number, how);
}

const labText = ({ lab }: Spot, format: Formatter): string =>
  words.table.lab(tenth(lab.l, format), tenth(lab.a, format), tenth(lab.b, format));

const aloneWords = {
  gap: words.table.gap,
  "left-out": words.table.leftOut,
  unknown: words.table.unknown,
} as const;

function howOf({ alone, apart, how }: Entry): string {
  if (alone) return aloneWords[alone];
  if (how.length > 0) return how.join(", ");
  return apart !== null && apart < 0.05 ? words.table.same : words.table.slight;
}

const rowOf = (entry: Entry, format: Formatter): ColourRow => ({
  line: entry.line,
  number: format.count(entry.number),
  name: entry.name,
  kit: entry.kit.words,
  kitLab: labText(entry.kit, format),
  mine: [entry.standInName, entry.standIn?.words].filter(Boolean).join(": "),
  mineLab: entry.standIn ? labText(entry.standIn, format) : "",
  apart: entry.apart === null ? "" : tenth(entry.apart, format),
  how: howOf(entry),
});

/**
 * The kit's colours beside those of what plays them.
 * @returns null with fewer than two colours: nothing that a picture of them would show
 */
export function paletteOf(played: readonly PlayedLine[], format: Formatter): PaletteView | null {
  const entries = entriesOf(played);
  if (entries.length < 2) return null;
  const pairs = entries.filter(isPair);
  const alone = entries.filter((entry) => !isPair(entry)).map(({ number }) => number);
  const most = furthest(entries);
  return {
    entries,
    finding: findingOf(pairs, format),
    more: alone.length > 0 && pairs.length > 0 ? words.finding.alone(alone) : "",
    most: pairs.length > 1 && most && most.apart >= visible ? most.line : null,
    rows: entries.map((entry) => rowOf(entry, format)),
  };
}
