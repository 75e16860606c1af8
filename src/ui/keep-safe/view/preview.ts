import { noticesOf, type Workbook } from "../../../engine/workbook/index.ts";
import type { Restorable } from "../../../store/index.ts";
import { noticeIn } from "../../words/faults.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { keepSafeWords } from "../../words/keep-safe.ts";
import { dayOf } from "./moment.ts";

const words = keepSafeWords.counts;

/** One kind of record: how many are here, and how many a restore would put in their place. */
export type CountRow = Readonly<{ key: string; what: string; here: string; there: string }>;

const lists = [
  "stash",
  "kits",
  "remakes",
  "markets",
  "rates",
  "shops",
  "parcels",
  "kinships",
  "photos",
  "requests",
] as const;

type Key = (typeof lists)[number] | "lines";

function countOf(book: Workbook, key: Key): number {
  if (key !== "lines") return book[key]?.length ?? 0;
  return (book.kits ?? []).reduce((sum, kit) => sum + (kit.lines?.length ?? 0), 0);
}

const keys: readonly Key[] = lists.flatMap((key): readonly Key[] =>
  key === "kits" ? ["kits", "lines"] : [key],
);

/** Every kind of record that either side has any of. */
export const countRows = (
  here: Workbook,
  there: Workbook,
  format: Formatter = ownFormat,
): readonly CountRow[] =>
  keys
    .map((key) => ({ key, what: words[key], counts: [countOf(here, key), countOf(there, key)] as const }))
    .filter(({ counts }) => counts.some((count) => count > 0))
    .map(({ key, what, counts: [now, then] }) => ({
      key,
      what,
      here: format.count(now),
      there: format.count(then),
    }));

/** What a restore would do, before anything is done. */
export type Preview = Readonly<{
  /** The day the copy was written, or null where it does not say. */
  when: string | null;
  rows: readonly CountRow[];
  damaged: boolean;
  /** What looks odd in it, each with its place. */
  odd: readonly string[];
}>;

/** @param today `YYYY-MM-DD` */
export function previewOf(
  here: Workbook,
  read: Extract<Restorable, { ok: true }>,
  today: string,
  format: Formatter = ownFormat,
): Preview {
  const { book, writtenAt, damaged } = read;
  return {
    when: writtenAt === null || Number.isNaN(Date.parse(writtenAt)) ? null : format.date(dayOf(writtenAt)),
    rows: countRows(here, book, format),
    damaged,
    odd: noticesOf(book, today).map(({ place, notice }) => `${place}: ${noticeIn(notice)}`),
  };
}
