import { multiple } from "../../../engine/money/index.ts";
import type { Estimate, Evidence, PricedLine, Source } from "../../../engine/price/index.ts";
import type { Supply } from "../../../engine/supply/index.ts";
import type { LineWorth } from "../../../engine/worth/index.ts";
import { wantedOf } from "../../../engine/worth/index.ts";
import { worthWords } from "../../words/worth.ts";
import { foundText } from "./found.ts";
import { printedInHundred } from "./percent.ts";
import { isLeast, lineNumber, type Scene } from "./scene.ts";

const words = worthWords.lines;
const how = worthWords.how;

/** A price of one line: the amount, its range where it has one, and how it was found. */
export type LinePrice = Readonly<{
  amount: string | null;
  range: string | null;
  /** A few words on how; null where there is no price. */
  how: string | null;
  /** How the figure came about, in one sentence. */
  sentence: string | null;
  /** The other ways to a figure, each with its sentence. */
  others: readonly string[];
}>;

/** One line, ready to print. */
export type LineRow = Readonly<{
  id: string;
  number: number;
  name: string;
  item: Readonly<{ id: string; supply: Supply }>;
  list: LinePrice;
  shop: LinePrice;
  wanted: string;
  /** What it would be worth as far as it would be used. */
  wantedAmount: string | null;
  /** All prices found for it, one sentence each. */
  found: readonly string[];
}>;

function packText({ line }: PricedLine, source: Source | undefined, scene: Scene): string | null {
  const evidence: Evidence | undefined = (line.evidence ?? []).find(({ id }) => id === source?.evidence);
  const pack = evidence?.pack;
  if (pack?.sheets) return how.pack.sheet(pack.sheets * (pack.count ?? 1));
  if (pack?.ml) return how.pack.ml(scene.format.number(pack.ml * (pack.count ?? 1), 1));
  return pack?.count ? how.pack.piece(pack.count) : null;
}

function listHow(priced: PricedLine, estimate: Estimate, scene: Scene): string {
  const [source] = estimate.trace.sources;
  switch (estimate.method) {
    case "converted":
      return source ? how.converted(scene.format.money(source.quoted)) : how.list;
    case "scaled":
      return how.scaled(packText(priced, source, scene));
    case "settled":
    case "list":
    case "card":
    case "precedents":
    case "guess":
      return how[estimate.method];
    case "shop":
      return how.shop(null); // a list price does not come from a shop
  }
}

function shopHow(priced: PricedLine, estimate: Estimate, scene: Scene): string {
  const [source] = estimate.trace.sources;
  if (estimate.method === "list") return how.listStandsIn;
  if (estimate.method === "converted" && source) return how.convertedShop(scene.format.money(source.quoted));
  if (estimate.method === "shop") return how.shop(source?.date ? scene.format.shortDate(source.date) : null);
  return listHow(priced, estimate, scene);
}

/** What is printed under an amount: its range, and for several of one thing what one costs. */
function rangeText(qty: number, estimate: Estimate, total: (money: Estimate["low"]) => string, scene: Scene) {
  const texts = [
    ...(qty > 1 ? [words.times(qty, scene.format.amount(estimate.likely))] : []),
    ...(estimate.low.amount === estimate.high.amount
      ? []
      : [words.range(total(estimate.low), total(estimate.high))]),
  ];
  return texts.length > 0 ? texts.join(", ") : null;
}

type Asked = Readonly<{
  estimate: Estimate | null;
  options: readonly Estimate[];
  amount: LineWorth["list"];
  total: (money: Estimate["low"]) => string;
  how: (priced: PricedLine, estimate: Estimate, scene: Scene) => string;
}>;

function priceOf(scene: Scene, priced: PricedLine, asked: Asked): LinePrice {
  const { estimate, options, amount } = asked;
  if (!estimate || !amount) return { amount: null, range: null, how: null, sentence: null, others: [] };
  const others = options.filter(({ sentence }) => sentence !== estimate.sentence);
  return {
    amount: scene.format.amount(amount),
    range: rangeText(priced.qty, estimate, asked.total, scene),
    how: asked.how(priced, estimate, scene),
    sentence: estimate.sentence,
    others: others.map(({ likely, sentence }) => `${scene.format.money(likely)}: ${sentence}`),
  };
}

function wantText(want: string, scene: Scene): string {
  if (/^[0.]+$/.test(want)) return words.none;
  return /^1(\.0+)?$/.test(want) ? words.all : words.share(printedInHundred(want, scene.format));
}

const timesText = (qty: number, scene: Scene) => (money: Estimate["low"]) =>
  scene.format.amount(multiple(money, qty));

function rowOf(scene: Scene, priced: PricedLine, worth: LineWorth): LineRow {
  const { line, estimate, qty } = priced;
  const total = timesText(qty, scene);
  const wanted = wantedOf(priced, "likely");
  return {
    id: line.id,
    number: lineNumber(scene, line.id),
    name: line.supply.name,
    item: { id: `${scene.kit.id}/${line.id}`, supply: line.supply },
    list: priceOf(scene, priced, {
      estimate: estimate.list,
      options: estimate.listOptions,
      amount: worth.list,
      total,
      how: listHow,
    }),
    shop: priceOf(scene, priced, {
      estimate: estimate.street,
      options: estimate.streetOptions,
      amount: worth.street,
      total,
      how: shopHow,
    }),
    wanted: wantText(line.want ?? "1", scene),
    wantedAmount: wanted && scene.format.amount(wanted),
    found: (line.evidence ?? []).map((evidence) => foundText(scene, evidence)),
  };
}

/** Every line in the kit's order. */
export const lineRows = (scene: Scene): readonly LineRow[] =>
  scene.why.lines.flatMap((priced, index) => {
    const worth = scene.worth.lines[index];
    return worth ? [rowOf(scene, priced, worth)] : [];
  });

/** The totals under the lines, "at least" where a line has no price. */
export function lineTotals(scene: Scene): Readonly<{ list: string; shop: string; wanted: string }> {
  const { worth, format } = scene;
  const print = (money: LineWorth["list"]) => (money ? format.amount(money) : "");
  const least = (text: string) => (isLeast(scene) ? words.least(text) : text);
  return {
    list: least(print(worth.listTotal)),
    shop: least(print(worth.streetTotal)),
    wanted: least(print(worth.wantedTotal)),
  };
}
