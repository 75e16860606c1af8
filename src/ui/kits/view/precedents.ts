import type { Money } from "../../../engine/money/index.ts";
import { type Line, possiblePrecedents } from "../../../engine/price/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { estimateLine } from "../../words/engine/price.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { factsText } from "./line-rows.ts";

/** An earlier kit's line that could say what this one costs. */
export type PrecedentRow = Readonly<{
  reference: string;
  name: string;
  kit: string;
  facts: string;
  /** Its list price, for somebody in this market on that kit's own day; null where a rate is missing. */
  price: Money | null;
  isIn: boolean;
}>;

/** What a kind of supply is foremost told by: gouache from watercolour, bristol from layout paper. */
const useOf = ({ supply: { traits } }: Line): unknown => {
  const said: Readonly<Record<string, unknown>> = traits ?? {};
  return said.medium ?? said.use ?? said.core ?? said.base ?? said.kind ?? said.binder ?? said.shape;
};
const isSameUse = (line: Line, other: Line): boolean => useOf(line) === useOf(other);

/** Lines of earlier kits of the same kind and like size: those of the same use first, then the newest kit. */
export function precedentRows(
  book: Workbook,
  kit: Kit,
  line: Line,
  market: string,
  format: Formatter = ownFormat,
): readonly PrecedentRow[] {
  const named = new Set(
    (line.evidence ?? []).filter(({ kind }) => kind === "precedent").map((one) => one.line),
  );
  const closest = possiblePrecedents(book, kit, line).toSorted(
    (a, b) => Number(isSameUse(line, b.line)) - Number(isSameUse(line, a.line)),
  );
  return closest.map((one) => ({
    reference: one.reference,
    name: one.line.supply.name,
    kit: one.kit.title || (one.kit.period ? format.month(one.kit.period) : kitsWords.prices.undated),
    facts: factsText(one.line.supply, format),
    price: estimateLine(book, one.kit, one.line, market).list?.likely ?? null,
    isIn: named.has(one.reference),
  }));
}
