import { Decimal, type Money } from "../../../engine/money/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import type { ImportRule, Market } from "../../../engine/worth/index.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { marketsWords } from "../../words/markets.ts";
import { printedInHundred } from "../../worth/view/percent.ts";
import { nameOf } from "./names.ts";

const words = marketsWords.rule;

const isNothing = (fraction: string | null | undefined): boolean => new Decimal(fraction ?? "0").isZero();

function fromText({ from }: ImportRule, { markets }: Workbook): string {
  if (!Array.isArray(from)) return words.fromAny;
  return from.length === 0 ? words.fromNobody : words.fromNames(from.map((id) => nameOf(markets, id)));
}

const above = (rate: string, limit: Money | null | undefined, format: Formatter): string =>
  limit ? words.sayAbove(rate, format.money(limit)) : rate;

/** One border rule in a sentence: "From Ireland: nothing is charged." */
export function ruleText(rule: ImportRule, book: Workbook, format: Formatter = ownFormat): string {
  const { dutyRate, taxRate, dutyFreeUpTo, taxFreeUpTo, handlingFee } = rule;
  const rate = (fraction: string | null | undefined) => printedInHundred(fraction ?? "0", format);
  const parts = [
    ...(isNothing(dutyRate) ? [] : [above(words.sayDuty(rate(dutyRate)), dutyFreeUpTo, format)]),
    ...(isNothing(taxRate) ? [] : [above(words.sayTax(rate(taxRate)), taxFreeUpTo, format)]),
  ];
  if (parts.length === 0) return words.say(fromText(rule, book), [words.sayFree]);
  const fee = handlingFee && !isNothing(handlingFee.amount) ? [words.sayFee(format.money(handlingFee))] : [];
  const basis = rule.valueBasis === "goods-and-postage" ? words.both : words.goods;
  return words.say(fromText(rule, book), [...parts, ...fee, words.sayBasis(basis)]);
}

/** Every rule of a market in a sentence each. */
export const ruleTexts = (market: Market, book: Workbook, format: Formatter = ownFormat): readonly string[] =>
  (market.import ?? []).map((rule) => ruleText(rule, book, format));

/** The rules with one of them changed; a field that becomes undefined is left out. */
export function withRule(market: Market, index: number, change: Partial<ImportRule>): readonly ImportRule[] {
  return (market.import ?? []).map((rule, at) => {
    if (at !== index) return rule;
    const fields = Object.entries({ ...rule, ...change }).filter(([, value]) => value !== undefined);
    return Object.fromEntries(fields);
  });
}

/** The origins of a rule after one market is ticked or not, in the workbook's order. */
export const originsAfter = (
  rule: ImportRule,
  markets: readonly Market[],
  id: string,
  on: boolean,
): string[] => {
  const before = Array.isArray(rule.from) ? rule.from : [];
  return markets.map((market) => market.id).filter((one) => (one === id ? on : before.includes(one)));
};
