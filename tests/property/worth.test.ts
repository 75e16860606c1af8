import { describe, expect, it } from "vitest";
import { minorDigits } from "../../src/engine/money/index.ts";
import type { Line } from "../../src/engine/price/index.ts";
import {
  type Kit,
  type Tier,
  type TierWorth,
  type WorthBook,
  worthOf,
} from "../../src/engine/worth/index.ts";
import fc from "../chance.ts";
import {
  add,
  divide,
  greater,
  multiply,
  negate,
  type Rational,
  rational,
  rounded,
} from "../reference/rational.ts";

const quotes: Readonly<Record<string, string>> = { SEK: "11.0250", JPY: "163.45", KWD: "0.33615" };
const rates = [{ date: "2026-04-28", base: "EUR", quotes: { ...quotes } }];
const currencies = ["EUR", "SEK", "JPY", "KWD"] as const;

const amount = (most: number) =>
  fc.integer({ min: 0, max: most }).map((cents) => rounded({ over: BigInt(cents), under: 100n }, 2));
const money = (most: number) => fc.record({ amount: amount(most), currency: fc.constantFrom(...currencies) });
const fraction = fc
  .integer({ min: 0, max: 1000 })
  .map((thousandths) => rounded({ over: BigInt(thousandths), under: 1000n }, 3));

const line = (id: number): fc.Arbitrary<Line> =>
  fc
    .record({
      qty: fc.integer({ min: 1, max: 12 }),
      want: fraction,
      price: fc.option(money(20_000)),
      kind: fc.constantFrom("list", "guess", "card", "shop"),
      spread: fc.tuple(amount(3_000), amount(3_000)),
    })
    .map(({ qty, want, price, kind, spread }) => ({
      id: `l${id}`,
      qty,
      want,
      supply: { family: "other", name: "thing" },
      evidence: price
        ? [
            {
              id: "e",
              kind,
              price,
              date: "2026-04-01",
              low: { ...price, amount: "0" },
              high: { ...price, amount: rounded(add(rational(price.amount), rational(spread[0])), 2) },
            },
          ]
        : [],
    }));

const tier: fc.Arbitrary<Tier> = fc.record({
  id: fc.constant("t1"),
  kits: fc.integer({ min: 1, max: 12 }),
  price: money(50_000),
  postagePerKit: fc.option(money(3_000)),
  feeOnce: fc.option(money(2_000)),
  discount: fc.option(money(5_000)),
  plusTax: fc.option(fraction),
});

const rule = (currency: string) =>
  fc.record({
    from: fc.constant("any" as const),
    dutyRate: fraction,
    taxRate: fraction,
    dutyFreeUpTo: fc.option(amount(20_000).map((text) => ({ amount: text, currency }))),
    taxFreeUpTo: fc.option(amount(20_000).map((text) => ({ amount: text, currency }))),
    handlingFee: fc.option(amount(2_000).map((text) => ({ amount: text, currency }))),
    valueBasis: fc.constantFrom("goods" as const, "goods-and-postage" as const),
  });

const scene = fc.constantFrom(...currencies).chain((currency) =>
  fc.record({
    currency: fc.constant(currency),
    lines: fc
      .integer({ min: 0, max: 8 })
      .chain((count) => fc.tuple(...Array.from({ length: count }, (_, id) => line(id)))),
    tier,
    rule: rule(currency),
  }),
);

type Scene = typeof scene extends fc.Arbitrary<infer S> ? S : never;

function valued({ currency, lines, tier: only, rule: border }: Scene) {
  const kit: Kit = {
    id: "k1",
    maker: "Nordan",
    period: "2026-04",
    valuedOn: "2026-04-30",
    shipsFrom: "far",
    lines,
    tiers: [only],
  };
  const book: WorthBook = {
    kits: [kit],
    rates,
    markets: [{ id: "m", name: "M", currency, import: [border] }],
  };
  const outcome = worthOf(book, kit, ["m"]);
  const market = outcome.ok ? outcome.value.markets[0] : undefined;
  const row = market?.tiers[0];
  if (!market || !row) throw new Error("not valued");
  return { market, row };
}

