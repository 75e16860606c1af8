import { Decimal } from "../../../engine/money/index.ts";
import type { Evidence, Line, Pack, Source } from "../../../engine/price/index.ts";
import { sizeWords } from "../../../engine/supply/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { kitName } from "./kits-list.ts";
import { percentText } from "./line-fields.ts";
import type { MarketPrices } from "./prices.ts";

const words = kitsWords.prices;

/** One price found, ready to print. */
export type FoundRow = Readonly<{
  evidence: Evidence;
  kind: string;
  price: string;
  facts: string;
  /** What it comes to, market by market, in full. */
  why: readonly string[];
}>;

const isPacked = ({ pack }: Evidence): boolean =>
  Boolean(pack?.ml || pack?.sheets || pack?.size || (pack?.count ?? 1) > 1);

function kindText(evidence: Evidence): string {
  const { kind } = evidence;
  if ((kind === "list" || kind === "shop") && isPacked(evidence)) return words.kinds[`${kind}-pack`];
  return words.kinds[kind];
}

function packText(pack: Pack | null | undefined, format: Formatter): readonly string[] {
  if (!pack) return [];
  const print = (value: number) => format.number(value, 3);
  return [
    ...((pack.count ?? 1) > 1 ? [words.pack.pieces(pack.count ?? 1)] : []),
    ...(pack.ml ? [words.pack.ml(print(pack.ml))] : []),
    ...(pack.sheets ? [words.pack.sheets(pack.sheets)] : []),
    ...(pack.size ? [sizeWords(pack.size, print)] : []),
  ];
}

/** The line of an earlier kit that a precedent names. */
function earlierText(book: Workbook, reference: string | null | undefined): readonly string[] {
  const [kitId, lineId] = (reference ?? "").split("/");
  const kit = (book.kits ?? []).find(({ id }) => id === kitId);
  const line = (kit?.lines ?? []).find(({ id }) => id === lineId);
  return kit && line ? [words.fromLine(kitName(kit), line.supply.name)] : [];
}

function priceText({ price, low, high }: Evidence, format: Formatter): string {
  if (!price) return "";
  return low && high
    ? `${format.money(price)}, ${words.to(format.amount(low), format.amount(high))}`
    : format.money(price);
}

function foundFacts(book: Workbook, evidence: Evidence, format: Formatter): string {
  const { market, shop, date, source, inStock, reducedFrom, plusTax, pack, line } = evidence;
  const shopName = (book.shops ?? []).find(({ id }) => id === shop)?.name;
  const marketName = (book.markets ?? []).find(({ id }) => id === market)?.name;
  const tax = percentText(plusTax, format);
  return [
    ...earlierText(book, line),
    ...packText(pack, format),
    ...(shopName ? [shopName] : []),
    ...(marketName ? [marketName] : []),
    date ? format.date(date) : words.undated,
    ...(inStock === false ? [words.noStock] : []),
    ...(reducedFrom ? [words.reduced(format.money(reducedFrom))] : []),
    ...(tax ? [words.plusTax(`${tax} %`)] : []),
    ...(source ? [source] : []),
  ].join(", ");
}

/** With every digit as it was written. */
const exactText = (text: string, format: Formatter): string =>
  format.number(text, text.split(".")[1]?.length ?? 0, true);

function stepsText(source: Source, format: Formatter): string {
  const { rate } = source;
  const quote = (code: string, amount: string) =>
    code === rate?.base ? [] : [`${exactText(amount, format)} ${code}`];
  const rates = rate && [...quote(rate.from, rate.fromQuote), ...quote(rate.to, rate.toQuote)].join(" = ");
  return [
    format.money(source.quoted),
    ...(new Decimal(source.plusTax).isZero() ? [] : [words.tax(`${percentText(source.plusTax, format)} %`)]),
    ...(source.pack ? [source.pack.exponent === 1 ? words.inProportion : words.asPricesGrow] : []),
    ...(rate ? [words.rate(`1 ${rate.base} = ${rates}, ${format.date(rate.date)}`)] : []),
  ].join(", ");
}

/** What a price found comes to in each market where some figure could rest on it. */
function whyFound(
  line: Line,
  evidence: Evidence,
  all: readonly MarketPrices[],
  format: Formatter,
): readonly string[] {
  const comesTo = all.flatMap(({ market, rows }) => {
    const estimate = rows.find((row) => row.line.id === line.id)?.estimate;
    const sources = [...(estimate?.listOptions ?? []), ...(estimate?.streetOptions ?? [])].flatMap(
      ({ trace }) => trace.sources,
    );
    const source = sources.find((one) => one.evidence === evidence.id);
    return source
      ? [words.comesTo(market.name, stepsText(source, format), format.money(source.comesTo))]
      : [];
  });
  return comesTo.length > 0 ? comesTo : [words.unused];
}

/** All prices found for a line, newest first, with what each comes to. */
export function foundRows(
  book: Workbook,
  line: Line,
  all: readonly MarketPrices[],
  format: Formatter = ownFormat,
): readonly FoundRow[] {
  return (line.evidence ?? [])
    .toSorted((a, b) => ((a.date ?? "") < (b.date ?? "") ? 1 : (a.date ?? "") > (b.date ?? "") ? -1 : 0))
    .map((evidence) => ({
      evidence,
      kind: kindText(evidence),
      price: priceText(evidence, format),
      facts: foundFacts(book, evidence, format),
      why: whyFound(line, evidence, all, format),
    }));
}
