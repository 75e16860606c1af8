import { agesOf, allOf, type Checked, faultsOf, type RateUse, refuse } from "../money/index.ts";
import { estimateKit, kitPlace, marketOf, type PricedLine, valuedOnOf } from "../price/index.ts";
import { type Language, type Outcome, ok } from "../record/index.ts";
import type { WorthBook } from "./book.ts";
import { type CostWhy, costOf, type Shipment } from "./cost.ts";
import type { KitWorth, MarketWorth, TierWorth, Totals } from "./figures.ts";
import type { Kit, Market, Tier } from "./schema.ts";
import { isOffered, tierWorth } from "./tier.ts";
import { lineWorth, totalsOf } from "./totals.ts";

/** What stands behind a market's figures: each line's estimates, each tier's cost. */
export type MarketWhy = Readonly<{
  market: string;
  lines: readonly PricedLine[];
  tiers: readonly Readonly<{ tier: string; cost: CostWhy }>[];
}>;

/** A kit's worth as printed, and why, market by market in the same order. */
export type ValuedKit = Readonly<{ worth: KitWorth; whys: readonly MarketWhy[] }>;

type Valued<T, Why> = Readonly<{ figures: T; why: Why; rates: readonly RateUse[] }>;
type Sums = Readonly<{ lines: readonly PricedLine[]; totals: Totals }>;

/** One kit in one market on one day. */
type Setting = Readonly<{
  book: WorthBook;
  kit: Kit;
  market: Market;
  valuedOn: string;
  language: Language;
}>;

const shipmentOf = ({ book, kit, market, valuedOn }: Setting, tier: Tier): Shipment => ({
  market,
  origin: kit.shipsFrom ?? null,
  rates: book.rates ?? [],
  valuedOn,
  places: {
    tier: `${kitPlace(book, kit)}.tiers[${(kit.tiers ?? []).indexOf(tier)}]`,
    market: `markets[${(book.markets ?? []).indexOf(market)}]`,
  },
});

function valueTier(setting: Setting, tier: Tier, sums: Sums): Outcome<Valued<TierWorth, CostWhy>> {
  const costed = costOf(tier, shipmentOf(setting, tier));
  if (!costed.ok) return costed;
  const { cost, why, rates } = costed.value;
  return ok({ figures: tierWorth(tier, cost, sums.totals, sums.lines), why, rates });
}

/** Rates behind the estimates gone with. */
const ratesOfLines = (lines: readonly PricedLine[]): readonly RateUse[] =>
  lines
    .flatMap(({ estimate }) => [estimate.list, estimate.street])
    .flatMap((estimate) => estimate?.trace.sources ?? [])
    .flatMap(({ rate }) => (rate ? [rate] : []));

/** A market's figures from its priced lines and its tiers. */
function marketWorth(
  market: Market,
  { lines, totals }: Sums,
  tiers: readonly Valued<TierWorth, CostWhy>[],
): Valued<MarketWorth, MarketWhy> {
  const head = { market: market.id, currency: market.currency, lines: lines.map(lineWorth) };
  const costs = tiers.map(({ figures, why }) => ({ tier: figures.tier, cost: why }));
  return {
    figures: { ...head, ...totals, tiers: tiers.map(({ figures }) => figures) },
    why: { market: market.id, lines, tiers: costs },
    rates: [...ratesOfLines(lines), ...tiers.flatMap(({ rates }) => rates)],
  };
}

/** One market's figures, or everything that is missing for its lines and its tiers. */
function valueMarket(setting: Setting): Checked<Valued<MarketWorth, MarketWhy>> {
  const { book, kit, market, language } = setting;
  const priced = estimateKit(book, kit, market.id, language);
  const lines = priced.ok ? priced.value : [];
  const sums = { lines, totals: totalsOf(market.currency, lines) };
  const offered = (kit.tiers ?? []).filter((tier) => isOffered(tier, market.id));
  const tiers = allOf(offered.map((tier) => valueTier(setting, tier, sums)));
  if (!priced.ok) return refuse([priced.fault, ...priced.faults.slice(1), ...faultsOf(tiers)]);
  if (!tiers.ok) return tiers;
  return { ok: true, value: marketWorth(market, sums, tiers.value) };
}

/** The markets named, in the file's order, or a fault for each that the workbook does not have. */
function marketsNamed(book: WorthBook, ids: readonly string[]): Checked<readonly Market[]> {
  const named = allOf(ids.map((id) => marketOf(book.markets, id)));
  if (!named.ok) return named;
  return { ok: true, value: (book.markets ?? []).filter((market) => named.value.includes(market)) };
}

/**
 * What a kit is worth in each market and tier, and what stands behind every figure.
 * @returns every missing date, rate and market at once where there is one
 */
export function valueKit(
  book: WorthBook,
  kit: Kit,
  marketIds: readonly string[],
  language: Language = "en",
): Checked<ValuedKit> {
  const named = marketsNamed(book, marketIds);
  if (!named.ok) return named;
  const day = valuedOnOf(book, kit);
  if (!day.ok) return refuse([day.fault]);
  const valuedOn = day.value;
  const markets = allOf(named.value.map((market) => valueMarket({ book, kit, market, valuedOn, language })));
  if (!markets.ok) return markets;
  const ages = agesOf(
    markets.value.flatMap(({ rates }) => rates),
    valuedOn,
  );
  const figures = markets.value.map((market) => market.figures);
  const worth = { kit: kit.id, valuedOn, ...ages, markets: figures };
  return { ok: true, value: { worth, whys: markets.value.map(({ why }) => why) } };
}

/** A kit's worth, exactly as the command line's `worth` prints it: `valueKit` without the whys. */
export function worthOf(book: WorthBook, kit: Kit, marketIds: readonly string[]): Checked<KitWorth> {
  const valued = valueKit(book, kit, marketIds);
  return valued.ok ? { ok: true, value: valued.value.worth } : valued;
}
