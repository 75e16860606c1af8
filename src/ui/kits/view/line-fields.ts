import { Decimal } from "../../../engine/money/index.ts";
import type { Line } from "../../../engine/price/index.ts";
import { readAmount } from "../../parts/read/amount.ts";
import type { Read } from "../../supply-form/view/read-trait.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { printedInHundred } from "../../worth/view/percent.ts";

/** A fraction as decimal text, in hundredths for the screen; nothing said means all of it. */
export const wantText = (want: string | null | undefined, format: Formatter = ownFormat): string =>
  printedInHundred(want ?? "1", format);

/** A share in hundredths, 0 to 100, as the fraction the workbook holds; left empty, all of it. */
export function readWant(typed: string): Read<string> {
  const reading = readAmount(typed.replace(/%\s*$/, ""), 2);
  if (reading.kind === "empty") return { ok: true, value: undefined };
  const share = reading.kind === "value" ? new Decimal(reading.value) : null;
  if (!share || share.gt(100)) return { ok: false, fault: kitsWords.line.wantFault };
  return { ok: true, value: share.div(100).toFixed() };
}

/** A percentage as it is typed, "25", of a fraction as decimal text, "0.25"; nothing of none. */
export const percentText = (fraction: string | null | undefined, format: Formatter = ownFormat): string =>
  fraction && !new Decimal(fraction).isZero() ? printedInHundred(fraction, format) : "";

/** A percentage as the fraction the workbook holds. */
export function readPercent(typed: string): Read<string> {
  const reading = readAmount(typed.replace(/%\s*$/, ""), 2);
  if (reading.kind === "empty") return { ok: true, value: undefined };
  if (reading.kind !== "value") return { ok: false, fault: kitsWords.tiers.plusTaxFault };
  return { ok: true, value: new Decimal(reading.value).div(100).toFixed() };
}

/** A line's note: a field the workbook keeps without knowing it, so it may hold anything. */
export const noteOf = (line: Line): string => (typeof line.note === "string" ? line.note : "");

type Named = Readonly<{ id: string }>;

/** Where a line can move to: in front of the one before it, or in front of the one after the next (null: last). */
export function neighbours<T extends Named>(lines: readonly T[], id: string) {
  const at = lines.findIndex((line) => line.id === id);
  return {
    isFirst: at <= 0,
    isLast: at === lines.length - 1,
    before: lines[at - 1] ?? null,
    afterNext: lines[at + 2] ?? null,
  };
}
