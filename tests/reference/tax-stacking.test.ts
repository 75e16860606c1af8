import { describe, expect, it } from "vitest";
import published from "../../fixtures/reference/tax-stacking.json" with { type: "json" };
import { type ImportRule, type Kit, worthOf } from "../../src/engine/worth/index.ts";
import { add, rational, rounded } from "./rational.ts";

const eur = (amount: string) => ({ amount, currency: "EUR" });

/** What the border of Ireland charges for one parcel from Japan. */
function atBorder(goods: string, postage: string, rule: ImportRule) {
  const kit: Kit = {
    id: "k1",
    maker: "Nordan",
    period: "2026-04",
    valuedOn: "2026-04-30",
    shipsFrom: "jp",
    tiers: [{ id: "t1", kits: 1, price: eur(goods), postagePerKit: eur(postage) }],
  };
  const markets = [{ id: "ie", name: "Ireland", currency: "EUR", import: [rule] }];
  const outcome = worthOf({ kits: [kit], markets }, kit, ["ie"]);
  return outcome.ok ? outcome.value.markets[0]?.tiers[0] : undefined;
}

// Source: Council Directive 2006/112/EC, Articles 85 and 86 (tax on customs value, duty and costs to the first
// destination); rows constructed in the fixture and computed there with decimal.js. Insurance is part of what
// sending costs. Inland costs and so the row that has some are not modelled: nobody is told them before they pay.
describe("tax stacks on goods, postage and duty", () => {
  const rows = published.constructedExamples.rows.filter(
    (row) => row.inlandCostsInVatBase === "0" || !("inlandCostsInVatBase" in row),
  );
  it("has rows to check", () => expect(rows.length).toBeGreaterThanOrEqual(4));
  it.each(rows)("goods $goods, sending $shipping: duty $duty, tax $vat", (row) => {
    const postage = rounded(add(rational(row.shipping), rational(row.insurance)), 2);
    const tier = atBorder(row.goods, postage, {
      from: "any",
      dutyRate: row.dutyRate,
      taxRate: row.vatRate,
      handlingFee: eur(row.handlingFee),
      valueBasis: "goods-and-postage",
    });
    expect(tier).toMatchObject({
      duty: eur(row.duty),
      tax: eur(row.vat),
      handling: eur(rounded(rational(row.handlingFee), 2)),
    });
    expect(tier?.kitCost).toEqual(eur(row.landedTotal));
  });
});

// Source: Revenue (Ireland), revenue.ie, how to calculate duty and VAT when travelling from outside the EU: shirts of
// EUR 600 at 2.5 % duty, a camera of EUR 500 free of duty, VAT of 23 % on goods and duty. Our rule has one duty rate
// for the whole parcel, so the dutiable part goes as goods, the other as what is taxed with it.
it("comes to the tax of a printed example", () => {
  const example = published.printedExamples[0];
  const tier = atBorder("600.00", "500.00", {
    from: "any",
    dutyRate: "0.025",
    taxRate: "0.23",
    valueBasis: "goods",
  });
  expect([tier?.duty.amount, tier?.tax.amount]).toEqual([example?.duty, example?.vat]);
});
