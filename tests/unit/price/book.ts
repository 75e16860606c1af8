import type { Evidence, Line, PriceBook, PricedKit } from "../../../src/engine/price/index.ts";

/** A northern workbook for price tests: three markets, their rates, three shops. */
const markets = [
  { id: "se", name: "Sweden", currency: "SEK" },
  { id: "ie", name: "Ireland", currency: "EUR" },
  { id: "jp", name: "Japan", currency: "JPY" },
];
const rates = [
  { date: "2026-03-31", base: "EUR", quotes: { SEK: "11.0250", JPY: "163.45" } },
  { date: "2026-05-31", base: "EUR", quotes: { SEK: "12", JPY: "170" } },
];
const shops = [
  { id: "s1", name: "Fjordpapper", market: "se" },
  { id: "s2", name: "Norrsken", market: "se" },
  { id: "s3", name: "Harbour Paints", market: "ie" },
];

let count = 0;

/** One price found, EUR 5.40 unless said otherwise. */
export const found = (kind: Evidence["kind"], more: Partial<Evidence> = {}): Evidence => {
  count += 1;
  return { id: `e${count}`, kind, price: { amount: "5.40", currency: "EUR" }, ...more };
};

export const sek = (amount: string) => ({ amount, currency: "SEK" });
export const eur = (amount: string) => ({ amount, currency: "EUR" });
export const jpy = (amount: string) => ({ amount, currency: "JPY" });

/** A tube of gouache, 15 ml. */
export const lineOf = (evidence: readonly Evidence[], more: Partial<Line> = {}): Line => ({
  id: "l1",
  supply: { family: "paint", name: "Gouache, moss", traits: { medium: "gouache", ml: 15 } },
  evidence: [...evidence],
  ...more,
});

export const kitOf = (lines: readonly Line[], more: Partial<PricedKit> = {}): PricedKit => ({
  id: "k1",
  period: "2026-04",
  valuedOn: "2026-04-30",
  lines,
  ...more,
});

export const bookOf = (...kits: readonly PricedKit[]): PriceBook => ({ kits, markets, rates, shops });
