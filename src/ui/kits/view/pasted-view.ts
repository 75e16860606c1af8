import type { LineReading } from "../../../engine/supply/index.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { factsText } from "./line-rows.ts";

type Written = Readonly<LineReading & { text: string }>;

/** One line of a pasted list, as written and as understood. */
export type PastedRow = Readonly<{
  place: number;
  text: string;
  reading: Written;
  facts: string;
  kept: string | null;
}>;

/** A pasted list, ready to be looked over. */
export const pastedView = (
  readings: readonly Written[],
  format: Formatter = ownFormat,
): readonly PastedRow[] =>
  readings.map((reading, place) => ({
    place,
    text: reading.text,
    reading,
    facts: [
      ...(reading.qty > 1 ? [kitsWords.contents.times(reading.qty)] : []),
      factsText(reading.supply, format),
    ]
      .filter((fact) => fact !== "")
      .join(", "),
    kept: reading.leftover.length > 0 ? kitsWords.entry.kept(reading.leftover.join(", ")) : null,
  }));
