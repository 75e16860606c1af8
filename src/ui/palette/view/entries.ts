import { deltaE2000, hexFromLab, type Lab, labOf } from "../../../engine/colour/index.ts";
import type { Supply } from "../../../engine/supply/index.ts";
import { missWords, plainName } from "../../words/engine/colour.ts";

/** A kit line with what plays it: all that the picture asks of a row. */
export type PlayedLine = Readonly<{
  line: string;
  number: number;
  name: string;
  supply: Supply;
  state: "filled" | "gap" | "left-out";
  standIn: Readonly<{ name: string; item: Readonly<{ supply: Supply }> }> | null;
}>;

/** One colour: where it lies, how it is painted, and how it is called by people who do not see it. */
export type Spot = Readonly<{ lab: Lab; hex: string; words: string }>;

/** Why a kit colour stands alone. */
export type Alone = "gap" | "left-out" | "unknown";

/** A kit colour and its stand-in's. `apart`: their CIEDE2000 difference; `how`: the miss, in up to two phrases. */
export type Entry = Readonly<{
  line: string;
  number: number;
  name: string;
  kit: Spot;
  standInName: string | null;
  standIn: Spot | null;
  apart: number | null;
  how: readonly string[];
  alone: Alone | null;
}>;

/** An entry with both its colours. */
export type PairEntry = Entry & Readonly<{ standIn: Spot; apart: number }>;

const spotOf = (lab: Lab): Spot => ({ lab, hex: hexFromLab(lab), words: plainName(lab) });

const aloneIn = (row: PlayedLine): Alone =>
  row.standIn ? "unknown" : row.state === "left-out" ? "left-out" : "gap";

function entryOf(row: PlayedLine): Entry | null {
  const kit = labOf(row.supply.colour);
  if (!kit) return null;
  const other = labOf(row.standIn?.item.supply.colour);
  return {
    line: row.line,
    number: row.number,
    name: row.name,
    kit: spotOf(kit),
    standInName: row.standIn?.name ?? null,
    standIn: other && spotOf(other),
    apart: other && deltaE2000(kit, other),
    how: other ? missWords(kit, other) : [],
    alone: other ? null : aloneIn(row),
  };
}

/** The lines of a kit that have a colour, in the kit's order. */
export const entriesOf = (rows: readonly PlayedLine[]): readonly Entry[] =>
  rows.map(entryOf).filter((entry) => entry !== null);

export const isPair = (entry: Entry): entry is PairEntry => entry.standIn !== null && entry.apart !== null;

/** The pair furthest apart; the first of equals. */
export const furthest = (entries: readonly Entry[]): PairEntry | null =>
  entries
    .filter(isPair)
    .reduce<PairEntry | null>((most, one) => (most && most.apart >= one.apart ? most : one), null);
