import { Decimal, type Money } from "../../../engine/money/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import type { Kit, Tier } from "../../../engine/worth/index.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";

const words = kitsWords.tiers;

/** One tier, ready to print. */
export type TierRow = Readonly<{
  tier: Tier;
  name: string;
  kits: string;
  price: string;
  postage: string;
  where: string;
}>;

const moneyText = (money: Money | null | undefined, format: Formatter): string =>
  money && !new Decimal(money.amount).isZero() ? format.money(money) : words.free;

function whereText(tier: Tier, book: Workbook): string {
  if (!tier.markets) return words.everywhere;
  const names = (book.markets ?? []).filter(({ id }) => tier.markets?.includes(id)).map(({ name }) => name);
  return kitsWords.joined(names);
}

/** The tiers of a kit, in their own order. */
export const tierRows = (kit: Kit, book: Workbook, format: Formatter = ownFormat): readonly TierRow[] =>
  (kit.tiers ?? []).map((tier) => ({
    tier,
    name: tier.label || words.unnamed,
    kits: format.count(tier.kits),
    price: format.money(tier.price),
    postage: moneyText(tier.postagePerKit, format),
    where: whereText(tier, book),
  }));

/** The currency a new tier is most likely in: that of the last tier, of where it ships from, of home. */
export function likelyCurrency(kit: Kit, book: Workbook): string {
  const market = (id: string | null | undefined) =>
    (book.markets ?? []).find((one) => one.id === id)?.currency;
  return (
    kit.tiers?.at(-1)?.price.currency ??
    market(kit.shipsFrom) ??
    market(book.home?.market) ??
    book.markets?.[0]?.currency ??
    "EUR"
  );
}

/** Where a tier is offered after one market is ticked or not; all of them is the same as not saying it. */
export function offeredAfter(
  tier: Tier,
  markets: readonly Readonly<{ id: string }>[],
  id: string,
  on: boolean,
): readonly string[] | undefined {
  const before = tier.markets ?? markets.map((market) => market.id);
  const after = markets.map((market) => market.id).filter((one) => (one === id ? on : before.includes(one)));
  return after.length === markets.length ? undefined : after;
}
