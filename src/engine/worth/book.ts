import type { PriceBook } from "../price/index.ts";
import type { Kit, Market, Parcel } from "./schema.ts";

type Absent<T> = T | null | undefined;

/** What worth needs of a workbook; lists may be left out. */
export type WorthBook = Omit<PriceBook, "kits" | "markets"> &
  Readonly<{
    kits?: Absent<readonly Kit[]>;
    markets?: Absent<readonly Market[]>;
    parcels?: Absent<readonly Parcel[]>;
    home?: Absent<Readonly<{ market?: Absent<string>; reportMarkets?: Absent<readonly string[]> }>>;
  }>;

/** The markets that figures are for when nobody names any: those reported, else home, else all. */
export function reportedMarkets(book: WorthBook): readonly string[] {
  const reported = book.home?.reportMarkets ?? [];
  if (reported.length > 0) return reported;
  const home = book.home?.market;
  return home ? [home] : (book.markets ?? []).map((market) => market.id);
}
