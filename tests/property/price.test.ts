import { describe, expect, it } from "vitest";
import { minorDigits } from "../../src/engine/money/index.ts";
import { type Evidence, estimateLine, type Line } from "../../src/engine/price/index.ts";
import fc from "../chance.ts";
import { add, divide, multiply, rational, rounded } from "../reference/rational.ts";

const quotes: Readonly<Record<string, string>> = { SEK: "11.0250", JPY: "163.45", KWD: "0.33615" };
const rates = [{ date: "2026-04-28", base: "EUR", quotes: { ...quotes } }];
const currency = fc.constantFrom("EUR", "SEK", "JPY", "KWD");
const text = (most: number, decimals: number) =>
  fc
    .integer({ min: 0, max: most })
    .map((units) => rounded({ over: BigInt(units), under: 10n ** BigInt(decimals) }, decimals));

/** The estimate in a market "here" of this currency for a tube of 15 ml. */
function estimate(evidence: readonly Evidence[], code: string) {
  const line: Line = {
    id: "l1",
    supply: { family: "paint", name: "Gouache", traits: { ml: 15 } },
    evidence: [...evidence],
  };
  const kit = { id: "k1", valuedOn: "2026-04-30", lines: [line] };
  return estimateLine(
    { kits: [kit], rates, markets: [{ id: "here", name: "Here", currency: code }] },
    kit,
    line,
    "here",
  );
}

describe("prices keep their promises", () => {
  it("a price is taxed, brought to the line's quantity, converted, and rounded only then", () => {
    const given = fc.record({
      price: fc.record({ amount: text(100_000, 2), currency }),
      plusTax: text(500, 3),
      ml: fc.integer({ min: 1, max: 200 }),
      into: currency,
    });
    fc.assert(
      fc.property(given, ({ price, plusTax, ml, into }) => {
        const { list } = estimate([{ id: "e", kind: "list", price, plusTax, pack: { ml } }], into);
        const taxed = multiply(rational(price.amount), add(rational("1"), rational(plusTax)));
        const sized = divide(multiply(taxed, rational("15")), rational(String(ml)));
        const quote = (code: string) => rational(quotes[code] ?? "1");
        const again = divide(multiply(sized, quote(into)), quote(price.currency));
        expect(list?.likely).toEqual({ amount: rounded(again, minorDigits(into)), currency: into });
        expect(list?.method).toBe(ml === 15 ? "converted" : "scaled");
      }),
    );
  });

  it("the order of the file settles nothing but ties", () => {
    const days = fc.uniqueArray(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 10 });
    const kinds = fc.array(fc.constantFrom("list", "shop", "card", "guess", "not-sold"), {
      minLength: 10,
      maxLength: 10,
    });
    const places = fc.array(fc.constantFrom("here", "there"), { minLength: 10, maxLength: 10 });
    const all = fc.tuple(days, kinds, places).map(([dates, kind, market]) =>
      dates.map(
        (day, at): Evidence => ({
          id: `e${at}`,
          kind: kind[at] ?? "list",
          price: { amount: String(day), currency: "EUR" },
          market: market[at] ?? null,
          date: `2026-04-${String(day).padStart(2, "0")}`,
        }),
      ),
    );
    const shuffled = all.chain((list) =>
      fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
    );
    fc.assert(
      fc.property(shuffled, ([one, other]) => {
        const [first, second] = [estimate(one, "SEK"), estimate(other, "SEK")];
        expect([second.list, second.street, second.listOptions]).toEqual([
          first.list,
          first.street,
          first.listOptions,
        ]);
      }),
    );
  });
});
