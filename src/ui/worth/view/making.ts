import { type Money, sumMoney } from "../../../engine/money/index.ts";
import type { CostPart, CostWhy, TierWorth } from "../../../engine/worth/index.ts";
import { worthWords } from "../../words/worth.ts";
import { printedInHundred } from "./percent.ts";
import { rateText } from "./rate.ts";
import type { Scene } from "./scene.ts";

const words = worthWords.making;

/** One step of a sum: what it is, how it comes about, and the amount. `total` for the last. */
export type Step = Readonly<{ what: string; how: string; amount: string; total?: boolean }>;

/** How a tier's cost comes about, in the order in which it is worked out. */
export type Making = Readonly<{ steps: readonly Step[]; caution: string | null }>;

const list = (texts: readonly (string | null)[]): string =>
  texts.filter((text) => text !== null && text !== "").join(", ");

/** The rate of a sum's parts: one day's, as they are all converted at once. */
function conversion(parts: readonly CostPart[], { format }: Scene): string | null {
  const rate = parts.find((part) => part.rate)?.rate;
  return rate ? words.atRate(rateText(rate, format), format.date(rate.date)) : null;
}

function tax(fraction: string, { format }: Scene): string | null {
  return /^[0.]+$/.test(fraction) ? null : words.tax(printedInHundred(fraction, format));
}

function paymentSteps(why: CostWhy, tier: TierWorth, scene: Scene): readonly Step[] {
  const { format } = scene;
  const less = (part: CostPart) => (part.what === "discount" ? "\u2212" : "");
  const how = list([
    conversion(why.goods, scene),
    tax(why.plusTax, scene),
    why.kits > 1 ? words.kits(why.kits) : null,
    words.rounded,
  ]);
  return [
    ...why.goods.map((part) => ({
      what: words[part.what],
      how: "",
      amount: `${less(part)}${format.money(part.quoted)}`,
    })),
    { what: words.goods, how, amount: format.money(tier.goods) },
  ];
}

function postageStep(why: CostWhy, tier: TierWorth, scene: Scene): Step {
  const [quoted] = why.postage;
  const how = quoted
    ? list([
        scene.format.money(quoted.quoted),
        conversion(why.postage, scene),
        tax(why.plusTax, scene),
        words.rounded,
      ])
    : words.noPostage;
  return { what: words.postage, how, amount: scene.format.money(tier.postage) };
}

function noBorder({ kit, market }: Scene): string {
  if (!kit.shipsFrom) return words.noBorderOrigin;
  return kit.shipsFrom === market.id ? words.noBorderHome : words.noBorderRule;
}

const limit = (money: Money | null | undefined, { format }: Scene): string =>
  money ? format.money(money) : "";

/** Duty, tax and fee, each with what decides it, in the order in which a border works. */
function borderSteps({ border }: CostWhy, tier: TierWorth, scene: Scene): readonly Step[] {
  const { format } = scene;
  const { rule, customsValue, overDutyFree, overTaxFree } = border;
  if (!rule) return [{ what: words.noBorder, how: noBorder(scene), amount: words.none }];
  const taxed = sumMoney(tier.goods.currency, [tier.goods, tier.postage, tier.duty]);
  const percent = (fraction: string | null | undefined) => printedInHundred(fraction ?? "0", format);
  const isDue = ![tier.duty, tier.tax].every(({ amount }) => /^[0.]+$/.test(amount));
  return [
    {
      what: words.customs,
      how: rule.valueBasis === "goods-and-postage" ? words.ofBoth : words.ofGoods,
      amount: format.money(customsValue),
    },
    {
      what: words.duty,
      how:
        overDutyFree || !rule.dutyFreeUpTo
          ? words.dutyRate(percent(rule.dutyRate))
          : words.dutyFree(limit(rule.dutyFreeUpTo, scene)),
      amount: format.money(tier.duty),
    },
    {
      what: words.vat,
      how:
        overTaxFree || !rule.taxFreeUpTo
          ? words.vatRate(percent(rule.taxRate), format.money(taxed))
          : words.vatFree(limit(rule.taxFreeUpTo, scene)),
      amount: format.money(tier.tax),
    },
    {
      what: words.handling,
      how: isDue ? words.handlingDue : words.handlingFree,
      amount: format.money(tier.handling),
    },
  ];
}

/** How a tier's cost comes about: payment, share, postage, border, each rounded, then their sum. */
export function makingOf(scene: Scene, tier: TierWorth): Making {
  const why = scene.why.tiers.find((one) => one.tier === tier.tier)?.cost;
  if (!why) return { steps: [], caution: null };
  return {
    steps: [
      ...paymentSteps(why, tier, scene),
      postageStep(why, tier, scene),
      ...borderSteps(why, tier, scene),
      { what: words.total, how: "", amount: scene.format.money(tier.kitCost), total: true },
    ],
    caution: why.border.rule ? words.caution : null,
  };
}
