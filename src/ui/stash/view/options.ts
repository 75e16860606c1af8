import { currencyCodes } from "../../../engine/money/index.ts";
import type { StashItem } from "../../../engine/supply/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";

type Book = Pick<Workbook, "home" | "markets">;

/** Every place something lives in, by name. */
export const placeOptions = (stash: readonly StashItem[]) =>
  [...new Set(stash.flatMap(({ place }) => (place ? [place] : [])))]
    .toSorted((a, b) => a.localeCompare(b))
    .map((place) => ({ value: place, label: place }));

/** The currency where the person lives; else of the first market, else euro. */
export const homeCurrency = ({ home, markets }: Book): string =>
  (markets?.find(({ id }) => id === home?.market) ?? markets?.[0])?.currency ?? "EUR";

/** The currencies to choose from for what was paid: those of the markets. All there are when there is no market. */
export function currenciesOf(book: Book, current: string): readonly string[] {
  const known = (book.markets ?? []).map(({ currency }) => currency);
  return known.length === 0 ? currencyCodes : [...new Set([homeCurrency(book), current, ...known])];
}
