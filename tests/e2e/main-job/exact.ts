/**
 * The money of the scene worked once more in whole numbers: fractions of BigInt, rounded once, halves away from
 * zero. No code of the app's.
 */

/** A fraction; `by` is positive. */
type Exact = Readonly<{ of: bigint; by: bigint }>;

/** "11.0250" is 110250 ÷ 10000. */
function exact(text: string): Exact {
  const [whole = "", decimals = ""] = text.split(".");
  return { of: BigInt(whole + decimals), by: 10n ** BigInt(decimals.length) };
}

const times = (a: Exact, b: Exact): Exact => ({ of: a.of * b.of, by: a.by * b.by });
const over = (a: Exact, b: Exact): Exact => ({ of: a.of * b.by, by: a.by * b.of });
const minus = (a: Exact, b: Exact): Exact => ({ of: a.of * b.by - b.of * a.by, by: a.by * b.by });

/** In minor units, halves away from zero. Everything here is positive until gains, which are whole already. */
function minor({ of, by }: Exact, digits: number): bigint {
  const scaled = of * 10n ** BigInt(digits);
  return (2n * scaled + by) / (2n * by);
}

const digitsOf = { SEK: 2, JPY: 0 } as const;
type Currency = keyof typeof digitsOf;
const rateOf = { EUR: exact("1"), SEK: exact("11.0250"), JPY: exact("163.45") } as const;

/** What an amount comes to in a currency, in its minor units. */
const comesTo = (amount: string, from: keyof typeof rateOf, to: Currency): bigint =>
  minor(over(times(exact(amount), rateOf[to]), rateOf[from]), digitsOf[to]);

const half = (amount: bigint): bigint => minor({ of: amount, by: 2n }, 0);

/** The printed lines and their totals; the block is half wanted. */
function linesIn(currency: Currency) {
  const moss = 2n * comesTo("4.90", "EUR", currency);
  const rust = comesTo("62.50", "SEK", currency);
  const [low, likely, high] = [
    comesTo("200", "SEK", currency),
    comesTo("240", "SEK", currency),
    comesTo("280", "SEK", currency),
  ];
  return {
    list: { low: moss + low, likely: moss + likely, high: moss + high },
    shop: { low: moss + rust + low, likely: moss + rust + likely, high: moss + rust + high },
    wanted: {
      low: moss + rust + half(low),
      likely: moss + rust + half(likely),
      high: moss + rust + half(high),
    },
  };
}

/** One payment less what is off it, for one of its kits. */
function goods(price: string, discount: string, kits: bigint, currency: Currency): bigint {
  const payment = minus(exact(price), exact(discount));
  return minor(times(payment, over(rateOf[currency], { of: kits, by: 1n })), digitsOf[currency]);
}

/** Duty 3.5 % above 6000, tax 10 % of goods, postage and duty above 5000, and 200 when either is due. */
function border(value: bigint) {
  const duty = value > 6000n ? minor({ of: value * 35n, by: 1000n }, 0) : 0n;
  const tax = value > 5000n ? minor({ of: (value + duty) * 10n, by: 100n }, 0) : 0n;
  return duty + tax + (duty + tax > 0n ? 200n : 0n);
}

function tier(goodsShare: bigint, postage: bigint, currency: Currency) {
  const charges = currency === "JPY" ? border(goodsShare + postage) : 0n;
  const cost = goodsShare + postage + charges;
  const { list, shop, wanted } = linesIn(currency);
  return {
    figures: [goodsShare, postage, charges, cost],
    gains: [list.likely - cost, shop.likely - cost, wanted.likely - cost],
    /** Whether even the low total beats the cost. */
    ahead: [list.low > cost, shop.low > cost, wanted.low > cost],
  };
}

/** Everything of one market, in minor units. */
export const workedIn = (currency: Currency) => ({
  totals: linesIn(currency),
  month: tier(
    goods("24", "0", 1n, currency),
    comesTo(currency === "JPY" ? "14" : "5.50", "EUR", currency),
    currency,
  ),
  three: tier(goods("65", "2", 3n, currency), comesTo("5.50", "EUR", currency), currency),
});

/** "−2,111", "348.04": as the screen prints it. */
export function printed(amount: bigint, currency: Currency, sign = false): string {
  const digits = digitsOf[currency];
  const text = String(amount < 0n ? -amount : amount).padStart(digits + 1, "0");
  const whole = text.slice(0, text.length - digits).replace(/\B(?=(\d{3})+$)/g, ",");
  const mark = amount < 0n ? "−" : sign && amount > 0n ? "+" : "";
  return `${mark}${whole}${digits > 0 ? `.${text.slice(-digits)}` : ""}`;
}
