import { isStale } from "../../../engine/money/index.ts";
import type { Estimate, Line } from "../../../engine/price/index.ts";
import { daysBetween } from "../../../engine/record/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import { type Kit, reportedMarkets } from "../../../engine/worth/index.ts";
import { kitTitle } from "../../remakes/view/solve.ts";
import { deskWords } from "../../words/desk.ts";
import { estimateLine } from "../../words/engine/price.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { underWay } from "./next.ts";

const words = deskWords.prices;

/** Something about a price to look at, and the page where it is put right. */
export type PriceRow = Readonly<{ key: string; kit: string | null; name: string; fact: string }>;

/** `more`: how many lines are not listed, and the kit that the first of them is in. */
export type PricesView = Readonly<{
  rows: readonly PriceRow[];
  more: Readonly<{ count: number; kit: string | null }>;
}>;

const rowsShown = 5;

/** The kits of remakes under way first, then the newest. */
function inOrder(book: Workbook): readonly Kit[] {
  const first = underWay(book).map(({ kit }) => kit);
  const rank = ({ id }: Kit): number => (first.includes(id) ? first.indexOf(id) : first.length);
  return (book.kits ?? []).toSorted(
    (a, b) => rank(a) - rank(b) || (a.period < b.period ? 1 : a.period > b.period ? -1 : 0),
  );
}

const isMadeUp = (estimate: Estimate | null): "guess" | "scaled" | null =>
  estimate?.method === "guess" || estimate?.method === "scaled" ? estimate.method : null;

/** What is unsure about a line in any market that figures are for; null when nothing is. */
function unsure(book: Workbook, kit: Kit, line: Line, markets: readonly string[]): string | null {
  const estimates = markets.map((market) => ({ market, list: estimateLine(book, kit, line, market).list }));
  const missing = estimates.filter(({ list }) => list === null).map(({ market }) => market);
  const names = missing.map((id) => book.markets?.find((market) => market.id === id)?.name ?? id);
  if (names.length > 0) return words.missing(names);
  const method = estimates.map(({ list }) => isMadeUp(list)).find((one) => one !== null);
  return method ? words[method] : null;
}

function kitRows(book: Workbook, kit: Kit, markets: readonly string[]): readonly PriceRow[] {
  const lines = kit.lines ?? [];
  if (lines.length === 0) return [];
  if (!kit.valuedOn) return [{ key: kit.id, kit: kit.id, name: kitTitle(kit), fact: words.noDay }];
  return lines.flatMap((line) => {
    const fact = unsure(book, kit, line, markets);
    return fact ? [{ key: `${kit.id}/${line.id}`, kit: kit.id, name: line.supply.name, fact }] : [];
  });
}

/** The newest table of rates, when it is old for the newest day that a kit is valued on; none at all, when more than one currency is in play. */
function rateRow(book: Workbook, today: string, format: Formatter): readonly PriceRow[] {
  const newest = (book.rates ?? [])
    .map(({ date }) => date)
    .toSorted()
    .at(-1);
  const currencies = new Set((book.markets ?? []).map(({ currency }) => currency));
  if (newest === undefined) {
    return currencies.size > 1
      ? [{ key: "rates", kit: null, name: words.noRates, fact: words.noRatesFact }]
      : [];
  }
  const asked = (book.kits ?? [])
    .map(({ valuedOn }) => valuedOn ?? "")
    .toSorted()
    .at(-1);
  // Rates do not age by themselves: they are old for the day whose prices they turn into money.
  if (!asked || asked > today || !isStale(newest, asked)) return [];
  const days = daysBetween(newest, asked);
  return [
    {
      key: "rates",
      kit: null,
      name: words.oldRates(format.date(newest)),
      fact: words.daysBefore(days, format.date(asked)),
    },
  ];
}

/** Lines without a price or with one that is only worked out, and rates that are old. */
export function pricesView(book: Workbook, today: string, format: Formatter = ownFormat): PricesView {
  const markets = reportedMarkets(book);
  const lines = inOrder(book).flatMap((kit) => kitRows(book, kit, markets));
  return {
    rows: [...lines.slice(0, rowsShown), ...rateRow(book, today, format)],
    more: { count: Math.max(0, lines.length - rowsShown), kit: lines[rowsShown]?.kit ?? null },
  };
}
