import type { Money } from "../../engine/money/index.ts";
import type { Workbook } from "../../engine/workbook/index.ts";
import {
  type Kit,
  type KitWorth,
  type MarketWorth,
  reportedMarkets,
  worthOf,
} from "../../engine/worth/index.ts";
import { byId, orFaults, workbookFrom } from "../input.ts";
import { table } from "../table.ts";
import { textOption, textsOption, type Verb } from "../verb.ts";
import { visible } from "../visible.ts";

const amount = (money: Money | null): string => money?.amount ?? "no price";

function marketText(book: Workbook, kit: Kit, worth: MarketWorth): string {
  const market = book.markets?.find(({ id }) => id === worth.market);
  const names = new Map((kit.lines ?? []).map(({ id, supply }) => [id, supply.name]));
  const labels = new Map((kit.tiers ?? []).map(({ id, label }) => [id, label ?? id]));
  const least = worth.unpriced.length > 0 ? "at least " : "";
  const says = (verdict: string, line: string | null) =>
    verdict === "hangs"
      ? `hangs on ${names.get(line ?? "") ?? line}`
      : verdict === "ahead"
        ? "pays"
        : "does not";
  const lines = worth.lines.map(({ line, qty, list, street }) => [
    line,
    String(qty),
    names.get(line) ?? "",
    amount(list),
    amount(street),
  ]);
  const totals = ["", "", "together", least + worth.listTotal.amount, least + worth.streetTotal.amount];
  const tiers = worth.tiers.map((tier) => [
    labels.get(tier.tier) ?? tier.tier,
    tier.kitCost.amount,
    tier.listGain.amount,
    says(tier.listVerdict, tier.listHangsOn),
    tier.streetGain.amount,
    says(tier.streetVerdict, tier.streetHangsOn),
    tier.wantedGain.amount,
  ]);
  return [
    `${visible(market?.name ?? worth.market)}, ${worth.currency}\n`,
    table(["line", "qty", "item", "list", "shop"], [...lines, totals], [1, 3, 4]),
    "\n",
    table(["tier", "one kit costs", "by list", "", "by shop", "", "what I would use"], tiers, [1, 2, 4, 6]),
  ].join("");
}

const text = (book: Workbook, kit: Kit, worth: KitWorth): string =>
  [
    `As of ${worth.valuedOn}${worth.ratesOf ? `, rates of ${worth.ratesOf}${worth.staleRates ? " (more than a week older)" : ""}` : ""}\n`,
    ...worth.markets.map((market) => marketText(book, kit, market)),
  ].join("\n");

export const worth: Verb = {
  usage: "FILE --kit ID [--market ID]...",
  operands: 1,
  options: { kit: { type: "string" }, market: { type: "string", multiple: true } },
  hasJson: true,
  run: ({ operands, options, io }) => {
    const book = workbookFrom(io, operands[0]);
    const kit = byId(book.kits, textOption(options, "kit"), "kit");
    const named = textsOption(options, "market");
    const markets =
      named.length > 0 ? named.map((id) => byId(book.markets, id, "market").id) : reportedMarkets(book);
    const valued = orFaults(worthOf(book, kit, markets));
    return { json: () => valued, text: () => text(book, kit, valued) };
  },
};
