import { describe, expect, it } from "vitest";
import { convert, exact, minorDigits, printed, share, sumMoney } from "../../src/engine/money/index.ts";
import fc from "../chance.ts";
import { divide, multiply, rational, rounded } from "../reference/rational.ts";

const currency = fc.constantFrom("JPY", "EUR", "SEK", "KWD", "CLF");
const decimalText = (digits: number, decimals: number) =>
  fc
    .tuple(fc.bigInt({ min: 0n, max: 10n ** BigInt(digits) }), fc.integer({ min: 0, max: decimals }))
    .map(([units, places]) => rounded({ over: units, under: 10n ** BigInt(places) }, places));
const rate = decimalText(9, 6).filter((text) => !/^[0.]+$/.test(text));

describe("money keeps its promises", () => {
  it("converts as whole-number fractions do, to the last minor unit", () => {
    fc.assert(
      fc.property(
        decimalText(12, 5),
        currency,
        currency,
        rate,
        rate,
        (amount, from, to, fromQuote, toQuote) => {
          fc.pre(from !== to);
          const rates = [{ date: "2026-04-30", base: "USD", quotes: { [from]: fromQuote, [to]: toQuote } }];
          const ours = convert(exact({ amount, currency: from }), to, { rates, on: "2026-04-30", place: "" });
          const theirs = divide(multiply(rational(amount), rational(toQuote)), rational(fromQuote));
          expect(ours.ok && printed(ours.value.amount).amount).toBe(rounded(theirs, minorDigits(to)));
        },
      ),
    );
  });
  it("rounds a half away from nought at every minor unit", () => {
    fc.assert(
      fc.property(fc.bigInt({ min: -(10n ** 15n), max: 10n ** 15n }), currency, (units, code) => {
        const digits = minorDigits(code);
        const half = { over: 2n * units + 1n, under: 2n * 10n ** BigInt(digits) };
        const amount = rounded(half, digits + 1);
        expect(printed(exact({ amount, currency: code })).amount).toBe(rounded(half, digits));
      }),
    );
  });
  it("shares without making or losing a minor unit, and no share is off by a whole one", () => {
    const weights = fc.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(
        fc.bigInt({ min: -(10n ** 15n), max: 10n ** 15n }),
        currency,
        weights,
        (units, code, parts) => {
          const sum = parts.reduce((total, part) => total + part, 0);
          fc.pre(sum > 0);
          const digits = minorDigits(code);
          const total = {
            amount: rounded({ over: units, under: 10n ** BigInt(digits) }, digits),
            currency: code,
          };
          const shares = share(total, parts);
          expect(sumMoney(code, shares)).toEqual(total);
          shares.forEach(({ amount }, at) => {
            const got = rational(amount);
            const fair = units * BigInt(parts[at] ?? 0);
            const off = got.over * BigInt(sum) - fair; // both in minor units × the sum of the weights
            expect(off < 0n ? -off < BigInt(sum) : off < BigInt(sum)).toBe(true);
          });
        },
      ),
    );
  });
});
