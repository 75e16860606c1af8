import { type RateUse, sumMoney } from "../money/index.ts";
import { type LineEstimate, plainDate } from "../price/index.ts";
import type { MarketWhy, MarketWorth, TierWorth, Verdict } from "../worth/index.ts";
import { lines, type Section } from "./document.ts";
import type { Subject } from "./subject.ts";
import { isNothing, leastGainWords, totalWords } from "./words.ts";

const nameOfLine = ({ kit }: Subject, id: string | null): string =>
  (kit.lines ?? []).find((line) => line.id === id)?.supply.name ?? "one line";

function verdict(subject: Subject, word: Verdict, hangsOn: string | null): string {
  if (word === "hangs") return `hangs on ${nameOfLine(subject, hangsOn)}`;
  return word === "ahead" ? "pays" : "does not pay";
}

const place = (subject: Subject, market: string): string => subject.market(market)?.name ?? market;

function tierRow(subject: Subject, tier: TierWorth, unpriced: readonly string[]): readonly string[] {
  const known = (subject.kit.tiers ?? []).find(({ id }) => id === tier.tier);
  const gain = (money: TierWorth["listGain"]) => leastGainWords(money, unpriced);
  const border = sumMoney(tier.kitCost.currency, [tier.duty, tier.tax, tier.handling]);
  return [
    known?.label || tier.tier,
    tier.kitCost.amount,
    isNothing(border) ? "" : border.amount,
    `${gain(tier.listGain)} ${verdict(subject, tier.listVerdict, tier.listHangsOn)}`,
    `${gain(tier.streetGain)} ${verdict(subject, tier.streetVerdict, tier.streetHangsOn)}`,
    gain(tier.wantedGain),
  ];
}

/** What one kit costs and brings on each tier, in one market. The market spoken in stays longest. */
function worthSection(subject: Subject, worth: MarketWorth, isFirst: boolean): Section {
  const together = [
    `list ${totalWords(worth.listTotal, worth.unpriced)}`,
    `shop ${totalWords(worth.streetTotal, worth.unpriced)}`,
    `only what I would use ${totalWords(worth.wantedTotal, worth.unpriced)}`,
  ];
  return {
    id: `worth-${worth.market}`,
    title: `Worth in ${place(subject, worth.market)}, ${worth.currency}`,
    keep: isFirst ? 86 : 82,
    blocks: [
      lines(
        `The contents together: ${together.join(", ")}`,
        worth.unpriced.length > 0 &&
          `Without a list or a shop price: ${worth.unpriced.map((id) => nameOfLine(subject, id)).join("; ")}`,
      ),
      {
        kind: "table",
        head: [
          "Tier",
          "one kit costs",
          "of it at the border",
          "by list price",
          "by shop price",
          "by what I would use",
        ],
        rows: worth.tiers.map((tier) => tierRow(subject, tier, worth.unpriced)),
        numeric: [1, 2],
      },
    ],
  };
}

/** The full table of list and shop prices in one market; the totals are the sums of its lines. */
function priceSection(subject: Subject, worth: MarketWorth, isFirst: boolean): Section {
  const rows = worth.lines.map(({ line, qty, list, street }, i) => {
    const name = nameOfLine(subject, line);
    return [
      `${i + 1}. ${qty > 1 ? `${qty} × ` : ""}${name}`,
      list?.amount ?? "no price",
      street?.amount ?? "no price",
    ];
  });
  const totals = [
    "Together",
    totalWords(worth.listTotal, worth.unpriced),
    totalWords(worth.streetTotal, worth.unpriced),
  ];
  return {
    id: `prices-${worth.market}`,
    title: `Prices in ${place(subject, worth.market)}, ${worth.currency}`,
    keep: isFirst ? 85 : 40,
    blocks: [{ kind: "table", head: ["Item", "list", "shop"], rows: [...rows, totals], numeric: [1, 2] }],
  };
}

/** A list price that stands in for a shop price has been told already. */
function soundings({ list, street }: LineEstimate): readonly string[] {
  const shop =
    street?.method === "list" && list ? "No shop price: the list price stands in." : street?.sentence;
  return [list?.sentence, shop].filter((sentence) => sentence !== undefined);
}

/** How each price was found, sentence by sentence. */
function foundSection(subject: Subject, why: MarketWhy): Section {
  const rows = why.lines.flatMap(({ line, estimate }) => {
    const said = soundings(estimate);
    return said.length > 0 ? [`${line.supply.name}: ${said.join(" ")}`] : [];
  });
  return {
    id: `found-${why.market}`,
    title: `How the prices in ${place(subject, why.market)} were found`,
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
function tableWords({ book }: Subject, { date, base, quotes }: TableUsed): string {
  const source = book.rates?.find((table) => table.date === date && table.base === base)?.source;
  const pairs = [...quotes].map(([code, quote]) => `${quote} ${code}`).toSorted();
  return `1 ${base} = ${pairs.join(", ")} on ${plainDate(date)}${source ? ` (${source})` : ""}`;
}

/** What the figures rest on: the day, the rates and their source, and who decides at a border. */
function basisSection(subject: Subject): Section {
  const { valued, kit } = subject;
  const tables = valued ? tablesUsed(valued.whys) : [];
  const crosses = valued?.worth.markets.some(({ tiers }) =>
    tiers.some((tier) => ![tier.duty, tier.tax, tier.handling].every(isNothing)),
  );
  return {
    id: "basis",
    title: "What the figures rest on",
    keep: 88,
    blocks: [
      lines(
        kit.valuedOn && `List and shop prices as of ${plainDate(kit.valuedOn)}; prices change.`,
        ...subject.missing.map(({ problem, remedy }) => `The worth is not worked out: ${problem}; ${remedy}`),
        ...tables.map((table) => tableWords(subject, table)),
        valued?.worth.staleRates && "Some of these rates are more than a week older than that day.",
        crosses &&
          "Duty, tax and fees at a border are estimates; the customs or tax authority of the country of arrival decides.",
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
