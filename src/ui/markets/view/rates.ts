import { findRate, isStale, type RateTable } from "../../../engine/money/index.ts";
import { noticesOf, type Workbook } from "../../../engine/workbook/index.ts";
import { type Kit, reportedMarkets } from "../../../engine/worth/index.ts";
import { noticeIn } from "../../words/faults.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { marketsWords } from "../../words/markets.ts";
import { kitName } from "./names.ts";

const words = marketsWords.rates;

/** Every currency that anything in the workbook is priced in, in alphabetical order. */
export function currenciesInUse(book: Workbook): readonly string[] {
  const tiers = (book.kits ?? []).flatMap((kit) => kit.tiers ?? []);
  const lines = (book.kits ?? []).flatMap((kit) => kit.lines ?? []);
  const used = [
    ...(book.markets ?? []).map(({ currency }) => currency),
    ...tiers.flatMap(({ price, postagePerKit }) => [price, postagePerKit]).map((money) => money?.currency),
    ...lines.flatMap(({ evidence }) => evidence ?? []).map(({ price }) => price?.currency),
  ];
  return [...new Set(used.filter((code) => code !== undefined))].toSorted();
}

/** The base that most tables have, for a new one. */
export const usualBase = (book: Workbook): string => (book.rates ?? []).at(-1)?.base ?? "EUR";

/** A day's rates, ready to print: those in use, and how many more there are. */
export type RateRow = Readonly<{
  table: RateTable;
  key: string;
  date: string;
  base: string;
  quotes: string;
  source: string;
}>;

function quotesText({ quotes, base }: RateTable, inUse: readonly string[], format: Formatter): string {
  const given = Object.entries(quotes).filter(([, quote]) => quote !== null);
  const byCode = new Map(given);
  const texts = inUse.flatMap((code) => {
    const quote = code === base ? null : byCode.get(code);
    return quote ? [format.rate(code, quote)] : [];
  });
  const rest = given.length - texts.length;
  if (texts.length === 0) return words.unused(rest);
  return words.list([...texts, ...(rest > 0 ? [words.more(rest)] : [])]);
}

export const rateRow = (
  table: RateTable,
  inUse: readonly string[],
  format: Formatter = ownFormat,
): RateRow => ({
  table,
  key: `${table.base} ${table.date}`,
  date: format.date(table.date),
  base: table.base,
  quotes: quotesText(table, inUse, format),
  source: table.source ?? "",
});

const newestFirst = (a: RateTable, b: RateTable): number => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0);

/** All days of rates, newest first. */
export function rateRows(book: Workbook, format: Formatter = ownFormat): readonly RateRow[] {
  const inUse = currenciesInUse(book);
  return (book.rates ?? []).toSorted(newestFirst).map((table) => rateRow(table, inUse, format));
}

/** What a kit's own money has to be converted to: the currencies of the markets it is counted for. */
function pairsOf(book: Workbook, kit: Kit): readonly Readonly<{ from: string; to: string }>[] {
  const reported = new Set(reportedMarkets(book));
  const to = (book.markets ?? []).filter(({ id }) => reported.has(id)).map(({ currency }) => currency);
  const from = (kit.tiers ?? []).flatMap(({ price, postagePerKit }) => [price, postagePerKit]);
  const codes = new Set(from.flatMap((money) => money?.currency ?? []));
  return [...codes].flatMap((code) =>
    to.filter((other) => other !== code).map((other) => ({ from: code, to: other })),
  );
}

/** What a kit lacks: currencies without a rate on its day, or a day of rates that is too old for it. */
function kitNotice(book: Workbook, kit: Kit, format: Formatter): string | null {
  const on = kit.valuedOn;
  if (!on) return null;
  const uses = pairsOf(book, kit).map((pair) => ({ pair, rate: findRate(book.rates ?? [], pair, on) }));
  const missing = new Set(uses.flatMap(({ pair, rate }) => (rate ? [] : [pair.to])));
  if (missing.size > 0) return words.missing(kitName(kit), format.date(on), [...missing]);
  const oldest = uses.flatMap(({ rate }) => rate?.date ?? []).toSorted()[0];
  if (oldest === undefined || !isStale(oldest, on)) return null;
  return words.stale(kitName(kit), format.date(on), format.date(oldest));
}

/** Kits whose rates are missing or more than a week old, one sentence each. */
export const kitNotices = (book: Workbook, format: Formatter = ownFormat): readonly string[] =>
  (book.kits ?? []).flatMap((kit) => kitNotice(book, kit, format) ?? []);

/** Rates that look like a slip, and days still to come. @param today `YYYY-MM-DD` */
export function oddRates(book: Workbook, today: string, format: Formatter = ownFormat): readonly string[] {
  return noticesOf({ format: book.format, version: book.version, rates: book.rates ?? [] }, today).flatMap(
    ({ place, notice }) => {
      const table = (book.rates ?? [])[Number(/^rates\[(\d+)\]/.exec(place)?.[1] ?? -1)];
      const code = /quotes\.(\w+)/.exec(place)?.[1];
      if (!table) return [];
      const said = noticeIn(notice);
      const isNamed = code === undefined || notice.startsWith(`${code} `);
      return [words.oddText(format.date(table.date), isNamed ? said : `${code} ${said}`)];
    },
  );
}
