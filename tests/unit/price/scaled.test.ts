import { describe, expect, it } from "vitest";
import published from "../../../fixtures/reference/least-squares.json" with { type: "json" };
import { type Evidence, estimateLine, type Line } from "../../../src/engine/price/index.ts";
import type { Supply } from "../../../src/engine/supply/index.ts";
import { bookOf, eur, found, kitOf, lineOf, sek } from "./book.ts";

const gouache = (ml: number): Supply => ({
  family: "paint",
  name: "Gouache",
  traits: { medium: "gouache", ml },
});

/** Lines of an earlier kit, each with one price, SEK and a list price unless said otherwise. */
const priced = (
  points: readonly (readonly [quantity: number, amount: string])[],
  supplyOf: (quantity: number) => Supply = gouache,
  more: Partial<Evidence> = {},
): readonly Line[] =>
  points.map(([quantity, amount], at) =>
    lineOf([found("list", { market: "se", price: sek(amount), ...more })], {
      id: `p${at}`,
      supply: supplyOf(quantity),
    }),
  );

/** What a sender's pack, which is never one of the prices fitted to, comes to for a line in Sweden. */
function scaled(
  known: readonly Line[],
  { line = gouache(20), pack = { ml: 40 }, price = sek("1000") }: Partial<Asked> = {},
) {
  const asked = lineOf([found("card", { price, pack })], { supply: line });
  const kit = kitOf([asked]);
  const earlier = kitOf(known, { id: "k0", period: "2025-08" });
  return estimateLine(bookOf(earlier, kit), kit, asked, "se");
}
type Asked = Readonly<{ line: Supply; pack: NonNullable<Evidence["pack"]>; price: ReturnType<typeof sek> }>;

const figures = ({ list }: ReturnType<typeof scaled>) =>
  list && [list.method, list.likely.amount, list.low.amount, list.high.amount];

/** Half of 1000 where nothing is fitted. */
const inProportion = ["scaled", "500.00", "500.00", "500.00"];

/** Two sizes, two prices each, twice below and twice above √size: the power is ½, each miss is ln 2. */
const pairs = [
  [10, "1"],
  [10, "4"],
  [40, "2"],
  [40, "8"],
] as const;

describe("the power of the quantity that prices go by", () => {
  const power = (known: readonly Line[]): number => {
    const big = { line: gouache(1000), pack: { ml: 100 }, price: sek("1000000000") };
    return Math.log10(Number(scaled(known, big).list?.likely.amount)) - 9;
  };
  const [withoutLargest, all] = published.logLog.examples;

  // Source: Rousseeuw & Leroy (1987), table of 28 animals, body against brain; figures as printed there.
  it("is 0.7522607 for the animals without the three largest", () => {
    const rest = published.logLog.animals.toSorted((a, b) => Number(b[1]) - Number(a[1])).slice(3);
    const known = priced(rest.map(([, body, brain]) => [Number(body), String(brain)]));
    expect(power(known)).toBeCloseTo(withoutLargest?.computed.b ?? 0, 7);
  });
  it("is 0.4959947 for all of them", () => {
    const known = priced(published.logLog.animals.map(([, body, brain]) => [Number(body), String(brain)]));
    expect(power(known)).toBeCloseTo(all?.computed.b ?? 0, 7);
  });
  it("is exact, and without a range, for prices that follow a law exactly: 3 × size^0.75", () => {
    const known = priced([
      [1, "3"],
      [16, "24"],
      [81, "81"],
      [256, "192"],
    ]);
    // 16^0.75 = 8, and a half is still a half: 0.845 ÷ 8 = 0.105625; 8.04 ÷ 8 = 1.005, so 1.01
    const half = scaled(known, { line: gouache(1), pack: { ml: 16 }, price: sek("8.04") });
    expect(figures(half)).toEqual(["scaled", "1.01", "1.01", "1.01"]);
  });
});

// Source: the prediction interval of simple regression (Weisberg 1985). Student's t within which 0.8 lies is
// 4√2 ÷ 3 = 1.886 for two degrees of freedom, and 1.638 for three (any printed table of t, 0.90 one-sided).
describe("the range within which four prices in five would lie", () => {
  const around = (likely: number, doublings: number) => [
    "scaled",
    likely.toFixed(2),
    (likely / 2 ** doublings).toFixed(2),
    (likely * 2 ** doublings).toFixed(2),
  ];
  it("in the middle of the sizes: t · s · √(1 + ¼), laid around the scaled price", () => {
    // s = √2 · ln 2, so 4√2÷3 · √2 · √5÷2 = 4√5÷3 doublings
    expect(figures(scaled(priced(pairs)))).toEqual(around(1000 * Math.SQRT1_2, (4 * Math.sqrt(5)) / 3));
  });
  it("is wider at their end: √(1 + ¼ + ¼)", () => {
    const end = { line: gouache(40), pack: { ml: 10 } };
    expect(figures(scaled(priced(pairs), end))).toEqual(around(2000, (8 / 3) * Math.sqrt(1.5)));
  });
  it("with five prices: t is 1.6377, s is √(4÷3) · ln 2", () => {
    const five = priced([...pairs, [20, "2.8284271247461903"]]);
    const doublings = 1.637744 * Math.sqrt(4 / 3) * Math.sqrt(1.2);
    expect(figures(scaled(five))).toEqual(around(1000 * Math.SQRT1_2, doublings));
  });
});

