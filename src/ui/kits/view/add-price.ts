import { Decimal, type Money } from "../../../engine/money/index.ts";
import type { Evidence, Pack, Shop } from "../../../engine/price/index.ts";
import { type Supply, sheetMm } from "../../../engine/supply/index.ts";
import { kitsWords } from "../../words/kits.ts";

const words = kitsWords.prices;

/** The kinds a price can be added as, in the order they are offered. */
export const priceKinds = ["shop", "list", "shop-pack", "list-pack", "card", "guess", "not-sold"] as const;
export type PriceKind = (typeof priceKinds)[number];

export const isPackKind = (kind: PriceKind): boolean => kind === "shop-pack" || kind === "list-pack";
export const isShopKind = (kind: PriceKind): boolean => kind === "shop" || kind === "shop-pack";

/** What is filled in for a price, as text where it is typed. */
export type PriceDraft = Readonly<{
  kind: PriceKind;
  price: Readonly<{ amount: string | null; currency: string }>;
  low: Readonly<{ amount: string | null; currency: string }>;
  high: Readonly<{ amount: string | null; currency: string }>;
  market: string | null;
  /** A shop's id, or the name of one that is not there yet. */
  shop: string | null;
  date: string | null;
  source: string;
  inStock: boolean;
  plusTax: string;
  pack: Pack;
}>;

export type DraftFault = Readonly<{ field: "price" | "pack" | "range"; message: string }>;

const moneyOf = ({ amount, currency }: PriceDraft["price"]): Money | null =>
  amount === null ? null : { amount, currency };

/** Whether a pack says how much it held, in the measure that the line is sold by. */
function isPack(pack: Pack, { family }: Supply): boolean {
  if (family === "paint" || family === "ink") return Boolean(pack.ml) || Boolean(pack.count);
  if (family === "paper") return Boolean(pack.sheets || pack.count || (pack.size && sheetMm(pack.size)));
  return Boolean(pack.count);
}

/** What stands in the way of adding a price; null where nothing does. */
export function faultOfDraft(draft: PriceDraft, supply: Supply): DraftFault | null {
  if (draft.kind === "not-sold") return null;
  if (draft.price.amount === null) return { field: "price", message: words.priceMissing };
  if (isPackKind(draft.kind) && !isPack(draft.pack, supply))
    return { field: "pack", message: words.packMissing };
  const { low, high } = draft;
  const turned = low.amount !== null && high.amount !== null && new Decimal(low.amount).gt(high.amount);
  return draft.kind === "guess" && turned ? { field: "range", message: words.lowHigh } : null;
}

const kindOf = (kind: PriceKind): Evidence["kind"] =>
  kind === "shop-pack" ? "shop" : kind === "list-pack" ? "list" : kind;

const only = <T extends object>(isGiven: unknown, fields: T): Partial<T> => (isGiven ? fields : {});

/** A price found, with only what was filled in. `shop`: the shop it is from, when it is one of a shop. */
export function evidenceOf(id: string, draft: PriceDraft, shop: string | null): Evidence {
  const { kind, market, date, source, plusTax, inStock, pack } = draft;
  const price = kind === "not-sold" ? null : moneyOf(draft.price);
  const [low, high] = kind === "guess" ? [moneyOf(draft.low), moneyOf(draft.high)] : [null, null];
  return {
    id,
    kind: kindOf(kind),
    ...only(price, { price }),
    ...only(low, { low }),
    ...only(high, { high }),
    ...only(isPackKind(kind), { pack }),
    ...only(market, { market }),
    ...only(isShopKind(kind) && shop, { shop }),
    ...only(isShopKind(kind) && !inStock, { inStock: false }),
    ...only(date, { date }),
    ...only(plusTax && price, { plusTax }),
    ...only(source.trim(), { source: source.trim() }),
  };
}

/** The shops of a market to choose from. */
export const shopsOf = (shops: readonly Shop[], market: string | null): readonly Shop[] =>
  shops.filter((shop) => market === null || shop.market === market);
