import { type Money, type RateUse, sumMoney } from "../money/index.ts";
import { type LineEstimate, plainDate } from "../price/index.ts";
import type { MarketWhy, MarketWorth, TierWorth, Verdict } from "../worth/index.ts";
import { lines, type Section } from "./document.ts";
import { isNothing, leastGainWords, totalWords } from "./figures.ts";
import type { Subject } from "./subject.ts";

const nameOfLine = ({ kit, words }: Subject, id: string | null): string =>
  (kit.lines ?? []).find((line) => line.id === id)?.supply.name ?? words.someLine;

function verdict(subject: Subject, word: Verdict, hangsOn: string | null): string {
  const { words } = subject;
  if (word === "hangs") return words.hangsOn(nameOfLine(subject, hangsOn));
  return word === "ahead" ? words.pays : words.doesNotPay;
}

const place = (subject: Subject, market: string): string => subject.market(market)?.name ?? market;

function tierRow(subject: Subject, tier: TierWorth, unpriced: readonly string[]): readonly string[] {
  const { words } = subject;
  const known = (subject.kit.tiers ?? []).find(({ id }) => id === tier.tier);
  const gain = (money: TierWorth["listGain"]) => leastGainWords(money, unpriced, words);
  const border = sumMoney(tier.kitCost.currency, [tier.duty, tier.tax, tier.handling]);
  return [
    known?.label || tier.tier,
    words.amount(tier.kitCost.amount),
    isNothing(border) ? "" : words.amount(border.amount),
    `${gain(tier.listGain)} ${verdict(subject, tier.listVerdict, tier.listHangsOn)}`,
    `${gain(tier.streetGain)} ${verdict(subject, tier.streetVerdict, tier.streetHangsOn)}`,
    gain(tier.wantedGain),
  ];
}

/** What one kit costs and brings on each tier, in one market. The market spoken in stays longest. */
function worthSection(subject: Subject, worth: MarketWorth, isFirst: boolean): Section {
  const { words } = subject;
  const [list, shop, wanted] = [worth.listTotal, worth.streetTotal, worth.wantedTotal].map((total) =>
    totalWords(total, worth.unpriced, words),
  );
  return {
    id: `worth-${worth.market}`,
    title: words.worth(place(subject, worth.market), worth.currency),
    keep: isFirst ? 86 : 82,
    blocks: [
      lines(
        words.together(list ?? "", shop ?? "", wanted ?? ""),
        worth.unpriced.length > 0 &&
          words.unpriced(worth.unpriced.map((id) => nameOfLine(subject, id)).join("; ")),
      ),
      {
        kind: "table",
        head: words.worthHead,
        rows: worth.tiers.map((tier) => tierRow(subject, tier, worth.unpriced)),
        numeric: [1, 2],
      },
    ],
  };
}

/** The full table of list and shop prices in one market; the totals are the sums of its lines. */
function priceSection(subject: Subject, worth: MarketWorth, isFirst: boolean): Section {
  const { words } = subject;
  const price = (money: Money | null) => (money ? words.amount(money.amount) : words.noPrice);
  const rows = worth.lines.map(({ line, qty, list, street }, i) => {
    const name = nameOfLine(subject, line);
    return [`${i + 1}. ${qty > 1 ? `${qty} × ` : ""}${name}`, price(list), price(street)];
  });
  const totals = [
    words.sum,
    totalWords(worth.listTotal, worth.unpriced, words),
    totalWords(worth.streetTotal, worth.unpriced, words),
  ];
  return {
    id: `prices-${worth.market}`,
    title: words.prices(place(subject, worth.market), worth.currency),
    keep: isFirst ? 85 : 40,
    blocks: [{ kind: "table", head: words.priceHead, rows: [...rows, totals], numeric: [1, 2] }],
  };
}

/** A list price that stands in for a shop price has been told already. */
function soundings({ list, street }: LineEstimate, noShopPrice: string): readonly string[] {
  const shop = street?.method === "list" && list ? noShopPrice : street?.sentence;
  return [list?.sentence, shop].filter((sentence) => sentence !== undefined);
}

/** How each price was found, sentence by sentence. */
function foundSection(subject: Subject, why: MarketWhy): Section {
  const rows = why.lines.flatMap(({ line, estimate }) => {
    const said = soundings(estimate, subject.words.noShopPrice);
    return said.length > 0 ? [`${line.supply.name}: ${said.join(" ")}`] : [];
  });
  return {
    id: `found-${why.market}`,
    title: subject.words.found(place(subject, why.market)),
    keep: 20,
    blocks: [lines(...rows)],
  };
}

type TableUsed = { readonly date: string; readonly base: string; readonly quotes: Map<string, string> };

/** Every rate table that a figure of the worth rests on, with the quotes that were used, oldest first. */
function tablesUsed(whys: readonly MarketWhy[]): readonly TableUsed[] {
  const uses: readonly (RateUse | null)[] = whys.flatMap(({ lines: priced, tiers }) => [
    ...priced
      .flatMap(({ estimate }) => [estimate.list, estimate.street])
      .flatMap((one) => (one?.trace.sources ?? []).map(({ rate }) => rate)),
    ...tiers.flatMap(({ cost }) => [...cost.goods, ...cost.postage].map(({ rate }) => rate)),
  ]);
  const tables = new Map<string, TableUsed>();
  for (const use of uses) {
    if (!use) continue;
    const { date, base } = use;
    const table = tables.get(`${base} ${date}`) ?? { date, base, quotes: new Map() };
    table.quotes.set(use.from, use.fromQuote).set(use.to, use.toQuote).delete(base);
    tables.set(`${base} ${date}`, table);
  }
  return [...tables.values()].toSorted((a, b) => (a.date < b.date ? -1 : 1));
}

/** "1 EUR = 10.9870 SEK, 168.70 JPY on 27 Feb 2026 (a central bank's reference rates)". */
function tableWords({ book, words, language }: Subject, { date, base, quotes }: TableUsed): string {
  const source = book.rates?.find((table) => table.date === date && table.base === base)?.source;
  const pairs = [...quotes].map(([code, quote]) => `${words.amount(quote)} ${code}`).toSorted();
  return `${words.rates(base, pairs, plainDate(date, language))}${source ? ` (${source})` : ""}`;
}

/** What the figures rest on: the day, the rates and their source, and who decides at a border. */
function basisSection(subject: Subject): Section {
  const { valued, kit, words, language } = subject;
  const tables = valued ? tablesUsed(valued.whys) : [];
  const crosses = valued?.worth.markets.some(({ tiers }) =>
    tiers.some((tier) => ![tier.duty, tier.tax, tier.handling].every(isNothing)),
  );
  return {
    id: "basis",
    title: words.basis,
    keep: 88,
    blocks: [
      lines(
        kit.valuedOn && words.pricesAsOf(plainDate(kit.valuedOn, language)),
        ...subject.missing.map(words.notWorkedOut),
        ...tables.map((table) => tableWords(subject, table)),
        valued?.worth.staleRates && words.staleRates,
        crosses && words.border,
      ),
    ],
  };
}

/** Everything about money, market by market in the workbook's order. */
export function worthSections(subject: Subject): readonly Section[] {
  const markets = subject.valued?.worth.markets ?? [];
  const spoken = subject.kit.spokenMarket ?? subject.book.home?.market ?? markets[0]?.market;
  return [
    ...markets.map((worth) => worthSection(subject, worth, worth.market === spoken)),
    ...markets.map((worth) => priceSection(subject, worth, worth.market === spoken)),
    basisSection(subject),
    ...(subject.valued?.whys ?? []).map((why) => foundSection(subject, why)),
  ];
}
