import type { Evidence, Line } from "../../../src/engine/price/index.ts";
import type { ImportRule, Kit, Market, Tier, WorthBook } from "../../../src/engine/worth/index.ts";

export const sek = (amount: string) => ({ amount, currency: "SEK" });
export const eur = (amount: string) => ({ amount, currency: "EUR" });
export const jpy = (amount: string) => ({ amount, currency: "JPY" });
export const kwd = (amount: string) => ({ amount, currency: "KWD" });

export const rates = [
  { date: "2026-04-30", base: "EUR", quotes: { SEK: "11.0250", JPY: "163.45", KWD: "0.33615" } },
];

export const market = (id: string, currency: string, rules: readonly ImportRule[] = []): Market => ({
  id,
  name: id,
  currency,
  import: [...rules],
});
export const markets = [market("se", "SEK"), market("ie", "EUR"), market("jp", "JPY"), market("kw", "KWD")];

/** A line whose list price is given; further evidence as wanted. */
export const line = (id: string, price: Evidence["price"], more: Partial<Line> = {}): Line => ({
  id,
  supply: { family: "other", name: id },
  evidence: price ? [{ id: "e1", kind: "list", price }] : [],
  ...more,
});

/** A line guessed at, with its range. */
export const guessed = (id: string, [low, likely, high]: readonly [string, string, string], qty = 1): Line =>
  line(id, null, {
    qty,
    evidence: [{ id: "e1", kind: "guess", price: eur(likely), low: eur(low), high: eur(high) }],
  });

export const tier = (more: Partial<Tier> = {}): Tier => ({ id: "t1", kits: 1, price: eur("24.00"), ...more });

export const kit = (more: Partial<Kit> = {}): Kit => ({
  id: "k1",
  maker: "Nordan",
  period: "2026-04",
  valuedOn: "2026-04-30",
  lines: [],
  tiers: [],
  ...more,
});

export const book = (only: Kit, more: Partial<WorthBook> = {}): WorthBook => ({
  kits: [only],
  markets,
  rates,
  ...more,
});