const zero = rational("0");
const sum = (values: readonly (string | undefined)[]): Rational =>
  values.map((text) => rational(text ?? "0")).reduce(add, zero);

/** The cost of one kit over again in whole-number fractions, straight from the rules. */
function costAgain({ currency, tier: only, rule: border }: Scene): readonly string[] {
  const digits = minorDigits(currency);
  const quote = (code: string) => rational(quotes[code] ?? "1");
  const into = (part: { amount: string; currency: string } | null | undefined): Rational =>
    part ? divide(multiply(rational(part.amount), quote(currency)), quote(part.currency)) : zero;
  const tax = add(rational("1"), rational(only.plusTax ?? "0"));
  const payment = add(add(into(only.price), into(only.feeOnce)), negate(into(only.discount)));
  const goods = rounded(divide(multiply(payment, tax), rational(String(only.kits))), digits);
  const postage = rounded(multiply(into(only.postagePerKit), tax), digits);
  const value = border.valueBasis === "goods" ? rational(goods) : sum([goods, postage]);
  const over = (limit: { amount: string } | null): boolean =>
    greater(value, limit ? rational(limit.amount) : zero);
  const duty = rounded(over(border.dutyFreeUpTo) ? multiply(value, rational(border.dutyRate)) : zero, digits);
  const taxed = multiply(sum([goods, postage, duty]), rational(border.taxRate));
  const charged = rounded(over(border.taxFreeUpTo) ? taxed : zero, digits);
  const due = greater(rational(duty), zero) || greater(rational(charged), zero);
  const handling = rounded(due ? rational(border.handlingFee?.amount ?? "0") : zero, digits);
  return [goods, postage, duty, charged, handling];
}

const parts = (row: TierWorth) =>
  [row.goods, row.postage, row.duty, row.tax, row.handling].map((part) => part.amount);

describe("worth keeps its promises", () => {
  it("printed figures add up: lines to totals, parts to the cost, totals less cost to gains", () => {
    fc.assert(
      fc.property(scene, (given) => {
        const { market, row } = valued(given);
        const digits = minorDigits(given.currency);
        const list = market.lines.map((each) => each.list?.amount);
        expect(market.listTotal.amount).toBe(rounded(sum(list), digits));
        expect(market.streetTotal.amount).toBe(
          rounded(sum(market.lines.map((each) => each.street?.amount)), digits),
        );
        for (const each of market.lines) {
          const times = each.listEach && multiply(rational(each.listEach.amount), rational(String(each.qty)));
          expect(each.list?.amount).toBe(times ? rounded(times, digits) : undefined);
        }
        expect(row.kitCost.amount).toBe(rounded(sum(parts(row)), digits));
        const gain = add(rational(market.listTotal.amount), negate(rational(row.kitCost.amount)));
        expect(row.listGain.amount).toBe(rounded(gain, digits));
      }),
    );
  });
  it("costs what the rules say, worked out again in whole-number fractions", () => {
    fc.assert(
      fc.property(scene, (given) => {
        expect(parts(valued(given).row)).toEqual(costAgain(given));
      }),
      { numRuns: 300 },
    );
  });
  it("a verdict says how the totals lie to the cost, and hangs on a line of the kit", () => {
    fc.assert(
      fc.property(scene, (given) => {
        const { market, row } = valued(given);
        const cost = rational(row.kitCost.amount);
        const low = greater(rational(market.listLow.amount), cost);
        const high = greater(rational(market.listHigh.amount), cost);
        const open = market.lines.some((each) => each.list === null);
        expect(row.listVerdict).toBe(low ? "ahead" : high || open ? "hangs" : "behind");
        expect(row.listHangsOn !== null).toBe(row.listVerdict === "hangs");
        if (row.listHangsOn) expect(market.lines.map((each) => each.line)).toContain(row.listHangsOn);
      }),
    );
  });
});
