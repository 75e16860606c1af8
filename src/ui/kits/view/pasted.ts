import type { KnownNames } from "../../../engine/supply/index.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { type EntryView, entryView, type Fix } from "./entry.ts";
import { factsText } from "./line-rows.ts";

/** One line of a pasted list, as it stands by now. */
export type PastedLine = Readonly<{
  place: number;
  text: string;
  fixes: readonly Fix[];
  /** Whether a price in it is taken as one; otherwise it stays in the name. */
  keepsPrice: boolean;
}>;

/** One line of a pasted list, as written and as understood. */
export type PastedRow = Readonly<{ line: PastedLine; view: EntryView; facts: string }>;

export const pastedLine = (text: string, place: number): PastedLine => ({
  place,
  text,
  fixes: [],
  keepsPrice: true,
});

/** A line as it is understood with what was put right; null once nothing is written in it. */
export function pastedRow(
  line: PastedLine,
  known: KnownNames,
  format: Formatter = ownFormat,
): PastedRow | null {
  const view = entryView(line.text, { ...known, prices: line.keepsPrice }, line.fixes);
  if (!view) return null;
  const facts = [
    ...(view.qty > 1 ? [kitsWords.contents.times(view.qty)] : []),
    factsText(view.supply, format),
  ];
  return { line, view, facts: facts.filter((fact) => fact !== "").join(", ") };
}
