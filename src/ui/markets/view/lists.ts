import type { Money } from "../../../engine/money/index.ts";
import type { Shop } from "../../../engine/price/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import { type Market, type Parcel, reportedMarkets } from "../../../engine/worth/index.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { marketsWords } from "../../words/markets.ts";
import { nameOf } from "./names.ts";
import { kitNotices } from "./rates.ts";

const { shops: shopWords, parcels: parcelWords, lead: leadWords } = marketsWords;

/** A shop, ready to print. */
export type ShopRow = Readonly<{ shop: Shop; market: string; postage: string; free: string; abroad: string }>;

function abroadText({ postageTo }: Shop, book: Workbook): string {
  const served = Object.entries(postageTo ?? {}).filter(([, postage]) => postage !== null);
  const names = served.map(([id]) => nameOf(book.markets, id));
  return names.length === 0 ? shopWords.only : marketsWords.joined(names);
}

export const shopRows = (book: Workbook, format: Formatter = ownFormat): readonly ShopRow[] =>
  (book.shops ?? []).map((shop) => ({
    shop,
    market: nameOf(book.markets, shop.market),
    postage: shop.postage ? format.money(shop.postage) : shopWords.notSaid,
    free: shop.freeFrom ? format.money(shop.freeFrom) : shopWords.never,
    abroad: abroadText(shop, book),
  }));

/** How many prices were found in a shop, or in a market. */
export const pricesFound = (book: Workbook, where: Readonly<{ shop?: string; market?: string }>): number =>
  (book.kits ?? [])
    .flatMap(({ lines }) => lines ?? [])
    .flatMap(({ evidence }) => evidence ?? [])
    .filter(({ shop, market }) => (where.shop === undefined ? market === where.market : shop === where.shop))
    .length;

/** A parcel, ready to print. */
export type ParcelRow = Readonly<{
  parcel: Parcel;
  date: string;
  way: string;
  value: string;
  charged: string;
  note: string;
}>;

const isNothing = ({ amount }: Money): boolean => /^[0.]+$/.test(amount);

function chargedText({ charged }: Parcel, format: Formatter): string {
  if (!charged) return parcelWords.unknown;
  return isNothing(charged) ? parcelWords.free : format.money(charged);
}

const byDate = (a: Parcel, b: Parcel): number => ((a.date ?? "") < (b.date ?? "") ? 1 : -1);

/** Parcels of one's own, newest first. */
export function parcelRows(book: Workbook, format: Formatter = ownFormat): readonly ParcelRow[] {
  const market = (id: string | null | undefined) => (id ? nameOf(book.markets, id) : parcelWords.notSaid);
  return (book.parcels ?? []).toSorted(byDate).map((parcel) => ({
    parcel,
    date: parcel.date ? format.date(parcel.date) : parcelWords.notSaid,
    way: parcelWords.arrow(market(parcel.from), market(parcel.to)),
    value: parcel.value ? format.money(parcel.value) : parcelWords.notSaid,
    charged: chargedText(parcel, format),
    note: parcel.note ?? "",
  }));
}

/** How often the border charged, by where parcels came from: only those of which it is known. */
export function parcelCounts(book: Workbook): readonly string[] {
  const known = (book.parcels ?? []).filter(({ charged, from }) => charged && from);
  const origins = [...new Set(known.flatMap(({ from }) => from ?? []))];
  return origins.map((id) => {
    const own = known.filter(({ from }) => from === id);
    const hit = own.filter(({ charged }) => charged && !isNothing(charged)).length;
    return parcelWords.counted(nameOf(book.markets, id), own.length, hit);
  });
}

const reportedOf = (book: Workbook): readonly Market[] => {
  const ids = new Set(reportedMarkets(book));
  return (book.markets ?? []).filter(({ id }) => ids.has(id));
};

/** The page in a sentence: for whom worth is counted, and how far the rates reach. */
export function marketsLead(
  book: Workbook,
  format: Formatter = ownFormat,
): Readonly<{ lead: string; more: string }> {
  const reported = reportedOf(book).map(({ name }) => name);
  const newest = (book.rates ?? [])
    .map(({ date }) => date)
    .toSorted()
    .at(-1);
  const needs = kitNotices(book, format).length;
  return {
    lead: reported.length === 0 ? leadWords.none : leadWords.reported(reported),
    more: [
      newest === undefined ? leadWords.noRates : leadWords.rates(format.date(newest)),
      ...(needs > 0 ? [leadWords.needs(needs)] : []),
    ].join(" "),
  };
}