// The project's own rule: at least four prices of the family and its use or medium, of two quantities.
describe("which prices are fitted to", () => {
  const unsized: Supply = { family: "paint", name: "Gouache", traits: { medium: "gouache" } };
  const fitted = figures(scaled(priced(pairs)));
  const card = (amount: string) => found("card", { market: "se", price: sek(amount) });

  it.each([
    { why: "three are too few", known: priced(pairs.slice(1)) },
    { why: "four of one size tell nothing", known: priced(pairs.map(([, amount]) => [20, amount])) },
    {
      why: "not another medium's",
      known: priced(pairs, (ml) => ({ ...gouache(ml), family: "paint", traits: { medium: "oil", ml } })),
    },
    {
      why: "not another family's",
      known: priced(pairs, (ml) => ({ family: "ink", name: "Ink", traits: { ml } })),
    },
    { why: "not a shop's", known: priced(pairs, gouache, { kind: "shop", date: "2026-04-20" }) },
    { why: "not the sender's own", known: priced(pairs, gouache, { kind: "card" }) },
    { why: "not a guess", known: priced(pairs, gouache, { kind: "guess" }) },
    { why: "not by the piece where the line has millilitres", known: priced(pairs, () => unsized) },
    {
      why: "not a price of nothing",
      known: [...priced(pairs.slice(1)), ...priced([[10, "0"]])],
    },
  ])("$why", ({ known }) => {
    expect(figures(scaled(known))).toEqual(inProportion);
  });

  it("a pack's own millilitres, whatever the line's", () => {
    const known = pairs.map(([ml, amount], at) =>
      lineOf([found("list", { market: "se", price: sek(amount), pack: { ml: ml / 2, count: 2 } })], {
        id: `p${at}`,
        supply: at % 2 ? gouache(7) : unsized,
      }),
    );
    expect(figures(scaled(known))).toEqual(fitted);
  });
  it("several of one line", () => {
    const prices = pairs.map(([ml, amount]) => found("list", { price: sek(amount), pack: { ml } }));
    expect(figures(scaled([lineOf([...prices, card("9")])]))).toEqual(fitted);
  });
  it("in the money of the market, with tax", () => {
    const [, ...rest] = priced(pairs);
    // 0.10 × 1.25 × 11.0250
    const here = priced([[10, "1.378125"]]);
    const abroad = priced([[10, "0"]], gouache, { market: "ie", price: eur("0.10"), plusTax: "0.25" });
    expect(figures(scaled([...abroad, ...rest]))).toEqual(figures(scaled([...here, ...rest])));
    expect(figures(scaled([...abroad, ...rest]))).not.toEqual(fitted);
  });
  it("one without a rate is left out, and no fault", () => {
    const foreign = priced([[10, "70"]], gouache, { price: { amount: "70", currency: "NOK" } });
    const all = scaled([...priced(pairs), ...foreign]);
    expect(figures(all)).toEqual(fitted);
    expect(all.faults).toEqual([]);
  });
  it("paper by sheets and area", () => {
    const pad = (sheets: number): Supply => ({
      family: "paper",
      name: "Pad",
      traits: { use: "layout", sheets, size: "A4" },
    });
    const half = { line: pad(20), pack: { sheets: 20, size: "A3" } };
    expect(figures(scaled(priced(pairs, pad), half))).toEqual(fitted);
  });
  it("everything else by the piece", () => {
    const line: Supply = { family: "eraser", name: "Eraser" };
    const known = pairs.map(([pieces, amount], at) =>
      lineOf([found("list", { price: sek(amount), pack: { count: pieces } })], {
        id: `p${at}`,
        supply: line,
      }),
    );
    expect(scaled(known, { line, pack: { count: 4 } }).list?.likely.amount).toBe("500.00");
  });
  it("and no figure comes of sizes that are all but one", () => {
    const known = priced([
      [10, "1"],
      [10.000000001, `1${"0".repeat(200)}`],
      [10, "1"],
      [10.000000001, `1${"0".repeat(200)}`],
    ]);
    expect(figures(scaled(known))).toEqual(inProportion);
  });
});

describe("what fitting changes", () => {
  it("the sentence says from how many prices, by what power and how widely", () => {
    expect(scaled(priced(pairs)).list?.sentence).toBe(
      "From another pack elsewhere, SEK 1000.00, scaled for 20 of its 40 ml the way 4 prices of such supplies " +
        "grow with size, to the power of 0.50, between SEK 89.53 and SEK 5584.48.",
    );
  });
  it("fitted, it comes before precedents however far the pack", () => {
    const far = lineOf(
      [found("card", { price: sek("1000"), pack: { ml: 500 } }), found("precedent", { price: sek("9") })],
      { supply: gouache(20) },
    );
    const kit = kitOf([far]);
    const of = (known: readonly Line[]) =>
      estimateLine(bookOf(kitOf(known, { id: "k0" }), kit), kit, far, "se").list?.method;
    expect(of(priced(pairs))).toBe("scaled");
    expect(of(priced(pairs.slice(1)))).toBe("precedents");
  });
});
